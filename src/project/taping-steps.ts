import { type Curve, type Edge, point, straight, type WorkingStep } from '../plane';
import type { Sheet } from '../sheets';
import { number, own, say, UNSAID } from '../words';
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
  const { sheets, overlap } = sheetsOf(draft);
  if (sheets.length < 2) return [];
  const rows = [...new Set(sheets.map(({ row }) => row))].map((row) => sheets.filter((sheet) => sheet.row === row));
  const across = rows.flatMap((row) => row.map((sheet, i) => sheetStep(sheet, row[i - 1], overlap > 0)));
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

/** A sheet on its own, or joined to its neighbour on the left. */
function sheetStep(sheet: Sheet, left: Sheet | undefined, lies: boolean): WorkingStep {
  const label = own(sheet.label);
  const join = sheet.joins.left;
  if (!left || join === undefined) return step(sheet.label, say`Put down sheet ${label}.`, [rim(sheet)]);
  const beside = own(left.label);
  const sentence = lies
    ? say`Cut off the white margin of ${label} on its left, lay it on the thin line of ${beside} so that half-diamonds of one number make a whole one, and tape.`
    : say`Cut off the white margins of ${beside} and ${label} where they meet, butt them so that half-diamonds of one number make a whole one, and tape.`;
  const { top, bottom } = sheet.window;
  return step(sheet.label, sentence, [rim(sheet), edge(sheet, [straight(point(join, top), point(join, bottom))])]);
}

/** A row that is joined to the one above it. */
function rowStep(row: readonly Sheet[], above: readonly Sheet[]): WorkingStep {
  const [first, over] = [row[0]?.label ?? '', above[0]?.label ?? ''];
  const joined = row.filter(({ joins }) => joins.top !== undefined);
  const lines = joined.map((sheet) => {
    const { left, right } = sheet.window;
    const y = sheet.joins.top ?? sheet.window.top;
    return edge(sheet, [straight(point(left, y), point(right, y))]);
  });
  const sentence = say`Join the row of ${own(first)} to the row of ${own(over)} in the same way: ${number(joined.length, 0)} sheets meet.`;
  return step(`row ${first}`, joined.length === 1 ? oneMeets(first, over) : sentence, lines);
}

const oneMeets = (below: string, above: string) =>
  say`Join the row of ${own(below)} to the row of ${own(above)} in the same way: one sheet meets.`;

const edge = ({ label }: Sheet, curves: readonly Curve[]): Edge => ({ name: label, curves });

function rim(sheet: Sheet): Edge {
  const { left, right, top, bottom } = sheet.window;
  const corners = [point(left, top), point(right, top), point(right, bottom), point(left, bottom)] as const;
  return edge(
    sheet,
    corners.map((corner, i) => straight(corner, corners[(i + 1) % 4] ?? corner)),
  );
}
