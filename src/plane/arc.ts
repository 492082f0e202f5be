import { straight } from './curve';
import { point } from './point';
import type { Curve, Point } from './types';

/**
 * A cubic draws at most so much of a circle, radians: there it leaves the circle by two millionths of the radius.
 *
 * @source M. Goldapp, *Approximation of circular arcs by cubic polynomials*, 1991, from memory
 */
const LARGEST = (40 / 180) * Math.PI;

/**
 * A part of a circle or an ellipse as cubics, as near to it as two millionths of its radius.
 *
 * @param centre of the ellipse
 * @param across from the centre to where the angle is 0
 * @param along from the centre to where it is a quarter turn; as long as `across`, and square to it, for a circle
 * @param from the angle at the start, radians
 * @param sweep how far it goes on from there, radians, either way
 */
export function arcCurves(centre: Point, across: Point, along: Point, from: number, sweep: number): readonly Curve[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / LARGEST - 1e-9));
  const step = sweep / count;
  const handle = (4 / 3) * Math.tan(step / 4);
  const at = (u: number, v: number): Point =>
    point(centre.x + u * across.x + v * along.x, centre.y + u * across.y + v * along.y);
  return Array.from({ length: count }, (_, i): Curve => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    return [at(ca, sa), at(ca - handle * sa, sa + handle * ca), at(cb + handle * sb, sb - handle * cb), at(cb, sb)];
  });
}

/** What bulges less is straight: by no more than a hundred-millionth of its length, and its centre is too far off to reckon with. */
const FLATTEST = 1e-8;

/**
 * A part of a circle between two points.
 *
 * @param bulge tan of a quarter of the angle that it spans, positive where it runs anticlockwise where y points up; 0 is straight
 * @source the published DXF reference
 */
export function bulgeCurves(a: Point, b: Point, bulge: number): readonly Curve[] {
  if (Math.abs(bulge) < FLATTEST) return [straight(a, b)];
  const sweep = 4 * Math.atan(bulge);
  // The centre lies on the middle of the chord, so far to its left as the rest of the angle asks.
  const lift = (1 - bulge * bulge) / (4 * bulge);
  const centre = point((a.x + b.x) / 2 - lift * (b.y - a.y), (a.y + b.y) / 2 + lift * (b.x - a.x));
  const across = point(a.x - centre.x, a.y - centre.y);
  const curves = arcCurves(centre, across, point(-across.y, across.x), 0, sweep);
  // The end itself, free of rounding.
  return curves.map((curve, i): Curve => (i === curves.length - 1 ? [curve[0], curve[1], curve[2], b] : curve));
}
