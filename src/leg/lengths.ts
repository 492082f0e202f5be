import { ANKLE_HEIGHT } from '../block';
import type { Mm } from '../length';

/**
 * The lengths that have a name in the trade, from the longest to the shortest: the word of the project file, and what
 * people call it, wherever it is said.
 */
export const LENGTH_NAMES = {
  ankle: 'ankle',
  midCalf: 'mid-calf',
  belowKnee: 'below the knee',
  knee: 'at the knee',
  midThigh: 'mid-thigh',
  short: 'short',
} as const;

/** A length by its word in the project file. */
export type LengthName = keyof typeof LENGTH_NAMES;

/** Finished inseam as a share of the inside leg, for the cropped lengths (practice). */
const CROPPED: Readonly<Record<Exclude<LengthName, 'ankle'>, number>> = {
  midCalf: 0.72,
  belowKnee: 0.55,
  knee: 0.43,
  midThigh: 0.27,
  short: 0.14,
};

/**
 * The finished inseam of a length.
 *
 * The ankle length hangs from the lowered crotch: inside leg − rise ease − 0.08 × inside leg. Cropped lengths are
 * shares of the inside leg (practice).
 *
 * @param length a name, or the inseam as a number
 * @param insideLeg crotch to floor
 * @param riseEase how far the crotch hangs below the body
 */
export function finishedInseam(length: LengthName | { readonly inseam: Mm }, insideLeg: Mm, riseEase: Mm): Mm {
  if (typeof length === 'object') return length.inseam;
  if (length === 'ankle') return insideLeg - riseEase - ANKLE_HEIGHT * insideLeg;
  return CROPPED[length] * insideLeg;
}
