import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
  type Point,
  pathEnd,
  pathLength,
  pathReaimed,
  pathStart,
  pathStartWay,
  point,
  solveBetween,
  TOLERANCE,
} from '../plane';
import { arrivalAt, inseamStretched } from './inseams';
import { overSide } from './over-side';
import type { Leg, LegHalf } from './types';

/** How much longer and wider cloth is cut that will shrink in its first wash; 1 and 1 where it was washed before. */
export interface Growth {
  readonly lengthwise: number;
  readonly crosswise: number;
}

/**
 * What is cut of cloth that shrinks: 1 ÷ (1 − shrinkage) of what is worn.
 *
 * @param cloth shrinkage as fractions, and whether it was washed first
 * @source practice
 */
export function growthFor(cloth: {
  readonly washFirst: boolean;
  readonly shrinkLength: number;
  readonly shrinkWidth: number;
}): Growth {
  if (cloth.washFirst) return { lengthwise: 1, crosswise: 1 };
  return { lengthwise: 1 / (1 - cloth.shrinkLength), crosswise: 1 / (1 - cloth.shrinkWidth) };
}

/**
 * A leg as it is cut of cloth that is sewn before its first wash: longer and wider by the cloth's own growth.
 *
 * Where that differs along and across, seams that slant differently grow differently, and corners turn. What is sewn
 * together must be equal when it is sewn: the back inseam is brought to the front's length from the hem up, and both
 * crotch curves meet their inseams at the angles at which they met them before.
 *
 * @param leg the leg as it is worn
 * @param growth longer and wider
 * @source practice
 */
export function legGrown(leg: Leg, growth: Growth): Leg {
  const { lengthwise, crosswise } = growth;
  if (lengthwise === 1 && crosswise === 1) return leg;
  const place = ({ x, y }: Point): Point => point(x * crosswise, y * lengthwise);
  const grow = (curves: readonly Curve[]): readonly Curve[] => curves.map((curve) => curveMap(curve, place));
  const frontInseam = grow(leg.front.inseam);
  // Inseams that were brought along unequal stay as unequal as they were.
  const unequal = (pathLength(leg.back.inseam) - pathLength(leg.front.inseam)) * lengthwise;
  const backInseam = inseamAtLength(grow(leg.back.inseam), pathLength(frontInseam) + unequal);
  const front = halfGrown(leg.front, frontInseam, place, grow);
  const back = halfGrown(leg.back, backInseam, place, grow);
  const higherSide = (leg.higherSide ?? 0) * lengthwise;
  return {
    ...leg,
    front,
    back,
    waistEdge: overSide([back.waistPoint, front.waistPoint], higherSide),
    higherSide,
    hem: grow(leg.hem),
    hipLevel: leg.hipLevel * lengthwise,
    crotchLevel: leg.crotchLevel * lengthwise,
    kneeLevel: leg.kneeLevel === undefined ? undefined : leg.kneeLevel * lengthwise,
    backCrotchDrop: pathStart(backInseam).y - pathStart(frontInseam).y,
    joined: { front: grow(leg.joined.front), back: grow(leg.joined.back) },
  };
}

/** How far an inseam is stretched or shortened, at most, to meet its partner: bounds of a search. @source tolerance */
const STRETCH = [0.8, 1.25] as const;

/** An inseam at another length: stretched upwards from the hem, so that hem and widths stay. */
function inseamAtLength(inseam: readonly Curve[], length: Mm): readonly Curve[] {
  const hem = pathEnd(inseam).y;
  const at = (stretch: number): readonly Curve[] => inseamStretched(inseam, hem, stretch);
  return at(solveBetween((stretch) => pathLength(at(stretch)) - length, ...STRETCH, TOLERANCE.solved));
}

function halfGrown(
  half: LegHalf,
  inseam: readonly Curve[],
  place: (p: Point) => Point,
  grow: (curves: readonly Curve[]) => readonly Curve[],
): LegHalf {
  const crotch = grow(half.crotch);
  const arrival = arrivalAt(half.crotch, half.inseam, inseam);
  const curveEnd = pathStart(crotch);
  return {
    ...half,
    waistPoint: place(half.waistPoint),
    hipPoint: place(half.hipPoint),
    curveEnd,
    crotchPoint: arrival.at,
    crotch: pathReaimed(crotch, { at: curveEnd, way: pathStartWay(crotch) }, arrival),
    inseam,
  };
}
