import type { Mm } from '../length';
import { mm, say } from '../words';
import type { Estimate, Known } from './types';

/** The crotch of trousers hangs so far below the body's, and their hem ends so far off the floor, barefoot. @source practice */
const HANG = { belowCrotch: 30, offFloor: 25 } as const;
/** How much shorter the inseam of trousers that fit is than the inside leg. @source practice */
export const TROUSERS_SHORTER: Mm = HANG.belowCrotch + HANG.offFloor;
/** People wear their trousers so much longer or shorter, standard deviation. @source practice */
const SPREAD: Mm = 15;

/**
 * The inside leg of somebody whose trousers were measured.
 *
 * @param trouserInseam of trousers that fit
 * @source practice
 */
export const insideLegFrom = (trouserInseam: Mm): Estimate => ({
  key: 'insideLeg',
  value: trouserInseam + TROUSERS_SHORTER,
  spread: SPREAD,
  source: say`practice: trousers hang about ${mm(HANG.belowCrotch)} below the body’s crotch and end about ${mm(HANG.offFloor)} above the floor`,
  from: ['trouserInseam'],
  basis: 'trousers',
});

/** The inside leg as it was measured or, where only trousers were, as they tell it. */
export const insideLegOf = ({ insideLeg, trouserInseam }: Known): Mm | undefined =>
  insideLeg ?? (trouserInseam === undefined ? undefined : insideLegFrom(trouserInseam).value);
