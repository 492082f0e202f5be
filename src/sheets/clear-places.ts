import type { InkLine } from '../drawing';
import type { Mm } from '../length';
import { type Box, boxGrown, type Point, segmentWithin } from '../plane';
import { inkRaster, rasterHolds } from './raster';

/** Looks for white room of a size, as near to a place as there is any; undefined where there is none. */
export type ClearPlaces = (width: Mm, height: Mm, near: Point) => Box | undefined;

/** The side of the squares that are white or not, on the paper, where nothing else is asked for. */
const SQUARE: Mm = 1.5;

/**
 * The white places of a room, for words to stand in: off lines and off what is there already.
 *
 * @param room on the drawing
 * @param ink what is drawn there
 * @param taken boxes that are covered
 * @param scale millimetres of paper for a millimetre of drawing
 * @param square how finely white is looked for, on the paper
 */
export function clearPlaces(
  room: Box,
  ink: { readonly lines: readonly Pick<InkLine, 'points'>[] },
  taken: readonly Box[],
  scale: number,
  square: Mm = SQUARE,
): ClearPlaces {
  const side = square / scale;
  const lines = ink.lines.flatMap(({ points }) =>
    points.slice(1).flatMap((p, i) => (segmentWithin(room, points[i] as Point, p) ?? []).flatMap(({ x, y }) => [x, y])),
  );
  const boxes = taken.flatMap((box) => hatched(box, room, side / 2));
  const raster = inkRaster(Float64Array.from([...lines, ...boxes]), room, side);
  return (width, height, near) => {
    let best: Box | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (let top = room.top; top + height <= room.bottom; top += side) {
      for (let left = room.left; left + width <= room.right; left += side) {
        const away = Math.hypot(left + width / 2 - near.x, top + height / 2 - near.y);
        if (away >= least) continue;
        const box = { left, top, right: left + width, bottom: top + height };
        // A square more all round: sides are rounded to squares.
        if (rasterHolds(raster, boxGrown(box, side))) continue;
        least = away;
        best = box;
      }
    }
    return best;
  };
}

/** Level stretches that fill the part of a box in a room. */
function hatched(box: Box, room: Box, step: Mm): readonly number[] {
  const left = Math.max(box.left, room.left);
  const right = Math.min(box.right, room.right);
  const [top, bottom] = [Math.max(box.top, room.top), Math.min(box.bottom, room.bottom)];
  if (left > right || top > bottom) return [];
  const count = Math.ceil((bottom - top) / step);
  return Array.from({ length: count + 1 }, (_, i) => Math.min(bottom, top + i * step)).flatMap((y) => [
    left,
    y,
    right,
    y,
  ]);
}
