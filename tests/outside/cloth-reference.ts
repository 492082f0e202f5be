import { areaD, EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathD } from 'clipper2-ts';
import type { Placement } from '../../src/cloth';
import { cutCurves, type Piece } from '../../src/edges';
import { flattenCurves, outlineArea, type Point } from '../../src/plane';

/** Pieces may touch; a lay is wrong where they share more than a strip of this width. */
const ALLOWED = 0.1;
/** Clipper2 rounds to this many decimals of a millimetre. */
const PRECISION = 4;

/** The true cut line, as fine as the report's, clockwise. */
export function cutPoints(piece: Piece): readonly Point[] {
  const points = flattenCurves(cutCurves(piece));
  return outlineArea(cutCurves(piece)) > 0 ? points : [...points].reverse();
}

/** Where a placement puts points: written anew from the words of its type, not with the code that made the lay. */
export function laid(points: readonly Point[], { mirrored, turn, at }: Placement): readonly Point[] {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return points.map((p) => {
    const x = mirrored ? -p.x : p.x;
    return { x: at.x + x * cos - p.y * sin, y: at.y + x * sin + p.y * cos };
  });
}

/** A polygon drawn in by half of what is allowed, by Clipper2. */
function drawnIn(points: readonly Point[]): PathD[] {
  const path = points.map(({ x, y }) => ({ x, y }));
  const upright = areaD(path) > 0 ? path : path.reverse();
  return inflatePathsD([upright], -ALLOWED / 2, JoinType.Miter, EndType.Polygon, 2, PRECISION);
}

/** Areas in which laid polygons lie on each other by more than a tenth of a millimetre, mm². */
export function overlaps(polygons: readonly (readonly Point[])[]): readonly number[] {
  const paths = polygons.map(drawnIn);
  return paths.flatMap((a, i) =>
    paths.slice(0, i).flatMap((b) => {
      const common = intersectD(a, b, FillRule.NonZero, PRECISION).reduce(
        (sum, path) => sum + Math.abs(areaD(path)),
        0,
      );
      return common > 0 ? [common] : [];
    }),
  );
}
