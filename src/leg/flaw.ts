import type { Mm } from '../length';
import { type Curve, curveTangent, outlineCrossings, type Point, pathLength } from '../plane';
import { legCurves } from './curves';
import type { Leg } from './types';

/**
 * Why the lines of a leg are no leg: they run off without end, an inseam turns back upwards, lines cross, or seams that
 * are sewn to each other differ.
 */
export type LegFlaw = 'endless' | 'turningBack' | 'crossing' | 'unequal';

/** No point of a pattern lies farther from the side of the waist: twice the longest leg that can be asked for. @source tolerance */
const FARTHEST: Mm = 5000;
/** Drafted inseams are solved to be equal; a search that found nothing leaves them apart by more. @source tolerance */
const EQUAL: Mm = 0.05;
/** Places of an inseam at which its direction is looked at. @source tolerance: about one every four centimetres */
const PLACES = 24;

/**
 * What keeps a net leg from being cut and sewn; undefined for every leg that can be.
 *
 * @param leg as it was drawn, whatever it looks like
 * @param inseamsAsBrought blocks that were brought along may have unequal inseams: that is told by a check
 */
export function legFlaw(leg: Leg, inseamsAsBrought: boolean): LegFlaw | undefined {
  const curves = legCurves(leg);
  if (!curves.every((curve) => curve.every(isNear))) return 'endless';
  if (![leg.front, leg.back].every(({ inseam }) => inseam.every(runsDown))) return 'turningBack';
  if (outlineCrossings(curves).length > 0) return 'crossing';
  if (inseamsAsBrought) return undefined;
  return Math.abs(pathLength(leg.front.inseam) - pathLength(leg.back.inseam)) <= EQUAL ? undefined : 'unequal';
}

/** NaN is not near either. */
const isNear = ({ x, y }: Point): boolean => Math.abs(x) < FARTHEST && Math.abs(y) < FARTHEST;

const runsDown = (curve: Curve): boolean =>
  Array.from({ length: PLACES + 1 }, (_, i) => curveTangent(curve, i / PLACES).y).every((down) => down >= 0);
