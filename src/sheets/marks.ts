import type { Mm } from '../length';
import { type Point, point } from '../plane';
import { boxGrown, boxHolds, type Ink, inkCrosses } from './ink';
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

/**
 * Two marks for a join, one in each of its outer two fifths: as near as can be to its quarters without covering a line
 * or a word; on the quarter itself where nothing is free.
 *
 * @param scale millimetres of paper for a millimetre of drawing
 */
export function markPlaces(
  join: MarkLine,
  ink: Ink,
  scale: { readonly x: number; readonly y: number },
): readonly Point[] {
  const along = join.runs === 'down' ? scale.y : scale.x;
  const length = join.to - join.from;
  const room = END_ROOM / along;
  const zones = [
    { from: join.from + room, to: join.from + 0.4 * length, best: join.from + 0.25 * length },
    { from: join.to - 0.4 * length, to: join.to - room, best: join.to - 0.25 * length },
  ];
  const place = (s: Mm): Point => (join.runs === 'down' ? point(join.at, s) : point(s, join.at));
  return zones.map((zone) => {
    const tries: Mm[] = [zone.best];
    for (let away = STEP / along; away < length; away += STEP / along) {
      for (const s of [zone.best - away, zone.best + away]) if (s >= zone.from && s <= zone.to) tries.push(s);
    }
    const free = tries.find((s) => {
      const box = markBox(place(s), join, scale);
      return !inkCrosses(ink, box) && !ink.words.some((word) => boxHolds(boxGrown(box, MARK.depth), word));
    });
    return place(free ?? zone.best);
  });
}

/** The box that both halves and their numbers fill. */
function markBox(at: Point, join: MarkLine, scale: { readonly x: number; readonly y: number }): Box {
  const reach = MARK.depth + MARK.numberRoom;
  const half = join.runs === 'down' ? { x: reach, y: MARK.halfBase } : { x: MARK.halfBase, y: reach };
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
