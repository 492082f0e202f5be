import { type Phrase, say } from '../words';
import type { Verdict } from './check';

/** A verdict in a word. */
export const VERDICT_NAMES: Readonly<Record<Verdict, Phrase>> = {
  good: say`good`,
  doubtful: say`doubtful`,
  wrong: say`wrong`,
};
