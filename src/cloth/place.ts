import type { Mm } from '../length';
import type { Point } from '../plane';
import { isClear, type Laid, type Slide, slideMeetings, slidesOf } from './no-fit';
import type { Shape } from './shape';

/** A shape that may be laid, and between which levels across its left may come to lie. */
export interface Option {
  readonly shape: Shape;
  readonly left: Mm;
  readonly right: Mm;
}

/** Longer than any cloth. */
const ENDLESS = 1e6;

/**
 * The place for one more piece: the one that needs the least length, and of those the highest, and of those the
 * leftmost.
 *
 * @param options ways in which it may lie; those wider than their room are passed over
 * @param laid what lies already
 * @param below the length that must not be reached
 * @returns undefined where no option fits between its levels
 */
export function shortestPlace<O extends Option>(
  options: readonly O[],
  laid: readonly Laid[],
  below: Mm,
): (Laid & { readonly option: O }) | undefined {
  const length = layLength(laid);
  // Most pieces find room beside what lies; only where none is found is the lay made longer.
  return placeWithin(options, laid, length) ?? placeWithin(options, laid, below);
}

function placeWithin<O extends Option>(
  options: readonly O[],
  laid: readonly Laid[],
  below: Mm,
): (Laid & { readonly option: O }) | undefined {
  const length = layLength(laid);
  const places = options
    .filter(({ left, right, shape }) => left <= right && shape.height <= below)
    .flatMap((option) =>
      placesOf(option, laid, Math.min(below, ENDLESS) - option.shape.height).map((at) => {
        const end = at.y + option.shape.height;
        return { option, shape: option.shape, at, end, needs: Math.max(length, end) };
      }),
    )
    .sort((a, b) => a.needs - b.needs || a.end - b.end || a.at.x - b.at.x);
  return places.find(({ shape, at }) => isClear(shape, at, laid));
}

/** How far down something lies. */
export const layLength = (laid: readonly Laid[]): Mm =>
  laid.reduce((most, { shape, at }) => Math.max(most, at.y + shape.height), 0);

function placesOf({ shape, left, right }: Option, laid: readonly Laid[], bottom: Mm): readonly Point[] {
  const slides = laid.flatMap((other) => slidesAt(other, shape));
  const corners = [
    { x: left, y: 0 },
    { x: right, y: 0 },
  ];
  return [...corners, ...slideMeetings(slides, { left, right, top: 0, bottom })];
}

const known = new WeakMap<Shape, WeakMap<Shape, readonly Slide[]>>();

/** The slides of a shape along one that is laid. The same two meet again at every width, so theirs are kept. */
function slidesAt({ shape, at }: Laid, moving: Shape): readonly Slide[] {
  const ofShape = known.get(shape) ?? new WeakMap<Shape, readonly Slide[]>();
  known.set(shape, ofShape);
  const slides = ofShape.get(moving) ?? slidesOf(shape, moving);
  ofShape.set(moving, slides);
  return slides.map(({ from, to }) => ({
    from: { x: from.x + at.x, y: from.y + at.y },
    to: { x: to.x + at.x, y: to.y + at.y },
  }));
}
