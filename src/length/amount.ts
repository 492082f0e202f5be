import { eighthsText, MM_PER_INCH, type Mm, plain, type Units } from './length';

/** Shops cut cloth, elastic and cord to these steps: 10 cm, or an eighth of a yard. */
const STEP: Readonly<Record<Units, Mm>> = { cm: 100, inch: (36 * MM_PER_INCH) / 8 };

/** What is above a step by less is rounding, not cloth. */
const ROUNDING = 0.01;

/**
 * The next larger length that a shop cuts: full 10 cm, or full eighths of a yard.
 *
 * @param mm millimetres
 * @param units the display units
 * @returns millimetres
 */
export const amountUp = (mm: Mm, units: Units): Mm =>
  Math.max(1, Math.ceil((mm - ROUNDING) / STEP[units])) * STEP[units];

/**
 * An amount to buy, rounded up to what a shop cuts.
 *
 * @param mm millimetres
 * @param units the display units
 * @returns e.g. `2.3 m`, `2⅝ yd`
 */
export function formatAmount(mm: Mm, units: Units): string {
  const up = amountUp(mm, units);
  return units === 'cm' ? `${plain(up / 1000, 1)} m` : `${eighthsText(Math.round(up / STEP.inch))} yd`;
}
