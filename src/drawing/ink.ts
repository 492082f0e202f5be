import { type Box, boxesMeet, boxMeetsSegment, boxRound, curveBounds, flattenCurves, type Point } from '../plane';
import type { PieceDrawing, Stroke } from './drawing';

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
export const inkBounds = (ink: Ink): Box => boxRound(ink.lines.map(({ bounds }) => bounds));

/** Whether a line runs through the box, or touches its border. */
export function inkCrosses(ink: Ink, box: Box): boolean {
  return ink.lines.some(
    ({ points, bounds }) =>
      boxesMeet(bounds, box) && points.some((p, i) => i > 0 && boxMeetsSegment(box, points[i - 1] as Point, p)),
  );
}

/** The ink whose lines reach into a box; all words are kept. */
export const inkNear = (ink: Ink, box: Box): Ink => ({
  ...ink,
  lines: ink.lines.filter((line) => boxesMeet(line.bounds, box)),
});
