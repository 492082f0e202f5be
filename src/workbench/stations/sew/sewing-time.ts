import { type SewingStep, sewingMinutes } from '../../../sewing';
import { number, type Phrase, say, words } from '../../../words';

/** How long it all takes, and on whose word. */
export function sewingTime(steps: readonly SewingStep[]): string {
  const { usual, first } = sewingMinutes(steps);
  return words`About ${hours(usual)} if you have done it before, ${hours(first)} for a first pair, both from practice.`;
}

const hours = (minutes: number): Phrase => say`${number(Math.round(minutes / 30) / 2, 1)} hours`;
