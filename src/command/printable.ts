/** What steers a terminal, or turns the reading direction of what follows. */
const STEERING = /[\p{Cc}\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** A text as a terminal shows it unharmed, in one line: what would steer it is spelt out. */
export const printable = (text: string): string =>
  text.replace(STEERING, (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`);
