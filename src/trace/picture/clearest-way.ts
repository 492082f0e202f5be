import { type Point, point } from '../../plane';
import type { LineStrength } from './line-strength';

/** What a step costs where nothing shows, beside what it costs along a clear line. @source tolerance */
const BARE = 40;

/**
 * The way from one place to another along what shows most clearly: of all ways from pixel to pixel the one that costs
 * least.
 *
 * @param strength of the part of the picture on which it runs
 * @param from in pixels of the picture; to, likewise
 * @returns the middles of the pixels that it runs through, both ends included
 * @source E. W. Dijkstra, *A note on two problems in connexion with graphs*, 1959, from memory; with rows of like cost
 */
export function clearestWay(strength: LineStrength, from: Point, to: Point): readonly Point[] {
  const { left, top, width, height, data } = strength;
  const cellOf = ({ x, y }: Point) => clamp(Math.floor(y) - top, height) * width + clamp(Math.floor(x) - left, width);
  const [start, goal] = [cellOf(from), cellOf(to)];
  const cost = new Int32Array(width * height).fill(0x7fffffff);
  const before = new Int32Array(width * height).fill(-1);
  const done = new Uint8Array(width * height);
  const rows: number[][] = [[start]];
  cost[start] = 0;
  for (let now = 0; now < rows.length; now += 1) {
    for (const cell of rows[now] ?? []) {
      if (done[cell] || cost[cell] !== now) continue;
      done[cell] = 1;
      if (cell === goal) return wayBack(strength, before, goal);
      const [x, y] = [cell % width, Math.floor(cell / width)];
      for (let dy = -1; dy <= 1; dy += 1)
        for (let dx = -1; dx <= 1; dx += 1) {
          const [nx, ny] = [x + dx, y + dy];
          if ((dx === 0 && dy === 0) || nx < 0 || ny < 0 || nx >= width || ny >= height) continue;
          const next = ny * width + nx;
          if (done[next]) continue;
          const bare = 1 - (data[next] as number);
          // Squared, so that a faint line is still far better than none.
          const step = 1 + BARE * bare * bare;
          const sum = now + Math.round((dx !== 0 && dy !== 0 ? 7 : 5) * step);
          if (sum >= (cost[next] as number)) continue;
          cost[next] = sum;
          before[next] = cell;
          let row = rows[sum];
          if (!row) {
            row = [];
            rows[sum] = row;
          }
          row.push(next);
        }
    }
    // What is done is let go.
    rows[now] = [];
  }
  return [from, to];
}

const clamp = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));

function wayBack({ left, top, width }: LineStrength, before: Int32Array, goal: number): readonly Point[] {
  const way: Point[] = [];
  for (let cell = goal; cell >= 0; cell = before[cell] as number)
    way.push(point(left + (cell % width) + 0.5, top + Math.floor(cell / width) + 0.5));
  return way.reverse();
}
