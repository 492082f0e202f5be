import type { Check } from '../check';
import type { Piece } from '../edges';
import { printPhrase, type Units } from '../length';
import { type Curve, flattenCurves, type Point, TOLERANCE } from '../plane';
import type { Draft, Measures } from '../project';

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

/** The report file: every measure, line and check, for a program to read. */
export interface Report {
  readonly format: 'legwork-report';
  readonly version: 1;
  readonly measures: Measures;
  readonly pieces: readonly ReportPiece[];
  readonly checks: readonly (Omit<Check, 'name' | 'reason' | 'remedy' | 'fix'> & {
    readonly reason: string;
    readonly remedy: string;
  })[];
  readonly sheets: {
    readonly count: number;
    readonly columns: number;
    readonly rows: number;
    readonly lowerBound: number;
  };
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
 * No chord of a polyline leaves its curve by more than 0.02 mm. There is no lay yet, so the field `lay` is left out
 * rather than filled with nothing.
 */
export function makeReport({ project, pieces, measures, checks, sheets }: Draft): Report {
  return {
    format: 'legwork-report',
    version: 1,
    measures: roundedMeasures(measures),
    pieces: pieces.map(reportPiece),
    checks: checks.map((check) => reportCheck(check, project.units)),
    sheets: { count: sheets.sheets.length, columns: sheets.columns, rows: sheets.rows, lowerBound: sheets.lowerBound },
  };
}

/** The report as the text of its file; a point stands on one line. */
export function writeReport(draft: Draft): string {
  const text = JSON.stringify(makeReport(draft), null, 1);
  return `${text.replace(/\[\s+(-?[\d.e-]+),\s+(-?[\d.e-]+)\s+\]/g, '[$1,$2]')}\n`;
}

function reportPiece(piece: Piece): ReportPiece {
  return {
    name: piece.name,
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
    lines: piece.lines.map(({ name, curves }) => ({ name, points: sampled(curves) })),
    folds: piece.folds.map(({ name, curves }) => ({ name, points: sampled(curves) })),
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
  Object.fromEntries(
    Object.entries(measures).map(([key, value]: [string, number]) => [key, figure(value)]),
  ) as unknown as Measures;

const sampled = (curves: readonly Curve[]): readonly Pair[] => flattenCurves(curves, CHORD).map(pair);
const pair = ({ x, y }: Point): Pair => [rounded(x), rounded(y)];
const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
/** Measures may be fractions: six decimals keep a ten-thousandth of a percent. */
const figure = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
