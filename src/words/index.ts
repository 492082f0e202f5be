export { dated, ENGLISH, type Language, speak } from './language';
export { speakNamed } from './languages';
export {
  all,
  amount,
  degrees,
  either,
  inside,
  inTurn,
  isSaid,
  mm,
  number,
  own,
  printPhrase,
  say,
  share,
  UNSAID,
  words,
} from './phrase';
export { type Problem, printProblem, Refusal, type Result } from './problem';
export type { Phrase, PhraseValue } from './types';
