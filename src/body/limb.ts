import type { Mm } from '../length';
import { KNEE_BELOW_CROTCH } from './proportions';
import type { Body } from './types';

/** What a leg's shape is drawn from. */
export type LimbGirths = Pick<
  Body,
  'insideLeg' | 'thighGirth' | 'kneeGirth' | 'calfGirth' | 'ankleGirth' | 'footEntryGirth'
> &
  // Where the knee was measured, it is there and not where knees usually are.
  Partial<Pick<Body, 'bodyRise' | 'waistToKnee' | 'estimates'>>;

/** Heights above the floor as shares of the crotch's: as slim as the ankle up to here; the calf's fullest part. @source practice */
const ANKLE = 0.12;
const CALF = 0.4;

/** A place of the leg at which its girth is known. */
export interface LimbPlace {
  readonly key: 'footEntryGirth' | 'ankleGirth' | 'calfGirth' | 'kneeGirth' | 'thighGirth';
  /** Above the floor. */
  readonly height: Mm;
  readonly girth: Mm;
}

/** The places of a leg from the ankle up. */
export const limbPlaces = (body: LimbGirths): readonly LimbPlace[] => [
  { key: 'ankleGirth', height: ANKLE * body.insideLeg, girth: body.ankleGirth },
  { key: 'calfGirth', height: CALF * body.insideLeg, girth: body.calfGirth },
  { key: 'kneeGirth', height: kneeHeight(body), girth: body.kneeGirth },
  { key: 'thighGirth', height: body.insideLeg, girth: body.thighGirth },
];

/** Between calf and crotch, however a knee was measured. */
function kneeHeight({ insideLeg, bodyRise, waistToKnee, estimates }: LimbGirths): Mm {
  const usual = (1 - KNEE_BELOW_CROTCH) * insideLeg;
  if (bodyRise === undefined || waistToKnee === undefined || !estimates) return usual;
  if (estimates.some(({ key }) => key === 'waistToKnee')) return usual;
  return Math.min(insideLeg - APART, Math.max(CALF * insideLeg + APART, bodyRise + insideLeg - waistToKnee));
}

/** No two places of a limb lie nearer to each other. @source tolerance */
const APART: Mm = 1;

/**
 * How far it is round a leg at a height: straight between ankle, calf, knee and thigh, and never beyond them.
 *
 * @param body measured or estimated girths
 * @param height above the floor
 * @source practice
 */
export function limbGirth(body: LimbGirths, height: Mm): Mm {
  const places = limbPlaces(body);
  const above = places.findIndex((place) => place.height >= height);
  if (above === 0) return body.ankleGirth;
  const [from, to] = [places[above - 1], places[above]];
  if (!from || !to) return body.thighGirth;
  return from.girth + ((height - from.height) / (to.height - from.height)) * (to.girth - from.girth);
}

/**
 * What a hem passes on its way up to a height: the foot, and ankle, calf or knee below it.
 *
 * @param body measured or estimated girths
 * @param height above the floor
 * @source practice
 */
export const passedBelow = (body: LimbGirths, height: Mm): readonly LimbPlace[] => [
  { key: 'footEntryGirth', height: 0, girth: body.footEntryGirth },
  ...limbPlaces(body).filter((place) => place.height <= height),
];
