import type { Mm } from '../length';
import { type Box, type Point, pointsBounds } from '../plane';
import { onPaper } from './ink-grid';
import { DESCENT, LINE_TOP, mmOfPt, type WidthOf } from './print-type';
import { type TiltedBox, tiltedCorners } from './tilted-box';
import type { PaperScale } from './types';

/** A line of words at a place of its own. */
export interface PlacedWord {
  readonly text: string;
  /** The middle of the baseline, on the drawing. */
  readonly at: Point;
  readonly pt: number;
  /** Degrees, clockwise as seen. */
  readonly turn: number;
  /** What it covers, in millimetres of the paper from the drawing's origin. */
  readonly covers: TiltedBox;
}

/** No words are printed smaller: what a sewer reads at arm's length. */
export const LEAST_PT = 8;
/** Sizes tried where there is no free place at the words' own, down to the least: better small and whole than in part. */
export const SMALLER = [1, 0.8, 0.62, 0.48, 0] as const;

/** The way in which words run, and the way up from their baseline. */
export function waysOf(turn: number): { readonly along: Point; readonly up: Point } {
  const angle = (turn * Math.PI) / 180;
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  return { along: { x, y }, up: { x: y, y: -x } };
}

/**
 * A line of words whose baseline's middle lies at a place.
 *
 * @param at in millimetres of the paper
 */
export function wordAt(
  text: string,
  at: Point,
  pt: number,
  turn: number,
  scale: PaperScale,
  widthOf: WidthOf,
): PlacedWord {
  const { along: way, up } = waysOf(turn);
  const em = mmOfPt(pt);
  const rise: Mm = ((LINE_TOP - DESCENT) / 2) * em;
  const covers = {
    middle: { x: at.x + up.x * rise, y: at.y + up.y * rise },
    way,
    half: { along: widthOf(text, pt) / 2, across: ((LINE_TOP + DESCENT) / 2) * em },
  };
  return { text, at: { x: at.x / scale.x, y: at.y / scale.y }, pt, turn, covers };
}

/** The upright boxes, on the drawing, that together hold what a word covers: a slanting word fills little of one box. */
export function wordBoxes({ covers, turn }: PlacedWord, scale: PaperScale): readonly Box[] {
  const { middle, way, half } = covers;
  const count = turn % 90 === 0 ? 1 : Math.ceil(half.along / half.across);
  const part = half.along / count;
  return Array.from({ length: count }, (_, i) => {
    const at = (2 * i + 1 - count) * part;
    const piece = {
      middle: { x: middle.x + way.x * at, y: middle.y + way.y * at },
      way,
      half: { ...half, along: part },
    };
    return pointsBounds(tiltedCorners(piece).map((p) => onPaper(p, { x: 1 / scale.x, y: 1 / scale.y })));
  });
}

/** A word moved on the paper. */
export const wordMoved = (word: PlacedWord, by: Point, scale: PaperScale): PlacedWord => ({
  ...word,
  at: { x: word.at.x + by.x / scale.x, y: word.at.y + by.y / scale.y },
  covers: { ...word.covers, middle: { x: word.covers.middle.x + by.x, y: word.covers.middle.y + by.y } },
});
