import { curveBounds, flattenCurves, type Point, pointsBounds } from '../plane';
import type { PieceDrawing, Stroke } from './drawing';
import type { Box } from './types';

/** How closely curves are followed when it is only asked whether they touch a box: a tenth of the cut line's width. */
export const INK_CHORD = 0.05;

/** One curve of a drawing as a polyline. */
export interface InkLine {
  readonly points: readonly Point[];
  readonly bounds: Box;
  readonly stroke: Stroke;
}

/** Where a drawing is not white: its lines as polylines, and the middles of its words. */
export interface Ink {
  readonly lines: readonly InkLine[];
  readonly words: readonly Point[];
  /** Every straight stretch of every line, and every word's middle as one without length: x, y, x, y. */
  readonly stretches: Float64Array;
}

/** The ink of all pieces together. */
export function drawingInk(drawings: readonly PieceDrawing[]): Ink {
  const lines = drawings
    .flatMap((drawing) => drawing.paths)
    .flatMap(({ curves, stroke }) =>
      curves.map((curve) => ({ points: flattenCurves([curve], INK_CHORD), bounds: curveBounds(curve), stroke })),
    );
  const words = drawings.flatMap((drawing) => drawing.texts.map((text) => text.at));
  return { lines, words, stretches: stretchesOf(lines, words) };
}

function stretchesOf(lines: readonly InkLine[], words: readonly Point[]): Float64Array {
  const found: number[] = words.flatMap(({ x, y }) => [x, y, x, y]);
  for (const { points } of lines) {
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [points[i - 1] as Point, points[i] as Point];
      found.push(a.x, a.y, b.x, b.y);
    }
  }
  return Float64Array.from(found);
}

/** The least box round all lines. */
export function inkBounds(ink: Ink): Box {
  return pointsBounds(
    ink.lines.flatMap(({ bounds }) => [
      { x: bounds.left, y: bounds.top },
      { x: bounds.right, y: bounds.bottom },
    ]),
  );
}

/** Whether a line runs through the box, or touches its border. */
export function inkCrosses(ink: Ink, box: Box): boolean {
  return ink.lines.some(
    ({ points, bounds }) =>
      boxesMeet(bounds, box) && points.some((p, i) => i > 0 && segmentMeets(points[i - 1] as Point, p, box)),
  );
}

/** The ink whose lines reach into a box; all words are kept. */
export const inkNear = (ink: Ink, box: Box): Ink => ({
  ...ink,
  lines: ink.lines.filter((line) => boxesMeet(line.bounds, box)),
});

/** Whether two boxes share a point. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** Whether a box holds a point, its border included. */
export const boxHolds = (box: Box, p: Point): boolean =>
  p.x >= box.left && p.x <= box.right && p.y >= box.top && p.y <= box.bottom;

/** A box grown on every side. */
export const boxGrown = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

/** Whether a straight stretch touches a box. Liang–Barsky: what of it is left after each side of the box has cut it. */
export function segmentMeets(a: Point, b: Point, box: Box): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const ways = [-dx, dx, -dy, dy];
  const rooms = [a.x - box.left, box.right - a.x, a.y - box.top, box.bottom - a.y];
  let from = 0;
  let to = 1;
  for (let side = 0; side < 4; side += 1) {
    const way = ways[side] as number;
    const room = rooms[side] as number;
    if (way === 0 && room < 0) return false;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  return from <= to;
}
