/** A text as it is searched: small letters, without their accents. */
const plainly = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();

/**
 * What is found by some words, each of which must begin a word of the text: first what has them all in its title.
 *
 * @param things to search, in the order in which they are told
 * @param textOf title and whole text of a thing
 * @param sought as it was typed; all things are found by nothing
 */
export function found<Thing>(
  things: readonly Thing[],
  textOf: (thing: Thing) => readonly [title: string, text: string],
  sought: string,
): readonly Thing[] {
  const words = plainly(sought)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
  const has = (text: string) => {
    const parts = plainly(text).split(/[^\p{L}\p{N}]+/u);
    return words.every((word) => parts.some((part) => part.startsWith(word)));
  };
  const inTitle = things.filter((thing) => has(textOf(thing)[0]));
  const inText = things.filter((thing) => !inTitle.includes(thing) && has(textOf(thing).join(' ')));
  return [...inTitle, ...inText];
}
