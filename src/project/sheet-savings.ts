import type { Fix } from '../check';
import { MM_PER_INCH, type Mm, type Units } from '../length';
import { tilePieces } from '../sheets';
import { inTurn, mm, number, type Phrase, say, UNSAID } from '../words';
import type { Draft } from './draft-types';
import { applyRemedy } from './remedy';
import { reprintOf, sheetsOf } from './sheets';

/** A narrower margin or overlap by which fewer sheets are printed. */
export interface SheetSaving {
  /** Stable, e.g. `margin-8`, in whole millimetres. */
  readonly id: string;
  /** The change, with the words on its button. */
  readonly fix: Fix;
  /** Sheets that are printed less. */
  readonly saved: number;
  /** What it saves, and what it asks for, in whole sentences. */
  readonly says: Phrase;
}

/** What is tried, the widest first: round figures of a ruler. */
const TRIED: Readonly<Record<Units, readonly Mm[]>> = {
  cm: [20, 15, 12, 10, 8, 6, 5],
  inch: [3 / 4, 1 / 2, 3 / 8, 1 / 4].map((inches) => inches * MM_PER_INCH),
};
/** Most printers print so near to the edges; no less is proposed where nobody looked. @source practice */
const USUAL_REACH: Mm = 5;
/** A narrower strip holds no glue. @source practice */
const LEAST_GLUED: Mm = 5;
/** Whoever glues on so little may as well butt the sheets. */
const NEARLY_BUTTED: Mm = MM_PER_INCH / 4;

/**
 * Asks for each narrower margin and overlap what it would save, one by one, for a screen that has other things to do
 * between them: each takes as long as the sheets themselves.
 *
 * Nothing is asked where sheets of an earlier print are kept, for they would all be printed again, and nothing of a draft
 * whose own sheets were only looked for quickly: files have fewer.
 */
export function sheetSavingQuestions(draft: Draft): readonly (() => SheetSaving | undefined)[] {
  if (draft.search !== 'thorough' || sheetsOf(draft).sheets.length <= 1 || reprintOf(draft)) return [];
  const { units, paper } = draft.project;
  const { margin, overlap, printerMargin } = paper;
  const measured = printerMargin === 'auto' ? [] : [printerMargin];
  const reach = measured[0] ?? USUAL_REACH;
  const margins = [...TRIED[units], ...measured].filter((to) => to >= reach && to < margin);
  const overlaps = TRIED[units].filter((to) => to >= LEAST_GLUED && to < overlap);
  const butted = overlap > 0 && overlap <= NEARLY_BUTTED ? [0] : [];
  return [
    ...margins.map((to) => () => narrowerMargin(draft, to)),
    ...[...overlaps, ...butted].map((to) => () => narrowerOverlap(draft, to)),
  ];
}

/** Those that no smaller change of the same kind equals, margins first, the smallest change first. */
export const leastChanges = (savings: readonly SheetSaving[]): readonly SheetSaving[] =>
  savings.filter((one, i) => !savings.slice(0, i).some((other) => isAlike(one, other) && other.saved >= one.saved));

const isAlike = (a: SheetSaving, b: SheetSaving): boolean => a.fix.changes[0]?.path === b.fix.changes[0]?.path;

function narrowerMargin(draft: Draft, to: Mm): SheetSaving | undefined {
  const { margin: from, printerMargin } = draft.project.paper;
  const fix: Fix = { label: say`Set the margin to ${mm(to)}`, changes: [{ path: 'paper.margin', value: to }] };
  const saved = sheetsSaved(draft, fix);
  if (saved <= 0) return undefined;
  const saves =
    saved === 1
      ? say`A margin of ${mm(to)} instead of ${mm(from)} would save 1 sheet.`
      : say`A margin of ${mm(to)} instead of ${mm(from)} would save ${number(saved, 0)} sheets.`;
  const asks =
    printerMargin === 'auto' ? say`The printer’s test page shows whether yours prints so near to the edges.` : UNSAID;
  return { id: `margin-${Math.round(to)}`, fix, saved, says: inTurn([saves, asks]) };
}

function narrowerOverlap(draft: Draft, to: Mm): SheetSaving | undefined {
  const from = draft.project.paper.overlap;
  const label = to === 0 ? say`Butt the sheets, without an overlap` : say`Set the overlap to ${mm(to)}`;
  const fix: Fix = { label, changes: [{ path: 'paper.overlap', value: to }] };
  const saved = sheetsSaved(draft, fix);
  if (saved <= 0) return undefined;
  return { id: `overlap-${Math.round(to)}`, fix, saved, says: to === 0 ? butted(saved) : overlapped(from, to, saved) };
}

const butted = (saved: number): Phrase =>
  inTurn([
    saved === 1
      ? say`Butting the sheets edge to edge would save 1 sheet.`
      : say`Butting the sheets edge to edge would save ${number(saved, 0)} sheets.`,
    say`Of two that meet, both are trimmed then.`,
  ]);

const overlapped = (from: Mm, to: Mm, saved: number): Phrase =>
  saved === 1
    ? say`An overlap of ${mm(to)} instead of ${mm(from)} would save 1 sheet.`
    : say`An overlap of ${mm(to)} instead of ${mm(from)} would save ${number(saved, 0)} sheets.`;

/** How many sheets less are printed, the same search asked. */
const sheetsSaved = (draft: Draft, fix: Fix): number =>
  sheetsOf(draft).sheets.length -
  tilePieces(draft.printed, applyRemedy(draft.project, { fix }).paper, draft.search).sheets.length;
