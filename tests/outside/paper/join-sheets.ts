import type { FoundMark } from './find-marks';
import type { Place } from './pixels';
import type { Word } from './render';

/** A printed sheet as somebody at the table sees it: its label, and its half-diamonds. */
export interface FoundSheet {
  readonly label: string;
  readonly marks: readonly FoundMark[];
}

/** Where each sheet comes to lie on the table, and how well its marks met. */
export interface JoinedSheets {
  /** Added to a place on the sheet, by label. */
  readonly shifts: ReadonlyMap<string, Place>;
  /** The worst distance between two bases that belong together, millimetres. */
  readonly worst: number;
}

/** A sheet's label is the largest word on it that looks like one: smaller ones name its neighbours. */
export function labelOf(words: readonly Word[]): string {
  const height = ({ top, bottom, left, right }: Word) => Math.min(bottom - top, right - left);
  const found = words.filter((word) => /^[A-Z]+\d+$/.test(word.text)).sort((a, b) => height(b) - height(a));
  if (!found[0]) throw new Error(`no label on a sheet: ${words.map(({ text }) => text).join(' ')}`);
  return found[0].text;
}

/**
 * Joins the sheets as a person does: neighbours by label, bases on bases in their order, one sheet after another from
 * the first. Then looks at every join again, also those that were not needed.
 */
export function joinSheets(sheets: readonly FoundSheet[]): JoinedSheets {
  const byLabel = new Map(sheets.map((sheet) => [sheet.label, sheet]));
  const shifts = new Map<string, Place>();
  for (const start of sheets) {
    if (shifts.size > 0) break;
    shifts.set(start.label, { x: 0, y: 0 });
  }
  for (let grown = true; grown; ) {
    grown = false;
    for (const sheet of sheets) {
      const own = shifts.get(sheet.label);
      if (!own) continue;
      for (const { label, pairs } of neighbours(sheet, byLabel)) {
        if (shifts.has(label)) continue;
        const by = mean(pairs.map(([a, b]) => ({ x: a.x - b.x, y: a.y - b.y })));
        shifts.set(label, { x: own.x + by.x, y: own.y + by.y });
        grown = true;
      }
    }
  }
  const left = sheets.filter((sheet) => !shifts.has(sheet.label));
  if (left.length > 0) throw new Error(`no marks lead to ${left.map((sheet) => sheet.label)}`);
  return { shifts, worst: worstPair(sheets, byLabel, shifts) };
}

function worstPair(
  sheets: readonly FoundSheet[],
  byLabel: ReadonlyMap<string, FoundSheet>,
  shifts: ReadonlyMap<string, Place>,
): number {
  let worst = 0;
  for (const sheet of sheets) {
    const own = shifts.get(sheet.label) as Place;
    for (const { label, pairs } of neighbours(sheet, byLabel)) {
      const other = shifts.get(label) as Place;
      for (const [a, b] of pairs)
        worst = Math.max(worst, Math.hypot(a.x + own.x - b.x - other.x, a.y + own.y - b.y - other.y));
    }
  }
  return worst;
}

const WAYS = [
  { row: 0, column: 1, own: 'left', other: 'right', along: 'y' },
  { row: 0, column: -1, own: 'right', other: 'left', along: 'y' },
  { row: 1, column: 0, own: 'up', other: 'down', along: 'x' },
  { row: -1, column: 0, own: 'down', other: 'up', along: 'x' },
] as const;

function neighbours(sheet: FoundSheet, byLabel: ReadonlyMap<string, FoundSheet>) {
  return WAYS.flatMap(({ row, column, own, other, along }) => {
    const label = labelBeside(sheet.label, row, column);
    const next = byLabel.get(label);
    const mine = inOrder(sheet, own, along);
    const theirs = next ? inOrder(next, other, along) : [];
    if (mine.length !== theirs.length || (next && mine.length < 2)) {
      throw new Error(`${sheet.label} has ${mine.length} marks towards ${label}, which has ${theirs.length}`);
    }
    return next ? [{ label, pairs: mine.map((a, i) => [a, theirs[i] as Place] as const) }] : [];
  });
}

const inOrder = (sheet: FoundSheet, towards: FoundMark['towards'], along: 'x' | 'y'): readonly Place[] =>
  sheet.marks
    .filter((mark) => mark.towards === towards)
    .map((mark) => mark.base)
    .sort((a, b) => a[along] - b[along]);

/** Rows go round: above A, where sheets came to an earlier print, lies Z. */
function labelBeside(label: string, row: number, column: number): string {
  const [, letter = '', number = ''] = /^([A-Z])(\d+)$/.exec(label) ?? [];
  const rows = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  return `${rows.at((rows.indexOf(letter) + row) % rows.length)}${Number(number) + column}`;
}

const mean = (places: readonly Place[]): Place => ({
  x: places.reduce((sum, p) => sum + p.x, 0) / places.length,
  y: places.reduce((sum, p) => sum + p.y, 0) / places.length,
});
