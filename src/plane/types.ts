import type { Mm } from '../length';
import type { Phrase } from '../words';

/** A point on the drawing: millimetres, x to the right, y down; the side line is x = 0, the waist level at the side y = 0. */
export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/** A cubic Bézier curve: start, first handle, second handle, end. A straight line has its handles on the chord. */
export type Curve = readonly [Point, Point, Point, Point];

/** A rectangle that stands upright, its borders included. */
export interface Box {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
}

/** A run of curves, each starting where the one before it ended, under the name by which the trade calls it. */
export interface Edge<Name extends string = string> {
  readonly name: Name;
  readonly curves: readonly Curve[];
}

/** A closed outline: its edges in order, clockwise as seen on the paper (y down), so that the outside is on the left. */
export type Outline<Name extends string = string> = readonly Edge<Name>[];

/** One step of the shown derivation: what was done, with which formula and values, and the lines that it drew. */
export interface WorkingStep {
  /** Unique and stable, e.g. `blocks.front-width`. */
  readonly id: string;
  /** The station at which the step is shown. */
  readonly station: 'body' | 'blocks' | 'leg' | 'edges' | 'check' | 'cloth' | 'paper' | 'sew';
  /** What was done and why, as a plain sentence. */
  readonly sentence: Phrase;
  /** The formula in words with the values put in; empty where nothing was computed. */
  readonly formula: Phrase;
  /** What the step drew, in the coordinates of the drawing at its station. */
  readonly lines: readonly Edge[];
}
