import type { Curve } from '../../plane';
import {
  type BlockLine,
  blocksFromTrace,
  type DrawnLines,
  type TracedBlock,
  type TracedPair,
  traceFromLines,
  wordsOf,
} from '../../trace';
import { type Problem, Refusal, type Result, say } from '../../words';
import { type SvgLine, svgLines } from './lines';

/** The words by which a line is known, in the name of the line or of a group round it. */
const WORDS: Readonly<Record<string, BlockLine>> = {
  waist: 'waist',
  centre: 'centre',
  center: 'centre',
  crotch: 'crotch',
  inseam: 'inseam',
  hem: 'hem',
  side: 'side',
  grain: 'grainline',
  grainline: 'grainline',
  hip: 'hip',
  knee: 'knee',
};

/** Darts and notes are no edges, whatever else their name says. */
const PASSED_OVER: ReadonlySet<string> = new Set(['dart', 'darts', 'text', 'note', 'notes']);

/**
 * Reads a front and a back block from an SVG drawing at true size, upright, in millimetres or any unit that tells its
 * size. Its lines are known by their names: `front-waist`, `front-centre`, … `back-side`, with `front-grainline`,
 * `front-hip` and, if wanted, `front-knee`; or `waist`, `centre`, … within a group `front` or `back`. They may lie in
 * pieces, in any order, direction and place; a mirrored block is turned.
 *
 * @param text of the file
 * @returns the two tracings, or what is missing of them, line by line
 */
export async function readBlocks(text: string): Promise<Result<TracedPair>> {
  try {
    const lines = await svgLines(text, (names) => isOurs({ names }));
    const problems: Problem[] = [];
    const block = (part: 'front' | 'back'): TracedBlock | undefined => {
      try {
        return traceFromLines(part, linesOf(lines, part));
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        problems.push(...error.problems);
        return undefined;
      }
    };
    const [front, back] = [block('front'), block('back')];
    if (!front || !back) return { ok: false, problems: lines.length > 0 ? problems : [NOTHING_NAMED] };
    // Refuses edges that don't meet; the body's rise doesn't matter for that.
    blocksFromTrace(front, back, 0);
    return { ok: true, value: { front, back } };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}

const NOTHING_NAMED: Problem = {
  field: 'file',
  value: undefined,
  phrase: say`has no line of a block by its name: call the lines front-waist, front-centre, front-crotch and so on, as in the drawing of the blocks that Legwork writes.`,
};

type Named = Pick<SvgLine, 'names'>;
const isOurs = (line: Named): boolean => partOf(line) !== undefined && lineOf(line) !== undefined;

function linesOf(lines: readonly SvgLine[], part: 'front' | 'back'): DrawnLines {
  const found: Partial<Record<BlockLine, (readonly Curve[])[]>> = {};
  for (const line of lines) {
    const name = partOf(line) === part ? lineOf(line) : undefined;
    if (name === undefined) continue;
    found[name] = [...(found[name] ?? []), ...line.runs];
  }
  return found;
}

/** The innermost name that says it decides. */
function partOf({ names }: Named): 'front' | 'back' | undefined {
  for (const name of names) {
    const words = wordsOf(name);
    if (words.includes('front')) return 'front';
    if (words.includes('back')) return 'back';
  }
  return undefined;
}

function lineOf({ names }: Named): BlockLine | undefined {
  for (const name of names) {
    const words = wordsOf(name);
    if (words.some((word) => PASSED_OVER.has(word))) return undefined;
    const known = words.map((word) => WORDS[word]).find((line) => line !== undefined);
    if (known) return known;
  }
  return undefined;
}
