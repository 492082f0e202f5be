export { dated, ENGLISH, type Language, speak, spokenLanguage, spokenName, timeAgo } from './language';
export { ENGLISHES, type English, englishOf, isEnglish, speakNamed } from './languages';
export {
  all,
  amount,
  degrees,
  either,
  inRow,
  inside,
  inTurn,
  isSaid,
  mm,
  number,
  own,
  part,
  printPhrase,
  rounding,
  said,
  say,
  share,
  UNSAID,
  words,
} from './phrase';
export { type Problem, printProblem, Refusal, type Result } from './problem';
export type { Phrase, PhraseValue } from './types';
