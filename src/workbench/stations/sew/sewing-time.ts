import { plain } from '../../../length';
import { type SewingStep, sewingMinutes } from '../../../sewing';

/** How long it all takes, and on whose word. */
export function sewingTime(steps: readonly SewingStep[]): string {
  const { usual, first } = sewingMinutes(steps);
  return `About ${hours(usual)} for hands that have done it before, ${hours(first)} for a first pair: so many minutes a metre and a fixed part for each step (practice).`;
}

const hours = (minutes: number): string => `${plain(Math.round(minutes / 30) / 2, 1)} hours`;
