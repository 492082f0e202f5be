export { amountUp, formatAmount } from './amount';
export {
  MM_PER,
  MM_PER_INCH,
  type Mm,
  type ParsedLength,
  parseLength,
  plain,
  type Units,
} from './length';
export { plainLetters, plainWords, spelledOut } from './plain-words';
export { lessThanStep, roundingOf, SHOWN_STEP, type Term } from './rounding';
export { exactText, fieldText, formatLength, formatParts } from './shown';
