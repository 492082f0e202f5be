import type { Mm } from '../length';
import { type Point, point } from '../plane';
import { boxGrown, boxHolds, type Ink, inkCrosses, inkNear } from './ink';
import type { Box, JoinMark } from './types';

/** A half-diamond's size on the paper, in millimetres; the number stands in front of its tip. */
export const MARK = { halfBase: 4, depth: 5, numberRoom: 6 } as const;

/** The line on which marks are set. */
export interface MarkLine {
  /** `down`: it runs down the drawing and the marks' tips point left and right. `across`: up and down. */
  readonly runs: 'down' | 'across';
  /** Where it stands: x where it runs down, y where it runs across. */
  readonly at: Mm;
  readonly from: Mm;
  readonly to: Mm;
}

/** From the ends of a join to the nearest mark, so that marks of crossing joins keep apart, on the paper. */
const END_ROOM: Mm = 14;
const STEP: Mm = 2;
/** The two marks of a join are at least this share of its length apart: they must also show that it isn't turned. */
const LEAST_APART = 0.25;

/** The two marks of a join: where their bases' middles lie, and whether they cover no line and no word. */
export interface MarkPlaces {
  readonly places: readonly [Point, Point];
  readonly clear: boolean;
}

/**
 * Two marks for a join, as near to its quarters as can be without covering a line or a word: with their numbers if there
 * is such a place, else at least the half-diamonds, else at least not the cut line; on the quarters themselves where
 * nothing is free.
 *
 * @param scale millimetres of paper for a millimetre of drawing
 */
export function markPlaces(join: MarkLine, ink: Ink, scale: { readonly x: number; readonly y: number }): MarkPlaces {
  const down = join.runs === 'down';
  const along = down ? scale.y : scale.x;
  const place = (s: Mm): Point => (down ? point(join.at, s) : point(s, join.at));
  const widest = MARK.depth + MARK.numberRoom;
  const ends = [join.from, join.to].map((s) => markBox(place(s), down, widest, scale)) as [Box, Box];
  const near = inkNear(ink, { ...ends[0], right: ends[1].right, bottom: ends[1].bottom });
  const free = (reach: Mm, lines: Ink) => (s: Mm) => {
    const box = markBox(place(s), down, reach, scale);
    return !inkCrosses(lines, box) && !ink.words.some((word) => boxHolds(boxGrown(box, MARK.depth), word));
  };
  const [first, second] = quarters(join);
  const clear = bestPair(join, along, free(widest, near)) ?? bestPair(join, along, free(MARK.depth, near));
  const cut = { ...near, lines: near.lines.filter((line) => line.stroke === 'cut') };
  const [a, b] = clear ?? bestPair(join, along, free(MARK.depth, cut)) ?? [first, second];
  return { places: [place(a), place(b)], clear: clear !== undefined };
}

const quarters = ({ from, to }: MarkLine): readonly [Mm, Mm] => [from + 0.25 * (to - from), to - 0.25 * (to - from)];

/** The free pair nearest to the quarters; undefined where no two free places are far enough apart. */
function bestPair(join: MarkLine, along: number, free: (s: Mm) => boolean): readonly [Mm, Mm] | undefined {
  const [first, second] = quarters(join);
  if (free(first) && free(second)) return [first, second];
  const places: Mm[] = [first, second];
  for (let s = join.from + END_ROOM / along; s <= join.to - END_ROOM / along; s += STEP / along) places.push(s);
  const open = places.filter(free);
  const near = (to: Mm) => (a: Mm, b: Mm) => Math.abs(a - to) - Math.abs(b - to);
  const seconds = open.toSorted(near(second));
  let best: readonly [Mm, Mm] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const a of open.toSorted(near(first))) {
    if (Math.abs(a - first) >= least) break;
    const b = seconds.find((s) => s - a >= LEAST_APART * (join.to - join.from));
    if (b === undefined) continue;
    const miss = Math.abs(a - first) + Math.abs(b - second);
    if (miss >= least) continue;
    least = miss;
    best = [a, b];
  }
  return best;
}

/** The box that both halves fill, from tip to tip twice `reach`. */
function markBox(at: Point, down: boolean, reach: Mm, scale: { readonly x: number; readonly y: number }): Box {
  const half = down ? { x: reach, y: MARK.halfBase } : { x: MARK.halfBase, y: reach };
  const x = (half.x + 0.5) / scale.x;
  const y = (half.y + 0.5) / scale.y;
  return { left: at.x - x, right: at.x + x, top: at.y - y, bottom: at.y + y };
}

/**
 * The three corners of a half-diamond, in millimetres on the paper, from the middle of its base: base end, tip, base end.
 *
 * Both halves of a pair have the same base; their tips point apart.
 */
export function markCorners(towards: JoinMark['towards']): readonly [Point, Point, Point] {
  const { halfBase, depth } = MARK;
  if (towards === 'left') return [point(0, -halfBase), point(-depth, 0), point(0, halfBase)];
  if (towards === 'right') return [point(0, -halfBase), point(depth, 0), point(0, halfBase)];
  if (towards === 'up') return [point(-halfBase, 0), point(0, -depth), point(halfBase, 0)];
  return [point(-halfBase, 0), point(0, depth), point(halfBase, 0)];
}
