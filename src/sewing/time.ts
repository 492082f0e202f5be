import type { Mm } from '../length';
import { inTurn, number, type Phrase, say } from '../words';
import { type SewingStep, type StepTime, stepMinutes } from './step';

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
const FIRST_PAIR = 2;

/** By this share one pair of hands is quicker or slower than another. @source practice */
const HANDS_DIFFER = 0.2;

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

type Steps = readonly Pick<SewingStep, 'time'>[];

/** What the whole work takes, minutes: if you have done it before, and for a first pair. @source practice */
export function sewingMinutes(steps: Steps): { readonly usual: number; readonly first: number } {
  const usual = steps.reduce((sum, step) => sum + stepMinutes(step), 0);
  return { usual, first: FIRST_PAIR * usual };
}

/** How long the whole takes, in words: a span of hours for hands that have done it, and one for a first pair. */
export function sewingTime(steps: Steps): Phrase {
  const { usual, first } = sewingMinutes(steps);
  return say`Time: ${spanned(usual)}, if you have sewn trousers before; for a first pair ${spanned(first)}.`;
}

/** Where that comes from. */
export const TIME_SOURCE: Phrase = inTurn([
  say`The time is summed over the steps from practice: so many minutes for each metre that is cut, sewn and pressed, and some that don’t depend on length.`,
  say`Nobody was timed, and the wash comes on top.`,
]);

/** Whole hours, and what people call so many of them. */
function spanned(minutes: number): Phrase {
  const hours = (share: number): number => Math.round((minutes * share) / 60);
  const from = Math.max(1, hours(1 - HANDS_DIFFER));
  const to = Math.max(from + 1, hours(1 + HANDS_DIFFER));
  const [a, b] = [number(from, 0), number(to, 0)];
  if (to <= AFTERNOON) return say`an afternoon, about ${a} to ${b} hours`;
  return to <= DAY ? say`a day, about ${a} to ${b} hours` : say`a weekend, about ${a} to ${b} hours`;
}

/** Hours of work that an afternoon holds, and a whole day. @source practice */
const AFTERNOON = 5;
const DAY = 9;
