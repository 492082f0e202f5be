import type { Mm } from '../length';
import type { Curve, Point } from '../plane';

/** One half of the joined leg: from its centre to its inseam, on its own side of the side line. */
export interface LegHalf {
  readonly part: 'front' | 'back';
  /** Where the centre line meets the waist edge. */
  readonly waistPoint: Point;
  /** At the hip level, on the centre line or, where that ends above it, on the crotch curve. */
  readonly hipPoint: Point;
  /** The crotch curve's upper end, where the centre line becomes curve: the point about which it was straightened. */
  readonly curveEnd: Point;
  readonly crotchPoint: Point;
  /** From the curve's upper end to the crotch point. */
  readonly crotch: readonly Curve[];
  /** From the crotch point to the hem fold. */
  readonly inseam: readonly Curve[];
  /** The centre line's angle to the grain, degrees; positive where it leans inwards above the hip. */
  readonly lean: number;
}

/** The leg, net, before casings and hems: both halves and the edges that run across them. */
export interface Leg {
  readonly front: LegHalf;
  readonly back: LegHalf;
  /** From centre back to centre front. */
  readonly waistEdge: readonly Curve[];
  /** By how much the waist edge was turned (degrees) so that it is square enough to both seams, and lifted after that. */
  readonly waistTurned: number;
  readonly waistLifted: Mm;
  /** How much higher the waist edge lies over the side than the straight line; 0 but for a higher hip. */
  readonly higherSide?: Mm;
  /** From the front inseam to the back inseam: the hem fold. */
  readonly hem: readonly Curve[];
  readonly hipLevel: Mm;
  readonly crotchLevel: Mm;
  /** Undefined where the leg ends above the knee. */
  readonly kneeLevel: Mm | undefined;
  readonly spread: Mm;
  /** 0 as on the block … 1 upright. */
  readonly straighten: number;
  readonly straightenAutomatic: boolean;
  readonly gapAtWaist: Mm;
  readonly gapAtKnee: Mm;
  readonly gapAtHem: Mm;
  readonly backCrotchDrop: Mm;
  /** Change of the crotch length by straightening. */
  readonly crotchChange: Mm;
  /** Both blocks as they lie joined and spread, for the drawing underneath. */
  readonly joined: { readonly front: readonly Curve[]; readonly back: readonly Curve[] };
}
