import type { Mm } from '../../length';
import type { Point } from '../../plane';

/** One picture: as large as this, taken by a camera, or by a scanner that lies flat on the paper and sees no perspective. */
export interface Shot {
  readonly width: number;
  readonly height: number;
  readonly flat: boolean;
}

/** A mark of a sheet: the places on it that are seen, in their order, millimetres on the sheet. */
export type SheetMark = readonly Point[];

/**
 * Marks whose places to each other are known: a printed sheet, a rectangle that was measured, the glass of a scanner.
 * Where the sheet itself lies is not known; the first one holds the plane.
 */
export interface Sheet {
  readonly marks: readonly SheetMark[];
}

/** Where a picture was pressed or a mark found, pixels of the upright picture. */
export interface Sight {
  readonly shot: number;
  readonly at: Point;
}

/** A mark of a sheet as it is seen: each of its places, pixels. */
export interface MarkSeen {
  readonly shot: number;
  readonly sheet: number;
  readonly mark: number;
  readonly at: readonly Point[];
  /** How far off its place each lies, both ways: a standard deviation, pixels. */
  readonly off: number;
}

/** One place that two or more pictures show: it joins them. */
export interface Tie {
  readonly seen: readonly Sight[];
  readonly off: number;
}

/** Points on something that is straight, on the paper or anywhere else on the picture: they tell of the lens. */
export interface StraightEdge {
  readonly shot: number;
  readonly points: readonly Point[];
  readonly off: number;
}

/** A length that was measured from one place to another. */
export interface MeasuredLength {
  readonly ends: readonly [Sight, Sight];
  readonly length: Mm;
  /** How truly it was measured, a standard deviation, millimetres. */
  readonly off: Mm;
}

/** All that is seen of one plane on a few pictures. */
export interface Sightings {
  readonly shots: readonly Shot[];
  readonly sheets: readonly Sheet[];
  readonly marks: readonly MarkSeen[];
  readonly ties: readonly Tie[];
  readonly edges: readonly StraightEdge[];
  /** Lengths that take part in the joining; those that only check it are asked for afterwards. */
  readonly lengths: readonly MeasuredLength[];
}
