import type { Mm } from '../length';
import { distance, linesMeet, type Point, subtract } from '../plane';

/** Two corners of a polygon this close are one: far below a pencil line. */
const SAME = 1e-4;

/** One corner of the cover while it is being simplified, and how far the cover left the outline there already. */
interface Corner {
  readonly at: Point;
  readonly spent: Mm;
}

/** One simplification at a corner: what replaces it, or it and the next, and how far that leaves what was there. */
interface Simplification {
  readonly count: 1 | 2;
  readonly by: readonly Corner[];
  readonly spent: Mm;
}

/**
 * A polygon of few corners that holds an outline: it nowhere cuts into the outline and nowhere leaves it by more than
 * `allowed`. Where the outline is hollow a corner is left out; where it bulges, an edge is left out and its neighbours
 * run on until they meet. The cheapest of these goes first, and what was spent is added up, so that the allowance holds
 * for the whole.
 *
 * @param outline clockwise as seen (y down), closed, simple; the last corner is not the first again
 * @param allowed how far the cover may leave the outline, mm
 * @returns clockwise corners
 */
export function outlineCover(outline: readonly Point[], allowed: Mm): readonly Point[] {
  const corners: Corner[] = withoutDoubles(outline).map((at) => ({ at, spent: 0 }));
  const steps = corners.map((_, i) => stepAt(corners, i, allowed));
  while (corners.length > 4) {
    const i = cheapest(steps);
    const step = steps[i];
    if (!step) break;
    if (!staysClear(corners, i, step)) {
      steps[i] = undefined;
      continue;
    }
    take(corners, steps, i, step);
    // A step looks at one corner before it and two behind.
    for (let k = i - 3; k <= i + 2; k += 1) {
      const near = (k + corners.length) % corners.length;
      steps[near] = stepAt(corners, near, allowed);
    }
  }
  return corners.map(({ at }) => at);
}

function withoutDoubles(points: readonly Point[]): readonly Point[] {
  return points.filter((p, i) => distance(p, points[(i + points.length - 1) % points.length] as Point) > SAME);
}

function cheapest(steps: readonly (Simplification | undefined)[]): number {
  let found = -1;
  let least = Infinity;
  steps.forEach((step, i) => {
    if (step && step.spent < least) {
      least = step.spent;
      found = i;
    }
  });
  return found;
}

function stepAt(corners: readonly Corner[], i: number, allowed: Mm): Simplification | undefined {
  const step = withoutCorner(corners, i) ?? withoutEdge(corners, i);
  return step && step.spent <= allowed ? step : undefined;
}

/** Takes a step; the list's own start moves where the step reaches over its end. */
function take(
  corners: Corner[],
  steps: (Simplification | undefined)[],
  i: number,
  { count, by }: Simplification,
): void {
  const over = count === 2 && i === corners.length - 1;
  corners.splice(i, over ? 1 : count, ...by);
  steps.splice(i, over ? 1 : count, ...by.map(() => undefined));
  if (over) {
    corners.shift();
    steps.shift();
  }
}

const at = (corners: readonly Corner[], i: number): Corner => corners[(i + corners.length) % corners.length] as Corner;

/** Positive where the outline turns clockwise, as it does all along where it bulges. */
const bend = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);

/** How far a point lies from the straight line through two others. */
const off = (p: Point, a: Point, b: Point): Mm => Math.abs(bend(a, b, p)) / distance(a, b);

/** A hollow corner left out. */
function withoutCorner(corners: readonly Corner[], i: number): Simplification | undefined {
  const [a, b, c] = [at(corners, i - 1), at(corners, i), at(corners, i + 1)];
  if (bend(a.at, b.at, c.at) > 0) return undefined;
  const spent = off(b.at, a.at, c.at) + Math.max(a.spent, b.spent, c.spent);
  return { count: 1, by: [], spent };
}

/** An edge between two bulging corners left out. */
function withoutEdge(corners: readonly Corner[], i: number): Simplification | undefined {
  const [a, b, c, d] = [at(corners, i - 1), at(corners, i), at(corners, i + 1), at(corners, i + 2)];
  if (bend(a.at, b.at, c.at) <= 0 || bend(b.at, c.at, d.at) <= 0) return undefined;
  const meet = linesMeet(b.at, subtract(b.at, a.at), c.at, subtract(d.at, c.at));
  // Together they have to turn less than half a circle, or the neighbours never meet ahead.
  if (!meet || bend(b.at, meet, c.at) <= 0) return undefined;
  const spent = off(meet, b.at, c.at) + Math.max(b.spent, c.spent);
  return { count: 2, by: [{ at: meet, spent }], spent };
}

/** Whether nothing of the rest of the outline lies in the triangle that a step adds. */
function staysClear(corners: readonly Corner[], i: number, { count, by }: Simplification): boolean {
  const triangle =
    count === 1
      ? [at(corners, i - 1).at, at(corners, i).at, at(corners, i + 1).at]
      : [at(corners, i).at, at(corners, i + 1).at, (by[0] as Corner).at];
  const [a, b, c] = triangle as [Point, Point, Point];
  return corners.every(({ at: p }) => {
    if (p === a || p === b || p === c) return true;
    const [ab, bc, ca] = [bend(a, b, p), bend(b, c, p), bend(c, a, p)];
    return !((ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0));
  });
}
