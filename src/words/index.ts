export { ENGLISH, type Language, listed, locale, speak } from './language';
export {
  all,
  amount,
  degrees,
  either,
  inTurn,
  isSaid,
  mm,
  number,
  type Phrase,
  type PhraseValue,
  printPhrase,
  say,
  share,
  UNSAID,
  words,
} from './phrase';
export { type Problem, printProblem, Refusal, type Result } from './problem';
