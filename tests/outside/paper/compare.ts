import type { Place } from './pixels';

export type Polyline = readonly (readonly [number, number])[];

/** A part of a page, millimetres. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The promise to the cutter: the joined paper shows every line within this of where the pattern has it. */
export const TRUE_WITHIN = 0.3;

/** How printed ink and the report's lines agree, once one lies on the other as well as it can. */
export interface Agreement {
  /** The farthest that any ink lies from the lines, mm. */
  readonly inkFromLines: number;
  /** The farthest that any place on the lines lies from ink, mm. */
  readonly linesFromInk: number;
  readonly shift: Place;
}

/** Places farther off than this are none. */
const REACH = 4;
/** More squares than any pattern is high. */
const COLUMN = 1 << 20;
/** A shift that moves by less than this, mm, has settled; along straight lines it does so slowly. */
const SETTLED = 1e-4;
const MOST_ROUNDS = 200;

/** Points by squares of the plane, a millimetre wide, for near ones to be found without looking at all. */
class Near {
  private readonly squares = new Map<number, Place[]>();
  constructor(points: readonly Place[]) {
    for (const p of points) {
      const key = Math.floor(p.x) * COLUMN + Math.floor(p.y);
      const square = this.squares.get(key);
      if (square) square.push(p);
      else this.squares.set(key, [p]);
    }
  }
  /** The nearest point within reach; undefined where there is none. */
  to({ x, y }: Place): Place | undefined {
    let best: Place | undefined;
    let least = REACH * REACH;
    const [column, row] = [Math.floor(x), Math.floor(y)];
    // Ring by ring of squares: what lies in the next is at least so far away.
    for (let ring = 0; ring <= REACH && ring - 1 <= Math.sqrt(least); ring += 1)
      for (let c = column - ring; c <= column + ring; c += 1) {
        const step = Math.abs(c - column) === ring ? 1 : Math.max(1, 2 * ring);
        for (let r = row - ring; r <= row + ring; r += step)
          for (const p of this.squares.get(c * COLUMN + r) ?? []) {
            const square = (p.x - x) ** 2 + (p.y - y) ** 2;
            if (square >= least) continue;
            least = square;
            best = p;
          }
      }
    return best;
  }
}

/** Points every `step` along polylines, their own included. */
function along(lines: readonly Polyline[], step: number): Place[] {
  return lines.flatMap((line) =>
    line.flatMap(([x, y], i) => {
      const next = line[i + 1];
      if (!next) return [{ x, y }];
      const count = Math.max(1, Math.ceil(Math.hypot(next[0] - x, next[1] - y) / step));
      return Array.from({ length: count }, (_, k) => ({
        x: x + ((next[0] - x) * k) / count,
        y: y + ((next[1] - y) * k) / count,
      }));
    }),
  );
}

/**
 * Lays ink on lines by one shift and measures how they agree, both ways. The shift starts from the boxes and is then
 * the mean of the distances to the nearest places, again and again: nothing is turned, nothing is stretched.
 */
export function compareInk(ink: readonly Place[], lines: readonly Polyline[], start?: Place): Agreement {
  const places = along(lines, 0.05);
  const near = new Near(places);
  const shift = start ?? fitted(ink, places, near);
  const moved = ink.map((p) => ({ x: p.x + shift.x, y: p.y + shift.y }));
  const inkFromLines = farthest(moved, near);
  const linesFromInk = farthest(along(lines, 0.4), new Near(moved));
  return { inkFromLines, linesFromInk, shift };
}

/** The farthest that any place on the lines lies from ink, of the places that a part of the page shows. */
export function farthestWithin(part: Part, ink: readonly Place[], lines: readonly Polyline[]): number {
  const shown = along(lines, 0.2).filter(
    ({ x, y }) => x >= part.left && x <= part.right && y >= part.top && y <= part.bottom,
  );
  return farthest(shown, new Near(ink));
}

function fitted(ink: readonly Place[], places: readonly Place[], near: Near): Place {
  const corner = (points: readonly Place[]) => ({
    x: points.reduce((least, p) => Math.min(least, p.x), Infinity),
    y: points.reduce((least, p) => Math.min(least, p.y), Infinity),
  });
  const a = corner(places);
  const b = corner(ink);
  let shift = { x: a.x - b.x, y: a.y - b.y };
  const some = ink.filter((_, i) => i % 37 === 0);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let [x, y, count] = [0, 0, 0];
    for (const p of some) {
      const at = { x: p.x + shift.x, y: p.y + shift.y };
      const to = near.to(at);
      if (!to) continue;
      x += to.x - at.x;
      y += to.y - at.y;
      count += 1;
    }
    if (count === 0) break;
    shift = { x: shift.x + x / count, y: shift.y + y / count };
    if (Math.hypot(x, y) / count < SETTLED) break;
  }
  return shift;
}

function farthest(points: readonly Place[], near: Near): number {
  let worst = 0;
  for (const p of points) {
    const to = near.to(p);
    worst = Math.max(worst, to ? Math.hypot(to.x - p.x, to.y - p.y) : Number.POSITIVE_INFINITY);
  }
  return worst;
}
