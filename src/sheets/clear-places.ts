import type { InkLine } from '../drawing';
import type { Mm } from '../length';
import { type Box, boxGrown, type Point, segmentWithin } from '../plane';
import { inkedSquares, rasterHolds, rasterOf } from './raster';

/** Looks for white room of a size, as near to a place as there is any; undefined where there is none. */
export type ClearPlaces = (width: Mm, height: Mm, near: Point) => Box | undefined;

/** The side of the squares that are white or not, on the paper, where nothing else is asked for. */
const SQUARE: Mm = 1.5;

/**
 * The white places of a room, for words to stand in: off lines and, as is asked each time, off what is there already.
 *
 * @param room on the drawing
 * @param ink what is drawn there
 * @param scale millimetres of paper for a millimetre of drawing
 * @param square how finely white is looked for, on the paper
 * @returns the places clear of these boxes, too
 */
export function clearPlaces(
  room: Box,
  ink: { readonly lines: readonly Pick<InkLine, 'points'>[] },
  scale: number,
  square: Mm = SQUARE,
): (taken: readonly Box[]) => ClearPlaces {
  const side = square / scale;
  const stretches: number[] = [];
  for (const { points } of ink.lines)
    for (let i = 1; i < points.length; i += 1) {
      const within = segmentWithin(room, points[i - 1] as Point, points[i] as Point);
      if (within) stretches.push(within[0].x, within[0].y, within[1].x, within[1].y);
    }
  const lines = inkedSquares(stretches, room, side);
  return (taken) => {
    const raster = rasterOf(lines, taken);
    return (width, height, near) => {
      let best: Box | undefined;
      let least = Number.POSITIVE_INFINITY;
      const tops = stepsFrom(room.top, room.bottom - height, side, near.y - height / 2);
      const lefts = stepsFrom(room.left, room.right - width, side, near.x - width / 2);
      for (const top of tops) {
        const down = Math.abs(top + height / 2 - near.y);
        // The rows and places after it lie still farther off.
        if (down > least) break;
        for (const left of lefts) {
          const away = Math.hypot(left + width / 2 - near.x, down);
          if (away >= least) break;
          const box = { left, top, right: left + width, bottom: top + height };
          // A square more all round: sides are rounded to squares.
          if (rasterHolds(raster, boxGrown(box, side))) continue;
          least = away;
          best = box;
        }
      }
      return best;
    };
  };
}

/** Steps through a stretch, those nearest to a place first. */
function stepsFrom(first: Mm, last: Mm, step: Mm, place: Mm): readonly Mm[] {
  const steps: Mm[] = [];
  for (let at = first; at <= last; at += step) steps.push(at);
  return steps.sort((a, b) => Math.abs(a - place) - Math.abs(b - place));
}
