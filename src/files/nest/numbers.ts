import type { Mm } from '../../length';
import { add, type Curve, leftOf, type Point, pathThrough, point, scale } from '../../plane';

/**
 * Figures drawn as lines, on a field 2 wide and 4 high, y down: a number on a line must lie exactly there, and be cut by
 * a sheet's edge as the line is, which set words are not.
 */
const FIGURES: readonly (readonly (readonly [number, number])[])[] = [
  [
    [0.6, 0],
    [1.4, 0],
    [2, 0.8],
    [2, 3.2],
    [1.4, 4],
    [0.6, 4],
    [0, 3.2],
    [0, 0.8],
    [0.6, 0],
  ],
  [
    [0.3, 0.8],
    [1.1, 0],
    [1.1, 4],
  ],
  [
    [0, 0.6],
    [0.6, 0],
    [1.4, 0],
    [2, 0.6],
    [2, 1.4],
    [0, 4],
    [2, 4],
  ],
  [
    [0, 0],
    [2, 0],
    [0.9, 1.6],
    [1.6, 1.7],
    [2, 2.4],
    [2, 3.3],
    [1.4, 4],
    [0.5, 4],
    [0, 3.5],
  ],
  [
    [1.6, 4],
    [1.6, 0],
    [0, 2.8],
    [2, 2.8],
  ],
  [
    [2, 0],
    [0.2, 0],
    [0, 1.7],
    [1.3, 1.6],
    [2, 2.3],
    [2, 3.3],
    [1.4, 4],
    [0.5, 4],
    [0, 3.6],
  ],
  [
    [1.8, 0],
    [0.7, 1],
    [0, 2.6],
    [0.3, 3.7],
    [1, 4],
    [1.7, 3.7],
    [2, 3],
    [1.7, 2.2],
    [1, 1.9],
    [0.2, 2.3],
  ],
  [
    [0, 0],
    [2, 0],
    [0.8, 4],
  ],
  [
    [1, 1.9],
    [0.2, 1.4],
    [0.2, 0.5],
    [1, 0],
    [1.8, 0.5],
    [1.8, 1.4],
    [1, 1.9],
    [0, 2.5],
    [0, 3.5],
    [1, 4],
    [2, 3.5],
    [2, 2.5],
    [1, 1.9],
  ],
  [
    [1.8, 1.7],
    [1, 2.1],
    [0.3, 1.8],
    [0, 1],
    [0.3, 0.3],
    [1, 0],
    [1.7, 0.3],
    [2, 1.4],
    [1.3, 3],
    [0.2, 4],
  ],
];

/** Millimetres for one step of the field: figures 3.2 mm high. */
const STEP: Mm = 0.8;
const ADVANCE = 3;
const AIR: Mm = 0.8;

/** A number on a line: the white field that breaks the line, and the figures on it. */
export interface LineNumber {
  readonly field: readonly Curve[];
  readonly figures: readonly (readonly Curve[])[];
}

/**
 * A number set on a line, reading along it, never upside down.
 *
 * @param value a whole number from 0
 * @param at the number's middle
 * @param way the line's direction there, length 1
 */
export function lineNumber(value: number, at: Point, way: Point): LineNumber {
  const along = way.x < 0 || (way.x === 0 && way.y > 0) ? scale(way, -1) : way;
  const down = scale(leftOf(along), leftOf(point(1, 0)).y < 0 ? -1 : 1);
  const digits = [...String(value)].map(Number);
  const width = digits.length * ADVANCE - (ADVANCE - 2);
  const to = (x: number, y: number): Point =>
    add(at, add(scale(along, (x - width / 2) * STEP), scale(down, (y - 2) * STEP)));
  const air = AIR / STEP;
  const corners = [to(-air, -air), to(width + air, -air), to(width + air, 4 + air), to(-air, 4 + air)] as const;
  return {
    field: pathThrough(...corners, corners[0]),
    figures: digits.map((digit, i) => pathThrough(...(FIGURES[digit] ?? []).map(([x, y]) => to(x + i * ADVANCE, y)))),
  };
}
