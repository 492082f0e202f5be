import { type Curve, pathReverse, straight } from '../plane';
import type { Leg } from './types';

/** The leg's own outline without casing and hem, clockwise, for drawing. */
export function legCurves(leg: Leg): readonly Curve[] {
  return [
    ...leg.waistEdge,
    straight(leg.front.waistPoint, leg.front.curveEnd),
    ...leg.front.crotch,
    ...leg.front.inseam,
    ...leg.hem,
    ...pathReverse(leg.back.inseam),
    ...pathReverse(leg.back.crotch),
    straight(leg.back.curveEnd, leg.back.waistPoint),
  ];
}
