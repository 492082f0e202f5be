import { type CutEdge, type EdgeName, type FoldName, isTurning, type Piece } from '../../edges';
import {
  between,
  cross,
  distance,
  dot,
  type Edge,
  flattenCurves,
  outlineCurves,
  type Point,
  pathEnd,
  pathStart,
  subtract,
} from '../../plane';

/** Half a pixel at the nearest zoom: folded parts are only looked at. */
const SEEN = 0.1;

/** A turning laid over on the piece: its wrong side is up. */
export interface FoldedTurning {
  readonly name: EdgeName;
  /** The name of its fold. */
  readonly fold: FoldName;
  /** The area that it covers, from the fold to its outermost edge: a raw edge, or the fold of what is tucked under. */
  readonly area: readonly Point[];
  /** The names of the cut edges that go over with it. */
  readonly edges: readonly EdgeName[];
}

/** The turnings of a piece: which raw edge goes over in which fold, and where it may be tucked under. */
const TURNINGS = [
  { raw: 'waist', fold: 'waistFold', tuck: undefined },
  { raw: 'hem', fold: 'hemFold', tuck: 'turnUnderFold' },
] as const;

/** The piece's turnings folded over: every point is mirrored in the place of the fold that is nearest to it. */
export function foldedTurnings(piece: Piece): readonly FoldedTurning[] {
  const foldNamed = (name: FoldName | undefined) => piece.folds.find((edge) => edge.name === name);
  return TURNINGS.flatMap(({ raw, fold, tuck }) => {
    const crease = foldNamed(fold);
    const run = turningRun(piece.cutLine, raw);
    if (!crease || run.length === 0) return [];
    const line = flattenCurves(crease.curves, SEEN);
    const tucked = foldNamed(tuck);
    const whole = flattenCurves(outlineCurves(run), SEEN);
    const flat = tucked ? cutOff(whole, tucked, pathStart(crease.curves)) : whole;
    return [{ name: raw, fold, area: flat.map((p) => mirroredInLine(p, line)), edges: run.map((edge) => edge.name) }];
  });
}

/** A raw edge with the mirrored seams before and after it; empty where the piece has none. */
function turningRun(cut: readonly CutEdge[], raw: EdgeName): readonly CutEdge[] {
  const at = cut.findIndex((edge) => edge.name === raw);
  const edge = cut[at];
  if (!edge) return [];
  const turning = (i: number) => {
    const one = cut[(i + cut.length) % cut.length];
    return one && isTurning(one.name) ? [one] : [];
  };
  return [...turning(at - 1), edge, ...turning(at + 1)];
}

/** The part of a polygon on that side of a straight line where `kept` lies (Sutherland & Hodgman, 1974). */
function cutOff(polygon: readonly Point[], { curves }: Edge, kept: Point): readonly Point[] {
  const on = pathStart(curves);
  const way = subtract(pathEnd(curves), on);
  const side = Math.sign(cross(way, subtract(kept, on)));
  const height = (p: Point) => side * cross(way, subtract(p, on));
  return polygon.flatMap((p, i) => {
    const next = polygon[(i + 1) % polygon.length] as Point;
    const [here, there] = [height(p), height(next)];
    const crossing = here * there < 0 ? [between(p, next, here / (here - there))] : [];
    return here >= 0 ? [p, ...crossing] : crossing;
  });
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
