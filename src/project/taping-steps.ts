import { type Curve, type Edge, point, straight, type WorkingStep } from '../plane';
import { joinLine, partsInOrder, type SheetPart } from '../sheets';
import { inTurn, number, own, say, UNSAID } from '../words';
import type { Draft } from './draft-types';
import { remembered } from './remembered';
import { sheetsOf } from './sheets';

/**
 * How the printed sheets become one, a step for each join: the rows first, from the left, then each row to the one above
 * it. Each step draws the sheet and the line on which it joins.
 *
 * @source practice
 */
export const tapingStepsOf: (draft: Draft) => readonly WorkingStep[] = remembered((draft: Draft) => {
  const plan = sheetsOf(draft);
  const { sheets, overlap } = plan;
  if (sheets.length < 2) return [];
  const parts = partsInOrder(plan);
  const rows = [...new Set(parts.map(({ row }) => row))].map((row) => parts.filter((part) => part.row === row));
  const bearerOf = (part: SheetPart) =>
    sheets.find(({ tips }) => tips.some(({ label }) => label === part.label))?.label;
  const across = rows.flatMap((row) => row.map((part) => partStep(part, bearerOf(part), overlap > 0)));
  const down = rows.flatMap((row, i) => {
    const above = rows[i - 1];
    return above ? [rowStep(row, above)] : [];
  });
  return [...across, ...down];
});

const step = (id: string, sentence: WorkingStep['sentence'], lines: readonly Edge[]): WorkingStep => ({
  id: `paper.tape ${id}`,
  station: 'paper',
  sentence,
  formula: UNSAID,
  lines,
});

/** A sheet or a tip on its own, or joined to its neighbour on the left. */
function partStep(part: SheetPart, bearer: string | undefined, lies: boolean): WorkingStep {
  const label = own(part.label);
  const out = bearer === undefined ? UNSAID : say`Cut out the small piece ${label} that is printed on ${own(bearer)}.`;
  const join = part.joins.find(({ side }) => side === 'left');
  if (!join) return step(part.label, bearer === undefined ? say`Put down sheet ${label}.` : out, [rim(part)]);
  const beside = own(join.neighbour);
  const sentence = lies
    ? say`Cut off the white margin of ${label} on its left, lay it on the thin line of ${beside} so that half-diamonds of one number make a whole one, and tape.`
    : say`Cut off the white margins of ${beside} and ${label} where they meet, butt them so that half-diamonds of one number make a whole one, and tape.`;
  const { top, bottom } = part.window;
  const line = edge(part, [straight(point(join.at, top), point(join.at, bottom))]);
  return step(part.label, inTurn([out, sentence]), [rim(part), line]);
}

/** A row that is joined to the one above it. */
function rowStep(row: readonly SheetPart[], above: readonly SheetPart[]): WorkingStep {
  const [first, over] = [row[0]?.label ?? '', above[0]?.label ?? ''];
  const joined = row.filter((sheet) => joinLine(sheet, 'top') !== undefined);
  const lines = joined.map((sheet) => {
    const { left, right } = sheet.window;
    const { top: y } = sheet.window;
    return edge(sheet, [straight(point(left, y), point(right, y))]);
  });
  const sentence = say`Join the row of ${own(first)} to the row of ${own(over)} in the same way: ${number(joined.length, 0)} sheets meet.`;
  return step(`row ${first}`, joined.length === 1 ? oneMeets(first, over) : sentence, lines);
}

const oneMeets = (below: string, above: string) =>
  say`Join the row of ${own(below)} to the row of ${own(above)} in the same way: one sheet meets.`;

const edge = ({ label }: SheetPart, curves: readonly Curve[]): Edge => ({ name: label, curves });

function rim(sheet: SheetPart): Edge {
  const { left, right, top, bottom } = sheet.window;
  const corners = [point(left, top), point(right, top), point(right, bottom), point(left, bottom)] as const;
  return edge(
    sheet,
    corners.map((corner, i) => straight(corner, corners[(i + 1) % 4] ?? corner)),
  );
}
