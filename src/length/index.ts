export { amountUp, formatAmount } from './amount';
export {
  fieldText,
  formatLength,
  formatParts,
  MM_PER,
  MM_PER_INCH,
  type Mm,
  type ParsedLength,
  parseLength,
  plain,
  type Units,
} from './length';
export { amount, degrees, mm, number, type Phrase, type PhrasePart, printPhrase, say, share } from './phrase';
export { plainLetters, plainWords, spelledOut } from './plain-words';
export { type Problem, printProblem, Refusal, type Result } from './problem';
