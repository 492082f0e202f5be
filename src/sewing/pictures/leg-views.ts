import { type Curve, distance, type Edge, type Point, pathEnd, subtract } from '../../plane';
import type { Garment } from '../garment';
import { cutOff, laidOn, type Move, polygon, polyline } from './polygon';

/** The leg as it is cut, and as it is sewn; worn sizes, so that casing and hem lines fit. */
export const cutLeg = ({ finished }: Garment): readonly Point[] =>
  polygon(finished.sewn.cutLine.flatMap((edge) => edge.curves));

export const sewnLeg = ({ finished }: Garment): readonly Point[] =>
  polygon(finished.sewn.stitchLine.flatMap((edge) => edge.curves));

/** Edges of an outline that begin with a name, as one run. */
export const runOf = (outline: readonly Edge[], ...starts: readonly string[]): readonly Curve[] =>
  outline.filter((edge) => starts.some((start) => edge.name.startsWith(start))).flatMap((edge) => edge.curves);

/** The fold of a leg whose inseams lie on each other: the back, turned over in it, meets the front along the inseam. */
export interface FoldedLeg {
  /** On the fold, from its upper to its lower end; the front lies on the left of this way. */
  readonly fold: readonly [Point, Point];
  /** Lays the back on the front. */
  readonly over: Move;
  readonly front: readonly Point[];
  readonly back: readonly Point[];
}

/** A leg folded right sides together, its front half up. The fold runs near the side, for the back is wider. */
export function foldedLeg(g: Garment, outline: readonly Point[]): FoldedLeg {
  const { front, back } = g.leg;
  const [fc, fh] = [front.crotchPoint, pathEnd(front.inseam)];
  const [bc, bh] = [back.crotchPoint, pathEnd(back.inseam)];
  // Laying one line on another while turning over is a mirroring; its axis halves the way from each point to its image.
  const over = laidOn(bc, bh, fc, subtract(fh, fc), true);
  const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const fold = [middle(bc, over(bc)), middle(bh, over(bh))] as const;
  const way = subtract(fold[1], fold[0]);
  const up = { x: -way.x, y: -way.y };
  return {
    fold,
    over,
    front: cutOff(outline, fold[0], up),
    back: cutOff(outline, fold[0], way).map(over),
  };
}

/** A leg sewn to a tube and laid flat with its inseam up, in the middle. */
export interface Tube {
  /** The upper layer: front, back, and what lies between their hollow inseams. Its upper edge is the crotch curve, a U. */
  readonly near: readonly (readonly Point[])[];
  /** The layer below it, with the side in its middle. */
  readonly far: readonly Point[];
  /** The inseam, from the crotch to the hem fold. */
  readonly inseam: readonly [Point, Point];
  /** The crotch edge from the waist in front to the waist behind. */
  readonly crotch: readonly Point[];
  /** Puts points of the front half, or of the back half, on the upper layer. */
  readonly front: Move;
  readonly back: Move;
  /** The folds, from above the waist to the hem. */
  readonly frontFold: readonly [Point, Point];
  readonly backFold: readonly [Point, Point];
}

/** The finished leg as a tube: its inseam straight and upright, front and back laid to its sides. */
export function tubeOf(g: Garment): Tube {
  const { front, back } = g.leg;
  const outline = sewnLeg(g);
  const { stitchLine } = g.finished.sewn;
  const [fc, fh] = [front.crotchPoint, pathEnd(front.inseam)];
  const [bc, bh] = [back.crotchPoint, pathEnd(back.inseam)];
  const top: Point = { x: (fh.x + bh.x) / 2, y: fc.y };
  const down: Point = { x: 0, y: 1 };
  const bottom: Point = { x: top.x, y: fc.y + distance(fc, fh) };
  const toFront = laidOn(fc, fh, top, down, true);
  const toBack = laidOn(bc, bh, top, down, true);
  const half = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const frontFold = [half(fc, top), half(fh, bottom)] as const;
  const backFold = [half(bc, top), half(bh, bottom)] as const;
  const wayOf = ([a, b]: readonly [Point, Point]): Point => subtract(b, a);
  const turnedBack = ({ x, y }: Point): Point => ({ x: -x, y: -y });
  const ownFront = cutOff(outline, frontFold[0], turnedBack(wayOf(frontFold)));
  const ownBack = cutOff(outline, backFold[0], wayOf(backFold));
  const run = (move: Move, ...names: readonly string[]) => polyline(runOf(stitchLine, ...names)).map(move);
  const inseamFront = run(toFront, 'inseamFront');
  const inseamBack = run(toBack, 'inseamBack');
  return {
    near: [ownFront.map(toFront), ownBack.map(toBack), [...inseamFront, ...inseamBack]],
    far: cutOff(cutOff(outline, frontFold[0], wayOf(frontFold)), backFold[0], turnedBack(wayOf(backFold))),
    inseam: [top, bottom],
    crotch: [...run(toFront, 'centreFront', 'crotchFront'), ...run(toBack, 'crotchBack', 'centreBack')],
    front: toFront,
    back: toBack,
    frontFold,
    backFold,
  };
}
