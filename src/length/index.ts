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
export { plainLetters, plainWords, spelledOut } from './plain-words';
