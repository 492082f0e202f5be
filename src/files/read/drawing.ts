import type { Drawing } from '../../trace';
import { Refusal, type Result, say } from '../../words';
import { dxfDrawing } from './dxf-drawing';
import { isDxf } from './dxf-pairs';
import { svgDrawing } from './lines';
import { refuseDrawing } from './place';

/**
 * The lines and words of a drawing, SVG or DXF as its text shows, whatever they are called. Nothing in it is run, and
 * nothing that it refers to is fetched.
 *
 * @param text of the file
 * @returns the drawing, or why it can’t be read
 */
export async function readDrawing(text: string): Promise<Result<Drawing>> {
  try {
    const drawing = isDxf(text) ? dxfDrawing(text) : await svgDrawing(text);
    if (drawing.runs.length === 0) refuseDrawing(undefined, say`has no line that can be read.`);
    return { ok: true, value: drawing };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}
