import { plain } from '../../length';
import { number, own, say } from '../../words';
import { notRead, type Quantity, readNumber, shortened } from '../store/quantity';

/** How finely a scanner looks. */
export const dotsAnInch: Quantity = {
  read: (text) =>
    readNumber(text.replace(/dpi\s*$/i, ''), 1, text) ??
    notRead(say`“${own(shortened(text))}” is no number of dots; write it like 300.`),
  print: (value) => plain(value, 0),
  range: (lowest, highest) => say`${number(lowest, 0)} to ${number(highest, 0)} dots an inch`,
  word: () => say`dpi`,
  step: () => 50,
};
