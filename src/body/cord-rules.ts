/** Rules for cords on children's clothes end here, years. @source EN 14682:2007, quoted */
const UNDER = 14;
/** And are stricter up to here. @source EN 14682:2007, quoted */
const YOUNG_UNDER = 7;

/** Which rules for cords hold for somebody. */
export interface CordRules {
  readonly hold: boolean;
  /** Under seven, or a child of an age that nobody said. */
  readonly young: boolean;
}

/** @param wearer the age where it was given, and whether the body is a child's by its size: without an age, rules that could hold, do */
export function cordRulesFor({
  ageYears,
  child,
}: {
  readonly ageYears: number | undefined;
  readonly child: boolean;
}): CordRules {
  const under = (years: number): boolean => (ageYears === undefined ? child : ageYears < years);
  return { hold: under(UNDER), young: under(YOUNG_UNDER) };
}

/** Each free end with the opening laid flat at its widest, and drawn to the waist, mm. @source EN 14682:2007, quoted */
export const CORD_ENDS = { widest: 140, gathered: 280 } as const;

/** Drawn to the waist, a cord's free end is longer by half of what the opening lost. */
export const gatheredEnd = (widest: number, opening: number, waistGirth: number): number =>
  widest + Math.max(0, opening - waistGirth) / 2;
