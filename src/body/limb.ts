import type { Mm } from '../length';
import { KNEE_BELOW_CROTCH } from './proportions';
import type { Body } from './types';

/** What a leg's shape is drawn from. */
export type LimbGirths = Pick<
  Body,
  'insideLeg' | 'thighGirth' | 'kneeGirth' | 'calfGirth' | 'ankleGirth' | 'footEntryGirth'
>;

/** Heights above the floor as shares of the crotch's: as slim as the ankle up to here; the calf's fullest part (practice). */
const ANKLE = 0.12;
const CALF = 0.4;

/** Height above the floor and girth, from the ankle up. */
const placesOf = (body: LimbGirths): readonly (readonly [Mm, Mm])[] => [
  [ANKLE * body.insideLeg, body.ankleGirth],
  [CALF * body.insideLeg, body.calfGirth],
  [(1 - KNEE_BELOW_CROTCH) * body.insideLeg, body.kneeGirth],
  [body.insideLeg, body.thighGirth],
];

/**
 * How far it is round a leg at a height: straight between ankle, calf, knee and thigh, and never beyond them (practice).
 *
 * @param body measured or estimated girths
 * @param height above the floor
 */
export function limbGirth(body: LimbGirths, height: Mm): Mm {
  const places = placesOf(body);
  const above = places.findIndex(([at]) => at >= height);
  if (above === 0) return body.ankleGirth;
  const [from, to] = [places[above - 1], places[above]];
  if (!from || !to) return body.thighGirth;
  return from[1] + ((height - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
}

/**
 * The fullest that a hem passes on its way up to a height: the foot, and a calf or a knee below it (practice).
 *
 * @param body measured or estimated girths
 * @param height above the floor
 */
export const fullestBelow = (body: LimbGirths, height: Mm): Mm =>
  Math.max(body.footEntryGirth, ...placesOf(body).flatMap(([at, girth]) => (at <= height ? [girth] : [])));
