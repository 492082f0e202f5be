import type { FoundMark } from './find-marks';
import type { Place } from './pixels';
import type { Word } from './render';

/**
 * Joined marks miss each other by less than this, millimetres: a fifth of what scissors do. Parts that are joined one after
 * another each bring what a mark's pixels hide of its place, so that a loop of many closes a little less well than one of four.
 */
export const MARKS_MEET = 0.1;

/** A half-diamond and the number beside it. */
export interface NumberedMark extends FoundMark {
  readonly number: number;
}

/** A printed sheet, or what was cut out of one, as somebody at the table sees it: its label, and its half-diamonds. */
export interface FoundSheet {
  readonly label: string;
  readonly marks: readonly NumberedMark[];
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
 * Joins the sheets as a person does: bases of one number on each other, one sheet after another from
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

/** The sheets that bear the other halves of a sheet’s marks; every number stands on two sheets. */
function neighbours(sheet: FoundSheet, byLabel: ReadonlyMap<string, FoundSheet>) {
  const pairs = new Map<string, (readonly [Place, Place])[]>();
  for (const { number, base } of sheet.marks) {
    const others = [...byLabel.values()].flatMap(({ label, marks }) =>
      label === sheet.label ? [] : marks.filter((mark) => mark.number === number).map((mark) => ({ label, mark })),
    );
    const [other] = others;
    if (!other || others.length > 1)
      throw new Error(`${sheet.label}'s mark ${number} has ${others.length} other halves`);
    pairs.set(other.label, [...(pairs.get(other.label) ?? []), [base, other.mark.base]]);
  }
  return [...pairs].map(([label, own]) => ({ label, pairs: own }));
}

const mean = (places: readonly Place[]): Place => ({
  x: places.reduce((sum, p) => sum + p.x, 0) / places.length,
  y: places.reduce((sum, p) => sum + p.y, 0) / places.length,
});
