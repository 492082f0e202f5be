import listed from '../../docs/labels.md?raw';

/** Figures are nobody's label: “Hip 102 cm” is “Hip … cm”. */
const plainLabel = (text: string): string =>
  text
    .replace(/: how\?$/, '')
    .replace(/[−-]?\d[\d.,⅛¼⅜½⅝¾⅞]*/g, '…')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();

/** `docs/labels.md`: the first cell of every row. */
const LISTED = new Set(
  listed
    .split('\n')
    .map((line) => /^\| (.+?) \| (.+) \|$/.exec(line))
    .flatMap((row) => (row?.[1] && !/^-+$/.test(row[1]) ? [row[1].toLowerCase()] : [])),
);

/** Has at least one letter: a bare figure or sign is no word. */
const isWord = (label: string): boolean => /\p{L}{2}/u.test(label);

/** The labels that don't stand in `docs/labels.md`. */
export const unlisted = (labels: Iterable<string>): readonly string[] =>
  [...new Set([...labels].map(plainLabel))].filter((label) => isWord(label) && !LISTED.has(label)).toSorted();

const WHERE =
  'label, legend, button, summary, option, h1, h2, h3, th, dt, caption, kbd, .check-name, .verdict, .drawing .word, [aria-label]';

/** Whatever names something on the screen, part by part. */
export function seenLabels(): readonly string[] {
  return [...document.querySelectorAll(WHERE)].flatMap((element) => {
    const named = element.getAttribute('aria-label');
    if (named !== null) return [named];
    const words = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    const parts: string[] = [];
    while (words.nextNode()) parts.push(words.currentNode.textContent ?? '');
    return parts;
  });
}
