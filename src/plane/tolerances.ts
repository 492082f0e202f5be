/**
 * Every tolerance of the program's geometry, each with its reason. Millimetres unless the name says otherwise.
 * A cutter's pencil line is 0.5 mm wide; the promises to the outside are 0.05 mm for parallels and 0.02 mm for chords.
 */
export const TOLERANCE = {
  /** Two points are one point: far below any printer, far above rounding in sums of a thousand millimetres. */
  samePoint: 1e-6,
  /** Arc lengths are integrated to this; seams are compared at 0.1 mm. */
  arcLength: 1e-7,
  /** A parallel curve may leave the exact parallel by this; a fifth of what is promised. */
  parallel: 0.01,
  /** No chord of a sampled curve leaves the curve by more (the report's promise). */
  chord: 0.02,
  /** A curve whose handles lie this close to its chord is drawn as a straight line. */
  straight: 1e-7,
  /** Solvers stop when a length is reached this closely. */
  solved: 1e-6,
  /** Below this turn (radians, 0.3°) two edges meet as one smooth run and need no corner. */
  smoothTurn: 0.005,
} as const;
