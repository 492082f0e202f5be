import { type Phrase, say } from '../length';
import type { Check } from './check';

/**
 * The verdict where a body's measurement was neither taken nor estimated from people like this one: mind, because nobody
 * knows. So says every check that compares with the body; only the crotch length is left out instead, because where it
 * wasn't measured nothing was asked of it.
 *
 * @param about the check without its verdict
 * @param finished what the finished leg measures, as a sentence without its stop
 * @param what that was not measured
 */
export function notMeasured(
  about: Pick<Check, 'id' | 'name' | 'measured' | 'tolerance' | 'unit'>,
  finished: Phrase,
  what: string,
): Check {
  return {
    ...about,
    verdict: 'mind',
    wanted: 0,
    reason: say`${finished}; ${what} was not measured.`,
    remedy: say`Measure ${what}, then this can be judged.`,
  };
}
