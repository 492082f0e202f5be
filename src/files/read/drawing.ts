import type { Drawing, TracedPair } from '../../trace';
import { type Problem, Refusal, type Result, say } from '../../words';
import { readBlocks } from './blocks';
import { dxfDrawing } from './dxf-drawing';
import { isDxf } from './dxf-pairs';
import { svgDrawing } from './lines';
import { refuseDrawing } from './place';

/** What a drawing holds: two blocks by the names of their lines, or lines of which only their shapes tell what they are. */
export type DrawingRead = { readonly pair: TracedPair } | { readonly drawing: Drawing };

/**
 * Reads somebody’s drawing, SVG or DXF as its text shows. Where its lines have the names of a block’s they are taken by
 * these; else all its lines and words are handed on. Nothing in it is run, and nothing that it refers to is fetched.
 *
 * @param text of the file
 * @returns what it holds, or why it can’t be read, or what is missing of the lines by their names
 */
export async function readDrawing(text: string): Promise<Result<DrawingRead>> {
  if (!isDxf(text)) {
    const named = await readBlocks(text);
    if (named.ok) return { ok: true, value: { pair: named.value } };
    if (!named.problems.every(isOfFile)) return named;
  }
  try {
    const drawing = isDxf(text) ? dxfDrawing(text) : await svgDrawing(text);
    if (drawing.runs.length === 0) refuseDrawing(undefined, say`has no line that can be read.`);
    return { ok: true, value: { drawing } };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}

/** Whether a problem is of the whole file and not of a line by its name: then its lines may do without names. */
const isOfFile = ({ field }: Problem): boolean => field === 'file';
