/**
 * A root of a continuous function between two values that lie on either side of it: Brent's idea in its simplest safe
 * form, the secant kept inside the bracket and bisected where it stalls.
 *
 * @param f the function
 * @param low one end of the bracket
 * @param high the other
 * @param tolerance |f| at which to stop, in f's unit
 * @returns the argument; the end with the smaller |f| where there is no change of sign; NaN as soon as f has no finite
 *   value, so that a search within a search doesn't go on for nothing
 */
export function solveBetween(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (Math.abs(fa) <= tolerance) return a;
  if (Math.abs(fb) <= tolerance) return b;
  if (!Number.isFinite(fa - fb)) return Number.NaN;
  if (fa * fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  let side = 0;
  for (let i = 0; i < 100; i += 1) {
    const x = (fa * b - fb * a) / (fa - fb); // regula falsi with the Illinois weights: never leaves the bracket
    const fx = f(x);
    if (!Number.isFinite(fx)) return Number.NaN;
    if (Math.abs(fx) <= tolerance || Math.abs(b - a) < 1e-13) return x;
    if (fx * fb > 0) {
      [b, fb] = [x, fx];
      if (side === -1) fa /= 2;
      side = -1;
    } else {
      [a, fa] = [x, fx];
      if (side === 1) fb /= 2;
      side = 1;
    }
  }
  return (a + b) / 2;
}
