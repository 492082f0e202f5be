import type { Mm } from '../length';
import type { Point } from '../plane';
import { letterFitting, TALLEST } from './lettering';
import type { PieceText } from './piece';

/** Both lie beside the seam, where the tip is tallest: the words first, the grainline where it is still long. As shares of its width. */
const WORDS_AT = 0.16;
const GRAIN_AT = 0.5;
/** What of the seam's length is free there, between crotch curve and inseam. */
const WORDS = { from: 0.11, to: 0.65 } as const;
const GRAIN = { from: 0.13, to: 0.45 } as const;

/**
 * The grainline of a fork's tip: parallel to its seam, which runs along the grain.
 *
 * @param upper the seam's upper end
 * @param lower its lower end
 * @param width of the tip
 */
export function grainlineInTip(upper: Point, lower: Point, width: Mm): readonly [Point, Point] {
  const at = (share: number): Point => ({
    x: lower.x - GRAIN_AT * width,
    y: upper.y + share * (lower.y - upper.y),
  });
  return [at(GRAIN.from), at(GRAIN.to)];
}

/** What is written on it, along its seam. */
export function textsOfTip(name: string, upper: Point, lower: Point, width: Mm): readonly PieceText[] {
  const text = `${name} · cut 2, mirrored`;
  const tall = lower.y - upper.y;
  return [
    {
      at: { x: lower.x - WORDS_AT * width, y: upper.y + ((WORDS.from + WORDS.to) / 2) * tall },
      text,
      size: Math.min(TALLEST.onPieces, 0.16 * width, letterFitting(text, (WORDS.to - WORDS.from) * tall)),
      turn: -90,
      role: 'name',
    },
  ];
}
