import type { Mm } from '../length';
import { curveMeetsLine, curvePoint, type Outline, outlineCurves, type Point } from '../plane';
import { letterFitting, TALLEST } from './lettering';
import type { PieceText } from './piece';
import { countedWords, KIND_NAMES } from './piece-names';

/** Both lie beside the seam, where the tip is tallest: the words first, the grainline where it is still long. As shares of its width. */
const WORDS_AT = 0.16;
const GRAIN_AT = 0.5;
/** What of the tip's height there is left free at each end. */
const CLEAR = 0.1;

/**
 * The grainline of a fork's tip: parallel to its seam, which runs along the grain.
 *
 * @param outline of the tip, net
 * @param seamX where its seam lies, the tip on its left
 * @param width of the tip
 */
export function grainlineInTip(outline: Outline, seamX: Mm, width: Mm): readonly [Point, Point] {
  const x = seamX - GRAIN_AT * width;
  const [top, bottom] = insideAt(outline, x);
  return [
    { x, y: top },
    { x, y: bottom },
  ];
}

/** What is written on it, along its seam. */
export function textsOfTip(outline: Outline, seamX: Mm, width: Mm): readonly PieceText[] {
  const text = countedWords(KIND_NAMES.forkTip, 2, true);
  const tallest = Math.min(TALLEST.onPieces, WORDS_AT * width);
  const x = seamX - WORDS_AT * width;
  const sides = [insideAt(outline, x), insideAt(outline, x - tallest)] as const;
  const [top, bottom] = [Math.max(sides[0][0], sides[1][0]), Math.min(sides[0][1], sides[1][1])];
  const size = Math.min(tallest, letterFitting(text, bottom - top));
  return [{ at: { x, y: (top + bottom) / 2 }, text, size, turn: -90, says: 'piece' }];
}

/** How far the tip reaches up and down at a place across, less what is left free. */
function insideAt(outline: Outline, x: Mm): readonly [top: Mm, bottom: Mm] {
  const ys = outlineCurves(outline).flatMap((curve) =>
    curveMeetsLine(curve, { x, y: 0 }, { x: 0, y: 1 }).map((t) => curvePoint(curve, t).y),
  );
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  return [top + CLEAR * (bottom - top), bottom - CLEAR * (bottom - top)];
}
