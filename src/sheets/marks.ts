import { type Ink, inkCrosses, inkNear } from '../drawing';
import type { Mm } from '../length';
import { type Box, boxGrown, boxHolds, type Point, point } from '../plane';
import type { JoinMark } from './types';

/** A half-diamond's size on the paper, in millimetres; the number stands in front of its tip. */
export const MARK = { halfBase: 4, depth: 5, numberRoom: 7 } as const;

/** The line on which marks are set. */
export interface MarkLine {
  /** `down`: it runs down the drawing and the marks' tips point left and right. `across`: up and down. */
  readonly runs: 'down' | 'across';
  /** Where it stands: x where it runs down, y where it runs across. */
  readonly at: Mm;
  readonly from: Mm;
  readonly to: Mm;
}

/** How marks may be set along a join. */
interface Room {
  /** Of the usual half-diamond. */
  readonly size: number;
  /** Whether the numbers in front of the tips must be free, too. */
  readonly numbered: boolean;
  /** From the ends of the join to the nearest mark, so that marks of crossing joins keep apart, on the paper. */
  readonly end: Mm;
  /** The two marks are at least this share of the join apart: they must also show that it isn't turned. */
  readonly apart: number;
  /** What they must not cover. */
  readonly off: 'lines' | 'cut';
}

/** From what is best to what a cutter can just live with: never on a cut line while there is a place off it. */
const ROOMS: readonly Room[] = [
  { size: 1, numbered: true, end: 14, apart: 0.25, off: 'lines' },
  { size: 1, numbered: false, end: 14, apart: 0.25, off: 'lines' },
  { size: 0.7, numbered: false, end: 9, apart: 0.15, off: 'lines' },
  { size: 1, numbered: false, end: 14, apart: 0.25, off: 'cut' },
  { size: 0.7, numbered: false, end: 9, apart: 0.08, off: 'cut' },
  { size: 0.7, numbered: false, end: 5, apart: 0.04, off: 'cut' },
];
const STEP: Mm = 2;
/** White between the marks of a join, on the paper: two that touch look like one. */
const BETWEEN: Mm = 2;

/** The two marks of a join: where their bases' middles lie, how large they are, and what they cover. */
export interface MarkPlaces {
  readonly places: readonly [Point, Point];
  readonly size: number;
  readonly covers: 'nothing' | 'line' | 'cut';
}

/**
 * Two marks for a join, as near to its quarters as can be without covering a line or a word: with their numbers if there
 * is such a place, else smaller and closer, else at least not on the cut line; on the quarters themselves where nothing
 * is free.
 *
 * @param scale millimetres of paper for a millimetre of drawing
 */
export function markPlaces(join: MarkLine, ink: Ink, scale: { readonly x: number; readonly y: number }): MarkPlaces {
  const down = join.runs === 'down';
  const along = down ? scale.y : scale.x;
  const place = (s: Mm): Point => (down ? point(join.at, s) : point(s, join.at));
  const widest = MARK.depth + MARK.numberRoom;
  const [start, end] = [join.from, join.to].map((s) => markBox(place(s), down, 1, widest, scale)) as [Box, Box];
  const lines = inkNear(ink, { ...start, right: end.right, bottom: end.bottom });
  const cut = { ...lines, lines: lines.lines.filter((line) => line.stroke === 'cut') };
  for (const room of ROOMS) {
    const near = room.off === 'cut' ? cut : lines;
    const reach = room.numbered ? widest : MARK.depth * room.size;
    const free = (s: Mm) => {
      const box = markBox(place(s), down, room.size, reach, scale);
      return !inkCrosses(near, box) && !ink.words.some((word) => boxHolds(boxGrown(box, MARK.depth), word));
    };
    const pair = bestPair(join, along, room, free);
    if (!pair) continue;
    return {
      places: [place(pair[0]), place(pair[1])],
      size: room.size,
      covers: room.off === 'cut' ? 'line' : 'nothing',
    };
  }
  const [first, second] = quarters(join);
  return { places: [place(first), place(second)], size: 1, covers: 'cut' };
}

const quarters = ({ from, to }: MarkLine): readonly [Mm, Mm] => [from + 0.25 * (to - from), to - 0.25 * (to - from)];

/** The free pair nearest to the quarters; undefined where no two free places are far enough apart. */
function bestPair(
  join: MarkLine,
  along: number,
  { size, end, apart }: Room,
  free: (s: Mm) => boolean,
): readonly [Mm, Mm] | undefined {
  const [first, second] = quarters(join);
  // The quarters of a short join lie where the marks of one round its corner do.
  const fromEnd = first - join.from >= end / along;
  if (fromEnd && free(first) && free(second)) return [first, second];
  const places: Mm[] = fromEnd ? [first, second] : [];
  for (let s = join.from + end / along; s <= join.to - end / along; s += STEP / along) places.push(s);
  const open = places.filter(free);
  const near = (to: Mm) => (a: Mm, b: Mm) => Math.abs(a - to) - Math.abs(b - to);
  const seconds = open.toSorted(near(second));
  const between = Math.max(apart * (join.to - join.from), (2 * MARK.halfBase * size + BETWEEN) / along);
  let best: readonly [Mm, Mm] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const a of open.toSorted(near(first))) {
    if (Math.abs(a - first) >= least) break;
    const b = seconds.find((s) => s - a >= between);
    if (b === undefined) continue;
    const miss = Math.abs(a - first) + Math.abs(b - second);
    if (miss >= least) continue;
    least = miss;
    best = [a, b];
  }
  return best;
}

/** The box that both halves fill, from tip to tip twice `reach`. */
function markBox(
  at: Point,
  down: boolean,
  size: number,
  reach: Mm,
  scale: { readonly x: number; readonly y: number },
): Box {
  const base = MARK.halfBase * size;
  const half = down ? { x: reach, y: base } : { x: base, y: reach };
  const x = (half.x + 0.5) / scale.x;
  const y = (half.y + 0.5) / scale.y;
  return { left: at.x - x, right: at.x + x, top: at.y - y, bottom: at.y + y };
}

/**
 * The three corners of a half-diamond, in millimetres on the paper, from the middle of its base: base end, tip, base end.
 *
 * Both halves of a pair have the same base; their tips point apart.
 *
 * @param size of the usual half-diamond
 */
export function markCorners(towards: JoinMark['towards'], size = 1): readonly [Point, Point, Point] {
  const halfBase = MARK.halfBase * size;
  const depth = MARK.depth * size;
  if (towards === 'left') return [point(0, -halfBase), point(-depth, 0), point(0, halfBase)];
  if (towards === 'right') return [point(0, -halfBase), point(depth, 0), point(0, halfBase)];
  if (towards === 'up') return [point(-halfBase, 0), point(0, -depth), point(halfBase, 0)];
  return [point(-halfBase, 0), point(0, depth), point(halfBase, 0)];
}
