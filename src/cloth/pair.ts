import type { Mm } from '../length';
import type { Point } from '../plane';
import { onLevel, onUpright, type Slide, slideMeetings, slidesOf } from './no-fit';
import { type Shape, shapesOverlap } from './shape';

/** Levels at which a printed or woven repeat lets one piece lie beside another: `first` and every `step` from it. */
export interface Grid {
  readonly first: Mm;
  readonly step: Mm;
}

/** What a repeat demands of the second of two pieces, across and along; undefined where it may lie anywhere. */
export interface Grids {
  readonly across: Grid | undefined;
  readonly along: Grid | undefined;
}

export const NO_GRIDS: Grids = { across: undefined, along: undefined };

/** Two shapes on the cloth: the second lies at (dx, dy) from the first. */
export interface PairPlace {
  readonly dx: Mm;
  readonly dy: Mm;
  /** Of the cloth that both need. */
  readonly length: Mm;
}

/**
 * The shortest length on which two shapes lie beside, above or within each other without overlapping: exact for the
 * polygons. Every shortest place lies where slides meet, at the limits of the width, or on the repeat's grid, so it is
 * enough to try those, the shortest first.
 *
 * @param a the first shape
 * @param b the second
 * @param room the width that can be cut
 * @param grids what a repeat demands
 * @returns undefined where one of them is wider than the room, or no place of the grid is free
 */
export function shortestPair(a: Shape, b: Shape, room: Mm, grids: Grids = NO_GRIDS): PairPlace | undefined {
  if (a.width > room || b.width > room) return undefined;
  const limits = { left: a.width - room, right: room - b.width };
  // One after the other, and from there to the grid's next line: farther apart they never need to lie.
  const most = a.height + b.height + (grids.along?.step ?? 0);
  const field = { ...limits, top: -most, bottom: most };
  const slides = slidesOf(a, b);
  const lengthAt = (dy: Mm): Mm => Math.max(a.height, dy + b.height) - Math.min(0, dy);
  const places = (grids.across || grids.along ? gridPlaces(slides, field, grids) : freePlaces(slides, field))
    .map(({ x, y }): PairPlace => ({ dx: x, dy: y, length: lengthAt(y) }))
    .sort((one, other) => one.length - other.length || Math.abs(one.dx) - Math.abs(other.dx));
  return places.find(({ dx, dy }) => !shapesOverlap(a, b, dx, dy));
}

interface PairField {
  readonly left: Mm;
  readonly right: Mm;
  readonly top: Mm;
  readonly bottom: Mm;
}

function freePlaces(slides: readonly Slide[], field: PairField): readonly Point[] {
  // Side by side, as far apart as the width lets them.
  const beside = [field.left, field.right].map((x) => ({ x, y: 0 }));
  // And as close to that as they can: level with each other.
  const level = slides.flatMap(({ from, to }) =>
    onLevel(from, to, 0)
      .filter((x) => x >= field.left && x <= field.right)
      .map((x) => ({ x, y: 0 })),
  );
  return [...beside, ...level, ...slideMeetings(slides, field)];
}

/** Places on the grid's lines: where slides cross them, and their ends at the sides of the field. */
function gridPlaces(slides: readonly Slide[], field: PairField, { across, along }: Grids): readonly Point[] {
  if (across && along)
    return gridLines(across, field.left, field.right).flatMap((x) =>
      gridLines(along, field.top, field.bottom).map((y) => ({ x, y })),
    );
  if (across)
    return gridLines(across, field.left, field.right).flatMap((x) =>
      [0, ...slides.flatMap(({ from, to }) => onUpright(from, to, x))].map((y) => ({ x, y })),
    );
  if (along)
    return gridLines(along, field.top, field.bottom).flatMap((y) =>
      [field.left, field.right, ...slides.flatMap(({ from, to }) => onLevel(from, to, y))]
        .filter((x) => x >= field.left && x <= field.right)
        .map((x) => ({ x, y })),
    );
  return [];
}

function gridLines({ first, step }: Grid, low: Mm, high: Mm): readonly Mm[] {
  const start = Math.ceil((low - first) / step);
  const count = Math.max(0, Math.floor((high - first) / step) - start + 1);
  return Array.from({ length: count }, (_, i) => first + (start + i) * step);
}
