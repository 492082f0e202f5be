import { MM_PER_INCH } from '../../length';
import type { MarkSeen, Sheet, Shot } from './sightings';

/** A flatbed scanner is true to this share of a length, in either direction: a standard deviation. @source practice */
const SCANNER_TRUE = 0.001;

/**
 * The glass of a scanner as a sheet whose four corners are those of the picture, so that pieces of a scan are joined as
 * photographs are: each piece says its own size, and places that two of them show join them.
 *
 * @param index of the shot and of the sheet among the others
 * @param dots an inch, as the scanner says
 */
export function glassOf(
  { width, height }: Pick<Shot, 'width' | 'height'>,
  index: { readonly shot: number; readonly sheet: number },
  dots: number,
): { readonly sheet: Sheet; readonly marks: readonly MarkSeen[] } {
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const off = (SCANNER_TRUE * Math.hypot(width, height)) / 2;
  return {
    sheet: { marks: corners.map(({ x, y }) => [{ x: (x * MM_PER_INCH) / dots, y: (y * MM_PER_INCH) / dots }]) },
    marks: corners.map((at, mark) => ({ ...index, mark, at: [at], off })),
  };
}
