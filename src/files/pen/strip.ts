import type { Mm } from '../../length';
import type { Pen } from './pen';

/** A part of a column that is never torn apart: a line of words, a row of a table, a picture. */
export interface Strip {
  /** White above it, unless it begins a column. */
  readonly above: Mm;
  readonly height: Mm;
  /** Whether it stays with the strip below it. */
  readonly stays?: boolean;
  /** How many of the strips from here on are best not parted; only said where a group begins. */
  readonly groups?: number;
  readonly draw: (pen: Pen, left: Mm, top: Mm) => void;
}

/** What strips take below each other, without the white above the first. */
export const stripsHeight = (strips: readonly Strip[]): Mm =>
  strips.reduce((sum, { above, height }, i) => sum + (i === 0 ? 0 : above) + height, 0);

/** Several strips as one. */
export const joinedStrip = (strips: readonly Strip[]): Strip => ({
  above: strips[0]?.above ?? 0,
  height: stripsHeight(strips),
  draw: (pen, left, top) => drawStrips(pen, strips, left, top),
});

/** Draws strips below each other; returns where they end. */
export function drawStrips(pen: Pen, strips: readonly Strip[], left: Mm, top: Mm): Mm {
  let y = top;
  for (const [i, { above, height, draw }] of strips.entries()) {
    if (i > 0) y += above;
    draw(pen, left, y);
    y += height;
  }
  return y;
}

/** The same strips with more white above the first. */
export const stripsBelow = (above: Mm, strips: readonly Strip[]): readonly Strip[] =>
  strips.map((strip, i) => (i === 0 ? { ...strip, above: Math.max(above, strip.above) } : strip));

/** The same strips, all but the last staying with the next. */
export const stripsTogether = (strips: readonly Strip[], also = false): readonly Strip[] =>
  strips.map((strip, i) => (i < strips.length - 1 || also ? { ...strip, stays: true } : strip));
