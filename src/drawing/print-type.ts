import { MM_PER_INCH, type Mm } from '../length';

/** Measures a text in millimetres at a font size in points. */
export type WidthOf = (text: string, pt: number) => Mm;

/** A point of the printing trade: 1/72 inch. */
const MM_PER_PT = MM_PER_INCH / 72;

/** The print font's capitals, and what hangs below its baseline, in parts of the font size (DejaVu Sans's own tables). */
const CAPITALS = 0.729;
export const DESCENT = 0.236;
/** The top of the tallest ordinary letter, and of one with an accent: where readers take a line to end. */
export const ASCENT = 0.76;
export const LINE_TOP = 0.928;
/** From baseline to baseline, in parts of the font size. */
const LEADING = 1.28;

export const mmOfPt = (pt: number): Mm => pt * MM_PER_PT;

/** The font size whose capitals have this height. */
export const ptOfCapitals = (height: Mm): number => height / CAPITALS / MM_PER_PT;

/** The height of the capitals at a font size. */
export const capitalsOfPt = (pt: number): Mm => mmOfPt(pt) * CAPITALS;

/** The height of a line of text. */
export const lineHeight = (pt: number): Mm => mmOfPt(pt) * LEADING;

/** The baseline of a line whose top is `top`. */
export const baseline = (top: Mm, pt: number): Mm => top + mmOfPt(pt) * (ASCENT + (LEADING - ASCENT - DESCENT) / 2);
