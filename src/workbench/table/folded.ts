import type { Piece } from '../../edges';
import { between, distance, dot, type Edge, flattenCurves, type Point, subtract } from '../../plane';

/** Half a pixel at the nearest zoom: folded parts are only looked at. */
const SEEN = 0.1;

/** A turning laid over on the piece: its wrong side is up. */
export interface FoldedTurning {
  readonly name: string;
  /** The name of its fold. */
  readonly fold: string;
  /** The area that it covers, from the fold to where its raw edge comes to lie. */
  readonly area: readonly Point[];
  /** Where the raw edge comes to lie. */
  readonly rawEdge: readonly Point[];
  /** The same part as it lies flat, beyond the fold. */
  readonly flat: readonly Point[];
  /** The names of the cut edges that go over with it. */
  readonly edges: readonly string[];
}

/** The turnings of a piece: which raw edge is turned in which fold, and the mirrored seams at its ends. */
const TURNINGS = [
  { raw: 'waist', fold: 'waist fold' },
  { raw: 'hem', fold: 'hem fold' },
] as const;

/** The piece's turnings folded over: every point is mirrored in the fold's tangent at the place nearest to it. */
export function foldedTurnings(piece: Piece): readonly FoldedTurning[] {
  return TURNINGS.flatMap(({ raw, fold }) => {
    const crease = piece.folds.find((edge) => edge.name === fold);
    const run = turningRun(piece.cutLine, raw);
    if (!crease || !run) return [];
    const line = flattenCurves(crease.curves, SEEN);
    const over = (points: readonly Point[]) => points.map((p) => mirroredInLine(p, line));
    const flat = flattenCurves(
      run.whole.flatMap((edge) => edge.curves),
      SEEN,
    );
    return [
      {
        name: raw,
        fold,
        area: over(flat),
        rawEdge: over(flattenCurves(run.raw.curves, SEEN)),
        flat,
        edges: run.whole.map((edge) => edge.name),
      },
    ];
  });
}

/** A raw edge with the mirrored seams before and after it. */
function turningRun(cut: readonly Edge[], raw: string): { raw: Edge; whole: readonly Edge[] } | undefined {
  const at = cut.findIndex((edge) => edge.name === raw);
  const edge = cut[at];
  if (!edge) return undefined;
  const count = cut.length;
  const turning = (i: number) => {
    const one = cut[(i + count) % count];
    return one?.name.endsWith('Turning') ? [one] : [];
  };
  return { raw: edge, whole: [...turning(at - 1), edge, ...turning(at + 1)] };
}

/** A point mirrored in a polyline: in the nearest place of it; beyond its ends in the end's own direction. */
function mirroredInLine(p: Point, line: readonly Point[]): Point {
  let foot: Point = p;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1] as Point;
    const b = line[i] as Point;
    const along = subtract(b, a);
    const t = dot(subtract(p, a), along) / dot(along, along);
    const kept = Math.max(i === 1 ? t : 0, Math.min(i === line.length - 1 ? t : 1, t));
    const here = between(a, b, kept);
    if (distance(here, p) >= least) continue;
    least = distance(here, p);
    foot = here;
  }
  return between(p, foot, 2);
}
