import type { Units } from '../length';

/** What people are used to where somebody is: how a tape is marked, and the paper in a printer. */
export interface Habits {
  readonly units: Units;
  readonly sheet: 'A4' | 'Letter';
}

/** What holds nearly everywhere. */
export const METRIC: Habits = { units: 'cm', sheet: 'A4' };

/**
 * Where length is measured in feet and inches. Britain and Myanmar have a system of their own there, of miles and pints,
 * and Canadians tell heights in feet; patterns, tapes and cloth are sold in centimetres in all three.
 *
 * @source Unicode CLDR 48, measurementData: measurementSystem “US”
 */
const INCHES: ReadonlySet<string> = new Set(['US', 'LR']);

/**
 * Where letters are written on paper of 8½ × 11 in.
 *
 * @source Unicode CLDR 48, measurementData: paperSize “US-Letter”
 */
const LETTER: ReadonlySet<string> = new Set([
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
]);

/**
 * What people are used to in the region of a locale, e.g. `en-CA`; where it names none, in the region where most who
 * speak the language live. What is no locale is taken for {@link METRIC}.
 */
export function habitsOf(locale: string): Habits {
  let region: string | undefined;
  try {
    region = new Intl.Locale(locale).maximize().region;
  } catch {
    return METRIC;
  }
  if (region === undefined) return METRIC;
  return { units: INCHES.has(region) ? 'inch' : 'cm', sheet: LETTER.has(region) ? 'Letter' : 'A4' };
}
