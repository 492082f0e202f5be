import { eighthsText, MM_PER_INCH, type Mm, plain, type Units } from './length';
import { SHOWN_STEP, shownSteps } from './rounding';

/**
 * Prints a length for people, the same on screen and paper: centimetres to the millimetre, inches to the eighth.
 *
 * @param mm millimetres
 * @param units the display units
 * @returns e.g. `102.4 cm`, `0.3 cm`, `40⅛ in`
 */
export function formatLength(mm: Mm, units: Units): string {
  const { value, unit } = formatParts(mm, units);
  return `${value} ${unit}`;
}

/**
 * The same as {@link formatLength}, number and unit apart, for tables and fields.
 *
 * @param mm millimetres
 * @param units the display units
 */
export function formatParts(mm: Mm, units: Units): { readonly value: string; readonly unit: string } {
  const steps = shownSteps(mm, units);
  return units === 'inch' ? { value: eighthsText(steps), unit: 'in' } : { value: plain(steps / 10, 1), unit: 'cm' };
}

/** Whoever types half a step, such as 1.25 cm or 3/16 in, means it. */
const TYPED = 2;
/** So near to half a step a number was typed there, mm. */
const NEAR: Mm = 0.005;

/**
 * A length as it stands in an input field, in the project's unit: rounded like all that is shown, save where half a step
 * was typed. What is kept stays as it is.
 *
 * @param mm millimetres
 * @param units the display units
 */
export function fieldText(mm: Mm, units: Units): string {
  const half = SHOWN_STEP[units] / TYPED;
  const halves = Math.round(mm / half);
  if (halves % TYPED === 0 || Math.abs(halves * half - mm) > NEAR) return formatParts(mm, units).value;
  return units === 'cm' ? plain(mm / 10, 2) : sixteenthsText(halves);
}

/** Whole and an odd number of sixteenths with their sign: `−2 3/16`. */
function sixteenthsText(sixteenths: number): string {
  const whole = Math.floor(Math.abs(sixteenths) / 16);
  return `${sixteenths < 0 ? '−' : ''}${whole === 0 ? '' : `${whole} `}${Math.abs(sixteenths) % 16}/16`;
}

/**
 * A length for a file that is read again, and for a field where a hair counts: exact within 0.05 mm.
 *
 * @param mm millimetres
 * @param units the display units
 */
export function exactText(mm: Mm, units: Units): string {
  if (units === 'cm') return plain(mm / 10, 2);
  const eighths = Math.round((mm / MM_PER_INCH) * 8);
  return Math.abs((eighths / 8) * MM_PER_INCH - mm) < 0.05 ? eighthsText(eighths) : plain(mm / MM_PER_INCH, 3);
}
