import type { Mm } from '../../length';
import type { Curve, Point } from '../../plane';

/** A line of somebody’s drawing: curves that follow one another, y down. */
export interface DrawnRun {
  /** The names of the line itself and of all that is round it, innermost first: labels, layers, blocks, groups. */
  readonly names: readonly string[];
  readonly curves: readonly Curve[];
}

/** Words on the drawing, and where they begin. */
export interface DrawnWords {
  readonly text: string;
  readonly at: Point;
}

/** Somebody’s drawing, in its own units. */
export interface Drawing {
  readonly runs: readonly DrawnRun[];
  readonly words: readonly DrawnWords[];
  /** How many millimetres one unit is; undefined where the drawing doesn’t tell. */
  readonly unit: Mm | undefined;
  /** How many lines were passed over because it can’t be told where they lie. */
  readonly unread: number;
}

/** A closed line of a drawing, and what lies within it. */
export interface DrawnOutline {
  /** Closed, clockwise, each curve starting where the one before it ended. */
  readonly curves: readonly Curve[];
  readonly names: readonly string[];
  /** The other lines of the drawing that lie within it, and not within a smaller outline. */
  readonly lines: readonly DrawnRun[];
  readonly words: readonly string[];
  /** The widest gap that was closed to make it one line, in the drawing’s units. */
  readonly gap: number;
}
