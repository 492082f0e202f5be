import type { Mm } from '../length';
import type { Box, Curve, Point } from '../plane';
import type { Crosses } from './ink-grid';
import type { TiltedBox } from './tilted-box';
import type { PaperScale } from './types';

/** A line of words as it is wanted; its capitals are so high on the drawing. */
export interface WantedLine {
  readonly text: string;
  readonly size: Mm;
}

/** What a piece says once: at a place, or as near to it as there is room. */
export interface WantedOnce {
  /** Most needed first; where there is no room for all of them the last are left out. */
  readonly lines: readonly [WantedLine, ...WantedLine[]];
  /** The middle of the lines, on the drawing. */
  readonly at: Point;
  readonly turn: number;
  /** Where on the drawing it would still be understood, and a box that holds all of that. */
  readonly belongs: { readonly at: (p: Point) => boolean; readonly within: Box };
}

/** What a line says along itself. */
export interface WantedAlong {
  /** On the drawing; the words stand beside any of them. */
  readonly runs: readonly (readonly Curve[])[];
  /** Ways to say it, the fullest first. */
  readonly says: readonly [string, ...string[]];
  readonly size: Mm;
  /** By how many degrees its piece is turned on the drawing: words are read as on the upright piece. */
  readonly turn: number;
  /** On which side the words rather stand: within a clockwise outline, or above the line as it is read. */
  readonly side: 'inside' | 'above';
  /** A mark is shorter than its words, which reach beyond it. */
  readonly mark?: boolean;
  /** Said once on the whole drawing, not in each room. */
  readonly once?: boolean;
}

/** All that is to be said on a drawing, most needed first. */
export interface Wanted {
  readonly once: readonly WantedOnce[];
  readonly along: readonly WantedAlong[];
}

/** Where words may stand: one sheet, or the whole drawing. */
export interface WordRoom {
  /** On the drawing. */
  readonly box: Box;
  readonly scale: PaperScale;
  readonly crosses: Crosses;
  /** What is covered already, on the drawing. */
  readonly taken: readonly Box[];
}

/** How words are set. */
export interface WordSetting {
  /** How far apart a line says the same again in one room, on the drawing; once where it is left out. */
  readonly every?: Mm;
  /** The smallest type, in points. */
  readonly least?: number;
  /** How much of a line, half of its width, lies beside its middle, on the paper. */
  readonly halfLine?: Mm;
}

/** A room in millimetres of the paper, with what is covered there so far. */
export interface OpenRoom {
  readonly box: Box;
  readonly scale: PaperScale;
  readonly isFree: (covers: TiltedBox) => boolean;
}
