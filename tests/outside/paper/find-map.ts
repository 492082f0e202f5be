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
 * Reads the map in the lower square of the first sheet: the outlines drawn there are laid on the pattern's own by their
 * boxes, and each label's middle is taken back to the pattern.
 */
export function findMap(
  picture: Picture,
  words: readonly Word[],
  square: FoundSquare,
  lines: readonly Polyline[],
): FoundMap {
  const inside = ({ x, y }: Place) =>
    x > square.left + 2 &&
    x < square.left + square.width - 2 &&
    y > square.top + 2 &&
    y < square.top + square.height - 2;
  const middle = ({ left, right, top, bottom }: Word) => ({ x: (left + right) / 2, y: (top + bottom) / 2 });
  const here = words.filter((word) => inside(middle(word)));
  const title = Math.max(...here.filter(({ text }) => text === '(by').map(({ bottom }) => bottom));
  const drawn = boxOf(inkPlaces(picture, inkedPixels(picture), 'cut').filter(inside));
  const real = boxOf(lines.flatMap((line) => line.map(([x, y]) => ({ x, y }))));
  const scale = {
    x: (drawn.right - drawn.left) / (real.right - real.left),
    y: (drawn.bottom - drawn.top) / (real.bottom - real.top),
  };
  return {
    labels: here
      .filter(({ text, top }) => top > title && /^[A-Z]+\d+$/.test(text))
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
