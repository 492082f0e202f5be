/** The words of a name or of a note on a drawing, small: `Front-Waist_2` is front, waist. */
export const wordsOf = (name: string): readonly string[] => name.toLowerCase().match(/[a-z]+/g) ?? [];

/** Whether one of the names says one of the words. */
export const namesSay = (names: readonly string[], ...wanted: readonly string[]): boolean =>
  names.some((name) => wordsOf(name).some((word) => wanted.includes(word)));
