import type { Check, FieldChange } from '../../check';
import type { LayAnswer, Layout, Placement } from '../../cloth';
import { drawnKey, type Piece, pieceKey } from '../../edges';
import type { Side } from '../../leg';
import { amountUp, type Units } from '../../length';
import { type Curve, flattenCurves, type Point, TOLERANCE } from '../../plane';
import { checksOf, clothOf, clothSavingsOf, clothWidthsOf, type Draft, type Measures } from '../../project';
import { printPhrase, say } from '../../words';
import {
  type ReportCaution,
  type ReportItem,
  type ReportSewing,
  reportCautions,
  reportSewing,
  reportShopping,
} from './sewing';
import { type ReportSheets, reportSheets } from './sheets';

/** A point of the report: x and y in millimetres. */
type Pair = readonly [number, number];

interface NamedLine {
  readonly name: string;
  readonly points: readonly Pair[];
}

/** One piece of the report. */
export interface ReportPiece {
  readonly name: string;
  readonly cut: number;
  readonly mirrored: boolean;
  readonly stitchLine: readonly { readonly edge: string; readonly points: readonly Pair[] }[];
  readonly cutLine: readonly { readonly edge: string; readonly allowance: number; readonly points: readonly Pair[] }[];
  readonly lines: readonly NamedLine[];
  readonly folds: readonly NamedLine[];
  readonly notches: readonly { readonly edge: string; readonly at: Pair; readonly count: number }[];
  readonly grainline: readonly [Pair, Pair];
}

/** What one width of cloth came to; lengths are null where the pieces don't fit on it. */
export interface ReportWidth {
  /** As it is bought. */
  readonly width: number;
  readonly layout: Layout;
  readonly fits: boolean;
  /** Of the cloth as it lies, all layers counted. */
  readonly lengthNeeded: number | null;
  readonly lowerBound: number | null;
  /** Share of the cloth that is no piece. */
  readonly waste: number | null;
  /** Washing, repeat and straightened ends counted, rounded up to 10 cm or ⅛ yd. */
  readonly toBuy: number | null;
}

/** A change of the project by which less cloth is bought. */
export interface ReportSaving {
  readonly id: string;
  /** What would be bought then, as in a width's `toBuy`. */
  readonly toBuy: number;
  /** To the millimetre; null where nothing fits now. */
  readonly saved: number | null;
  /** Whether both legs lie on one length then. */
  readonly oneLength: boolean;
  readonly says: string;
  /** The fields to change, and what to write there. */
  readonly changes: readonly FieldChange[];
}

/** The lay on the project's own cloth. */
export interface ReportLay extends ReportWidth {
  /** What would fit, where this width doesn't. */
  readonly instead: readonly string[];
  /** Of the cloth as it lies on the table: x from its left edge (folded lengthwise: the fold), y from its upper one. */
  readonly table: { readonly width: number; readonly length: number } | null;
  readonly placements: readonly (Omit<Placement, 'piece' | 'at'> & { readonly piece: string; readonly at: Pair })[];
  /** The widths in which cloth is sold, and this one, side by side. */
  readonly widths: readonly ReportWidth[];
  /** What would save cloth, the most first. */
  readonly savings: readonly ReportSaving[];
  /** Cloths that are bought beside it, for bands and cuffs. */
  readonly others: readonly (ReportWidth & { readonly kind: string; readonly pieces: readonly string[] })[];
  readonly shopping: readonly ReportItem[];
}

/** The report file: every measure, line and check, for a program to read. */
export interface Report {
  readonly format: 'legwork-report';
  readonly version: 2;
  readonly measures: Measures;
  /** Where left and right differ: what each leg measures by itself; girths of the pair as if both were like it. */
  readonly legs?: readonly { readonly side: Side; readonly measures: Measures }[];
  readonly pieces: readonly ReportPiece[];
  readonly checks: readonly (Omit<Check, 'name' | 'reason' | 'remedy' | 'fix'> & {
    readonly reason: string;
    readonly remedy: string;
  })[];
  readonly lay: ReportLay;
  readonly sheets: ReportSheets;
  readonly cautions: readonly ReportCaution[];
  readonly sewing: ReportSewing;
}

/** Coordinates and lengths are written to a thousandth of a millimetre. */
const STEP = 0.001;
/**
 * Finer than the promised 0.02 mm: whoever takes angles from the polylines should find the curves' own within a degree,
 * also on the tight curves of a child.
 */
const CHORD = TOLERANCE.chord / 8;

/**
 * The report of a draft: millimetres, degrees and fractions; sentences in the project's units.
 *
 * No chord of a polyline leaves its curve by more than 0.02 mm.
 */
export function makeReport(draft: Draft): Report {
  const { project, pieces, measures } = draft;
  return {
    format: 'legwork-report',
    version: 2,
    measures: roundedMeasures(measures),
    ...legsOf(draft),
    pieces: pieces.map(reportPiece),
    checks: checksOf(draft).map((check) => reportCheck(check, project.units)),
    lay: reportLay(draft),
    sheets: reportSheets(draft, rounded),
    cautions: reportCautions(draft),
    sewing: reportSewing(draft),
  };
}

const legsOf = ({ legs }: Draft): Pick<Report, 'legs'> =>
  legs.length === 1
    ? {}
    : {
        legs: legs.flatMap(({ side, measures }) => (side ? [{ side, measures: roundedMeasures(measures) }] : [])),
      };

/** The report as the text of its file; a point stands on one line. */
export function writeReport(draft: Draft): string {
  const text = JSON.stringify(makeReport(draft), null, 1);
  return `${text.replace(/\[\s+(-?[\d.e-]+),\s+(-?[\d.e-]+)\s+\]/g, '[$1,$2]')}\n`;
}

function reportLay(draft: Draft): ReportLay {
  const { units } = draft.project;
  const { answer, others } = clothOf(draft);
  return {
    ...reportWidth(answer, units),
    instead: answer.fits ? [] : answer.instead.map((phrase) => printPhrase(phrase, units)),
    table: answer.fits ? { width: rounded(answer.lay.table.width), length: rounded(answer.lay.table.length) } : null,
    placements: answer.fits
      ? answer.lay.placements.map((one) => ({ ...one, piece: pieceKey(one.piece), at: pair(one.at) }))
      : [],
    widths: clothWidthsOf(draft).map((one) => reportWidth(one.answer, units)),
    savings: clothSavingsOf(draft).map(({ id, fix, toBuy, saved, oneLength, says }) => ({
      id,
      toBuy: rounded(amountUp(toBuy, units)),
      saved: saved === undefined ? null : rounded(saved),
      oneLength,
      says: printPhrase(say`${fix.label}. ${says}`, units),
      changes: fix.changes,
    })),
    others: others.map(({ kind, pieces, answer: other }) => ({
      kind,
      pieces: pieces.map(pieceKey),
      ...reportWidth(other, units),
    })),
    shopping: reportShopping(draft),
  };
}

function reportWidth(answer: LayAnswer, units: Units): ReportWidth {
  if (!answer.fits) {
    const { width, layout } = answer;
    const none = { lengthNeeded: null, lowerBound: null, waste: null, toBuy: null };
    return { width: rounded(width), layout, fits: false, ...none };
  }
  const { width, layout, lengthNeeded, lowerBound, waste, toBuy } = answer.lay;
  return {
    width: rounded(width),
    layout,
    fits: true,
    lengthNeeded: rounded(lengthNeeded),
    lowerBound: rounded(lowerBound),
    waste: figure(waste),
    toBuy: rounded(amountUp(toBuy, units)),
  };
}

/** A piece as the report holds it, its points rounded to a thousandth. */
export function reportPiece(piece: Piece): ReportPiece {
  return {
    name: pieceKey(piece),
    cut: piece.cut,
    mirrored: piece.mirrored,
    stitchLine: closed(piece.stitchLine.map(({ name, curves }) => ({ edge: name, points: sampled(curves) }))),
    cutLine: closed(
      piece.cutLine.map(({ name, allowance, curves }) => ({
        edge: name,
        allowance: rounded(allowance),
        points: sampled(curves),
      })),
    ),
    lines: piece.lines.map(({ name, curves }) => ({ name: drawnKey(name), points: sampled(curves) })),
    folds: piece.folds.map(({ name, curves }) => ({ name: drawnKey(name), points: sampled(curves) })),
    notches: piece.notches.map(({ edge, at, count }) => ({ edge, at: pair(at), count })),
    grainline: [pair(piece.grainline[0]), pair(piece.grainline[1])],
  };
}

/**
 * Neighbouring edges share their corner to the last figure: two ends that are one point but for rounding might be
 * written a step apart otherwise. A true gap stays as it is.
 */
function closed<E extends { readonly points: readonly Pair[] }>(edges: readonly E[]): readonly E[] {
  return edges.map((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length]?.points.at(-1);
    const [first, ...rest] = edge.points;
    if (!before || !first || Math.hypot(before[0] - first[0], before[1] - first[1]) > 1.5 * STEP) return edge;
    return { ...edge, points: [before, ...rest] };
  });
}

const reportCheck = (
  { id, verdict, measured, wanted, tolerance, unit, reason, remedy }: Check,
  units: Units,
): Report['checks'][number] => ({
  id,
  verdict,
  measured: figure(measured),
  wanted: figure(wanted),
  tolerance: figure(tolerance),
  unit,
  reason: printPhrase(reason, units),
  remedy: printPhrase(remedy, units),
});

const roundedMeasures = (measures: Measures): Measures =>
  Object.fromEntries(Object.entries(measures).map(([key, value]: [string, number]) => [key, figure(value)])) as Record<
    keyof Measures,
    number
  >;

const sampled = (curves: readonly Curve[]): readonly Pair[] => flattenCurves(curves, CHORD).map(pair);
const pair = ({ x, y }: Point): Pair => [rounded(x), rounded(y)];
const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
/** Measures may be fractions: six decimals keep a ten-thousandth of a percent. */
const figure = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
