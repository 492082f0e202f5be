import type { Polyline } from './compare';
import { inkedPixels, inkPlaces, type Place } from './pixels';
import type { Picture, Word } from './render';
import type { FoundSquare } from './squares';

/** The map of the sheets as it is printed: what each label points at, on the drawing. */
export interface FoundMap {
  readonly labels: readonly { readonly label: string; readonly at: Place }[];
  /** How much wider than high the drawn pieces are made: 1 where the map is true. */
  readonly stretch: number;
}

/**
 * Reads the map on the right of the squares of the first page: the outlines drawn there are laid on the pattern's own by
 * their boxes, and each label's middle is taken back to the pattern.
 */
export function findMap(
  picture: Picture,
  words: readonly Word[],
  lower: FoundSquare,
  lines: readonly Polyline[],
): FoundMap {
  // The last word above it: what it shows of the order of taping, or where that stands.
  const title = Math.max(...words.filter(({ text }) => /^(taping|list)\.$/.test(text)).map(({ bottom }) => bottom));
  const inside = ({ x, y }: Place) =>
    x > lower.left + lower.width + 2 && y > title + 1 && y < lower.top + lower.height + 1;
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
