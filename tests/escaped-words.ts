/**
 * Words of a text that hold a plain vowel: where the made-up language is spoken they were not said through the
 * catalogue, but for names, sizes and what a person typed.
 *
 * @param own what is the same in every language, whole words
 */
export const escapedFrom = (text: string, own: RegExp): readonly string[] =>
  [...new Set(text.match(/[\p{L}’-]*[aeiou][\p{L}’-]*/gu) ?? [])].filter((word) => word.length > 1 && !own.test(word));
