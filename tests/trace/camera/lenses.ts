import { type Point, scale } from '../../../src/plane';

/** Bends a point of a true picture, in halves of its diagonal from its middle, as a lens does. */
type Bending = (p: Point) => Point;

/**
 * Lenses by published models, none of the form that the program looks for: it straightens by a polynomial of what is seen,
 * these bend what is true. `share` is by how much what is seen in the picture's corner is moved, outwards: −0.15 is a barrel.
 */
export const LENSES: Readonly<Record<string, (share: number) => Bending>> = {
  // D. C. Brown 1971, as most calibrations write it: r (1 + a r² + b r⁴) of the true radius; here b = a² / 2.
  polynomial: (share) => {
    const seen = (a: number, r: number) => r * (1 + a * r * r + (a * a * r ** 4) / 2);
    const a = root((value) => seen(value, 1 / (1 + share)) - 1, -0.4, 0.4);
    return along((r) => seen(a, r));
  },
  // A. Fitzgibbon 2001, the division model: the true radius is r / (1 + λ r²) of the seen one.
  division: (share) =>
    along((r) => (Math.abs(share) < 1e-9 ? r : (1 - Math.sqrt(1 - 4 * share * r * r)) / (2 * share * r))),
  // F. Devernay & O. Faugeras 2001, the field of view of wide lenses: atan(2 r tan(ω/2)) / ω, here with its middle at full size; a barrel only.
  'field of view': (share) => {
    if (share > -0.001) return (p) => p;
    const seen = (omega: number, r: number) => Math.atan(2 * r * Math.tan(omega / 2)) / (2 * Math.tan(omega / 2));
    const omega = root((value) => 1 - seen(value, 1 / (1 + share)), 0.01, 3);
    return along((r) => seen(omega, r));
  },
};

const along =
  (radius: (r: number) => number): Bending =>
  (p) => {
    const r = Math.hypot(p.x, p.y);
    return r === 0 ? p : scale(p, radius(r) / r);
  };

/** The root of what rises from `low` to `high`, halved again and again. */
function root(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let i = 0; i < 60; i += 1) {
    const middle = (from + to) / 2;
    if (rising(middle) < 0) from = middle;
    else to = middle;
  }
  return from;
}
