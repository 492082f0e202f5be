import { ANKLE_HEIGHT } from '../block';
import type { Mm } from '../length';
import { type Phrase, say } from '../words';

/**
 * The lengths that have a name in the trade, from the longest to the shortest: the word of the project file, and what
 * people call it, wherever it is said.
 */
export const LENGTH_NAMES = {
  full: say`full`,
  ankle: say`ankle`,
  midCalf: say`mid-calf`,
  belowKnee: say`below the knee`,
  knee: say`at the knee`,
  midThigh: say`mid-thigh`,
  short: say`short`,
} as const satisfies Readonly<Record<string, Phrase>>;

/** A length by its word in the project file. */
export type LengthName = keyof typeof LENGTH_NAMES;

/** Finished inseam as a share of the inside leg, for the cropped lengths. @source practice */
const CROPPED: Readonly<Record<Exclude<LengthName, 'full' | 'ankle'>, number>> = {
  midCalf: 0.72,
  belowKnee: 0.55,
  knee: 0.43,
  midThigh: 0.27,
  short: 0.14,
};

/** What a length is measured by. */
export interface LegMeasured {
  /** Crotch to floor. */
  readonly insideLeg: Mm;
  /** Of trousers that fit, where those were measured. */
  readonly trouserInseam?: Mm | undefined;
}

/** A full length hangs so far off the floor: barefoot or in slippers it isn't trodden on. @source practice: 20 to 30 mm */
const OFF_THE_FLOOR: Mm = 25;

/**
 * The finished inseam of a length.
 *
 * Full and ankle length hang from the crotch as it lies: inside leg − rise ease, less 25 mm or 0.08 × inside leg.
 * Cropped lengths are shares of the inside leg. Each ends where its name says, so a lowered crotch takes as much off;
 * an inseam in figures is kept, and where trousers that fit were measured, a full length is as long as those.
 *
 * @param length a name, or the inseam as a number
 * @param measured of the body
 * @param riseEase how far the crotch hangs below the body
 * @param shorter how much further the crotch was lowered on purpose; negative where the leg is made longer
 * @source practice
 */
export function finishedInseam(
  length: LengthName | { readonly inseam: Mm },
  measured: LegMeasured,
  riseEase: Mm,
  shorter: Mm = 0,
): Mm {
  if (typeof length === 'object') return length.inseam;
  return namedInseam(length, measured, riseEase) - shorter;
}

function namedInseam(length: LengthName, { insideLeg, trouserInseam }: LegMeasured, riseEase: Mm): Mm {
  if (length === 'full') return trouserInseam ?? insideLeg - riseEase - OFF_THE_FLOOR;
  if (length === 'ankle') return insideLeg - riseEase - ANKLE_HEIGHT * insideLeg;
  return CROPPED[length] * insideLeg;
}
