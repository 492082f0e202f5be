import type { Polyline } from './compare';
import { inkedPixels, inkPlaces, type Place } from './pixels';
import type { OpenPdf, Picture, Word } from './render';
import type { FoundSquare } from './squares';

/** The map of the sheets as it is printed: what each label points at, on the drawing. */
export interface FoundMap {
  readonly labels: readonly { readonly label: string; readonly at: Place }[];
  /** How much wider than high the drawn pieces are made: 1 where the map is true. */
  readonly stretch: number;
}

/**
 * Reads the map of the sheets: the outlines drawn there are laid on the pattern's own by their boxes, and each label's
 * middle is taken back to the pattern. It lies on the right of the squares of the first page or, where its labels find
 * no room there, by itself on one of the next.
 *
 * @param lower the lower square of the first page
 */
export function findMap(pdf: OpenPdf, lower: FoundSquare, lines: readonly Polyline[]): FoundMap {
  const first = pdf.words(1);
  if (!first.some(({ text }) => text === 'larger')) {
    const title = titleOf(first);
    // On large paper the key of the lines stands in a column of its own on the map's right.
    const end = Math.min(
      ...first.filter(({ text, top }) => text === 'What' && top < title).map(({ left }) => left - 2),
    );
    return mapWithin(pdf.picture(1), first, lines, (p) => {
      const beside = p.x > lower.left + lower.width + 2 && p.x < end && p.y < lower.top + lower.height + 1;
      return beside && p.y > title + 1;
    });
  }
  const page = Array.from({ length: pdf.pages }, (_, i) => i + 1).find((one) => one > 1 && titleOf(pdf.words(one)) > 0);
  if (page === undefined) throw new Error('The larger map is on no page.');
  const words = pdf.words(page);
  const title = titleOf(words);
  // What isn't on the map follows below it.
  const end = Math.min(
    ...words.filter(({ top, text }) => top > title && !/^[A-Z]*\d+$/.test(text)).map(({ top }) => top),
  );
  return mapWithin(pdf.picture(page), words, lines, ({ y }) => y > title + 1 && y < end - 1);
}

/** Where the note above the map ends: what it shows of the order of taping, or where that stands. */
const titleOf = (words: readonly Word[]): number =>
  Math.max(0, ...words.filter(({ text }) => /^(taping|list)\.$/.test(text)).map(({ bottom }) => bottom));

function mapWithin(
  picture: Picture,
  words: readonly Word[],
  lines: readonly Polyline[],
  inside: (p: Place) => boolean,
): FoundMap {
  const middle = ({ left, right, top, bottom }: Word) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });
  const here = words.filter((word) => inside(middle(word)));
  const drawn = boxOf(inkPlaces(picture, inkedPixels(picture), 'cut').filter(inside));
  const real = boxOf(lines.flatMap((line) => line.map(([x, y]) => ({ x, y }))));
  const scale = {
    x: (drawn.right - drawn.left) / (real.right - real.left),
    y: (drawn.bottom - drawn.top) / (real.bottom - real.top),
  };
  return {
    labels: here
      .filter(({ text }) => /^[A-Z]+\d+$/.test(text))
      .map((word) => {
        const { x, y } = middle(word);
        return {
          label: word.text,
          at: { x: real.left + (x - drawn.left) / scale.x, y: real.top + (y - drawn.top) / scale.y },
        };
      }),
    stretch: scale.x / scale.y,
  };
}

function boxOf(points: readonly Place[]) {
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  return {
    left: least(points.map(({ x }) => x)),
    top: least(points.map(({ y }) => y)),
    right: -least(points.map(({ x }) => -x)),
    bottom: -least(points.map(({ y }) => -y)),
  };
}
