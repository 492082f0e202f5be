import type { Mm } from '../length';
import { type FourSeen, homographyPoint, homographyThrough, type Seen } from './homography';
import { mapTuple } from './tuple';
import type { Point } from './types';

/** Half the step of the differences by which a mark's pull is found, pixels: small against any mark, large against rounding. */
const HALF_STEP = 0.05;
/** 95 % of what is scattered evenly round both ways lies within so many of its standard deviations (χ² with two degrees of freedom). */
const NEARLY_ALL = Math.sqrt(-2 * Math.log(0.05));

/**
 * How far off a place on the paper may be, in 95 of 100 cases, if every mark on the picture, the four corners and the
 * place's own, may lie beside its true place by up to `click` in x and in y.
 *
 * Marks scattered evenly over ±click have the variance click²/3; the pull of each on the place is a difference quotient,
 * and the larger axis of the sum of their covariances counts, as if the error were as large both ways.
 *
 * @param seen from the picture, pixels, to the paper, millimetres
 * @param at where the place is marked on the picture
 * @param click pixels
 * @source propagation of covariance: Hartley & Zisserman, 2004, chapter 5, from memory
 * @returns undefined where the picture can't be flattened or the place lies beyond the horizon
 */
export function seenError(seen: FourSeen, at: Point, click: number): Mm | undefined {
  const pulls: Point[] = [];
  for (const axis of ['x', 'y'] as const) {
    for (let mark = 0; mark <= seen.length; mark += 1) {
      const ends = [HALF_STEP, -HALF_STEP].map((by) => {
        const pushed = mapTuple(seen, (one, i) => (i === mark ? pushedBy(one, axis, by) : one));
        const h = homographyThrough(pushed);
        return h && homographyPoint(h, mark === seen.length ? { ...at, [axis]: at[axis] + by } : at);
      });
      const [plus, minus] = ends;
      if (!plus || !minus) return undefined;
      pulls.push({ x: (plus.x - minus.x) / (2 * HALF_STEP), y: (plus.y - minus.y) / (2 * HALF_STEP) });
    }
  }
  const sum = (of: (pull: Point) => number) => pulls.reduce((total, pull) => total + of(pull), 0);
  const [xx, yy, xy] = [sum(({ x }) => x * x), sum(({ y }) => y * y), sum(({ x, y }) => x * y)];
  const larger = (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
  return NEARLY_ALL * Math.sqrt((larger * click * click) / 3);
}

const pushedBy = ({ from, to }: Seen, axis: 'x' | 'y', by: number): Seen => ({
  from: { ...from, [axis]: from[axis] + by },
  to,
});
