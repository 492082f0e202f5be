import { cordRulesFor } from '../body';
import { number, type Phrase, say } from '../words';
import type { CautionChoices } from './caution';

/** Rules for children's sleepwear go up to size 14, which fits up to about this age. @source 16 CFR 1616; the age practice */
const SLEEPWEAR_UNDER = 15;
/** UK Nightwear (Safety) Regulations: children under 13. */
const LABEL_UNDER = 13;
/** An infant garment is sized nine months or smaller. */
const INFANT_YEARS = 0.75;

/** For whom it is sewn, as far as rules ask. Without an age a child is one by its size, and rules that could hold, do. */
export interface Wearer {
  readonly infant: boolean;
  /** Under seven, or of an age that nobody said. */
  readonly young: boolean;
  readonly cordRules: boolean;
  readonly sleepwearRules: boolean;
  readonly labelRules: boolean;
  /** “a child of 5 years”, or “a child of this size”. */
  readonly words: Phrase;
  /** The field that says so. */
  readonly field: string;
}

/** @param body age where it was given, and whether its size is a child's */
export function wearerOf({ ageYears, child }: CautionChoices['body']): Wearer {
  const under = (years: number): boolean => (ageYears === undefined ? child : ageYears < years);
  const cords = cordRulesFor({ ageYears, child });
  return {
    infant: ageYears !== undefined && ageYears <= INFANT_YEARS,
    young: cords.young,
    cordRules: cords.hold,
    sleepwearRules: under(SLEEPWEAR_UNDER),
    labelRules: under(LABEL_UNDER),
    words: ageYears === undefined ? say`a child of this size` : childOf(ageYears),
    field: ageYears === undefined ? 'body.height' : 'body.ageYears',
  };
}

function childOf(age: number): Phrase {
  if (age < 1) return say`a child of ${number(Math.round(age * 12))} months`;
  const years = Math.floor(age);
  return years === 1 ? say`a child of 1 year` : say`a child of ${number(years)} years`;
}
