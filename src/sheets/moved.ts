import type { Mm } from '../length';
import { type Box, boxGrown, boxHolds, boxMeetsSegment } from '../plane';
import type { PrintedLine, PrintedWord } from './printed';

/** Lines are looked at this often along their way; what moves less far than its neighbours do is still seen. */
const STEP: Mm = 2;

/**
 * How far the lines in a window have moved, the farther of both ways: from where they were to the nearest line of the
 * same meaning now, and back, so that neither a line that is gone nor a new one is missed.
 *
 * @param within beyond this it doesn't matter how far
 * @returns infinite where it is beyond that
 */
export function linesMoved(before: readonly PrintedLine[], now: readonly PrintedLine[], window: Box, within: Mm): Mm {
  const was = stretchesIn(before, boxGrown(window, within));
  const is = stretchesIn(now, boxGrown(window, within));
  return Math.max(farthest(was, is, window, within), farthest(is, was, window, within));
}

/** Whether the same is written in a window, wherever in it. */
export function sameWords(before: readonly PrintedWord[], now: readonly PrintedWord[], window: Box): boolean {
  const inside = (words: readonly PrintedWord[]) =>
    words
      .filter(({ at }) => boxHolds(window, at))
      .map(({ text }) => text)
      .sort()
      .join('\n');
  return inside(before) === inside(now);
}

type Stretch = readonly [ax: Mm, ay: Mm, bx: Mm, by: Mm];

/** The straight stretches that reach into a box, by the meaning of their lines. */
function stretchesIn(lines: readonly PrintedLine[], box: Box): ReadonlyMap<string, readonly Stretch[]> {
  const found = new Map<string, Stretch[]>();
  for (const { stroke, points } of lines) {
    for (let i = 3; i < points.length; i += 2) {
      const [ax = 0, ay = 0, bx = 0, by = 0] = points.slice(i - 3, i + 1);
      if (!boxMeetsSegment(box, { x: ax, y: ay }, { x: bx, y: by })) continue;
      const own = found.get(stroke) ?? [];
      own.push([ax, ay, bx, by]);
      found.set(stroke, own);
    }
  }
  return found;
}

function farthest(
  from: ReadonlyMap<string, readonly Stretch[]>,
  to: ReadonlyMap<string, readonly Stretch[]>,
  window: Box,
  within: Mm,
): Mm {
  let far = 0;
  for (const [stroke, stretches] of from) {
    const others = to.get(stroke) ?? [];
    for (const [ax, ay, bx, by] of stretches) {
      const count = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / STEP));
      for (let k = 0; k <= count; k += 1) {
        const x = ax + ((bx - ax) * k) / count;
        const y = ay + ((by - ay) * k) / count;
        if (!boxHolds(window, { x, y })) continue;
        let near = Number.POSITIVE_INFINITY;
        for (const other of others) near = Math.min(near, distance(x, y, other));
        if (near > within) return Number.POSITIVE_INFINITY;
        far = Math.max(far, near);
      }
    }
  }
  return far;
}

function distance(x: Mm, y: Mm, [ax, ay, bx, by]: Stretch): Mm {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}
