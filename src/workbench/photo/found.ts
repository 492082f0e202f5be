import { mapTuple, type Point } from '../../plane';
import type { FoundMark } from '../../trace';

/** A printed mark that was found: one of its corners, or by {@link WHOLE} all of it. */
export interface FoundId {
  readonly kind: 'found';
  readonly number: number;
  readonly index: number;
}

/** Stands for all four corners of a found mark. */
export const WHOLE = 4;

type Found = readonly FoundMark[] | undefined;

const middleOf = (corners: FoundMark['corners']): Point => ({
  x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
  y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
});

/** Where a corner of a found mark lies, or its middle. */
export function foundAt(found: Found, { number, index }: FoundId): Point | undefined {
  const corners = found?.find((mark) => mark.number === number)?.corners;
  return corners && (corners[index] ?? middleOf(corners));
}

/** The found marks with a corner of one somewhere else, or with all of it moved along. */
export function withFoundAt(found: Found, { number, index }: FoundId, at: Point): readonly FoundMark[] {
  return (found ?? []).map((mark) => {
    if (mark.number !== number) return mark;
    const from = mark.corners[index] ?? middleOf(mark.corners);
    const moved = ({ x, y }: Point): Point => ({ x: x + at.x - from.x, y: y + at.y - from.y });
    return { number, corners: mapTuple(mark.corners, (p, i) => (index === WHOLE || i === index ? moved(p) : p)) };
  });
}

/** The found marks without one. */
export const withoutFound = (found: Found, { number }: FoundId): readonly FoundMark[] =>
  (found ?? []).filter((mark) => mark.number !== number);
