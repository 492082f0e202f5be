/** The eighths of an inch, as a tape has them. */
export const FRACTIONS = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

/** What may stand after the whole inches: a fraction as one sign or in figures, or decimals. */
const AFTER_WHOLE = /\s*([⅛¼⅜½⅝¾⅞]|\d+\s*\/\s*\d*|[.,]\d*)?\s*$/;

/** A number as it was typed, with a fraction in place of what stands after the whole: a pad of numbers has none. */
export function withFraction(text: string, fraction: string): string {
  // A bare “3” is whole inches, and no beginning of 3/8.
  return text.replace(AFTER_WHOLE, '') + fraction;
}

/** The same number below nought, or above it again: nor has a pad of numbers a minus. */
export const withSign = (text: string): string =>
  /^\s*[-−]/.test(text) ? text.replace(/^\s*[-−]\s*/, '') : `−${text.trim()}`;
