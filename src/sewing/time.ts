import type { Mm } from '../length';
import type { StepTime } from './step';

/** Minutes for a metre, pinning and pressing included: hands that have done it before. @source practice */
export const PER_METRE = {
  cut: 4,
  mark: 3,
  press: 3,
  /** A seam, pinned, sewn, its edges finished, pressed. */
  seam: 6,
  /** Sewn and finished in one go by the serger. */
  serged: 4,
  overlock: 2,
  topstitch: 5,
  /** Stretched under the foot. */
  elastic: 7,
  thread: 3,
} as const;

/** A first pair takes about this many times as long. @source practice */
export const FIRST_PAIR = 2;

/**
 * The time of a step.
 *
 * @param fixedMinutes what it takes however long the seam is
 * @param length of all that is sewn, cut or pressed
 * @param minutesPerMetre from {@link PER_METRE}
 */
export const timeOf = (fixedMinutes: number, length: Mm = 0, minutesPerMetre = 0): StepTime => ({
  fixedMinutes,
  metres: length / 1000,
  minutesPerMetre,
});
