import type { Mm } from '../length';
import { type Box, type Point, point } from '../plane';
import type { Ink } from './ink';
import { type TiltedBox, tiltedBounds, tiltedMeetsSegment } from './tilted-box';
import type { PaperScale } from './types';

/** The side of a square of the grid, on the paper: as wide as a few letters. */
const SQUARE: Mm = 6;
/** More squares than any drawing is high. */
const ROW = 1 << 20;

/** Whether a line runs through an oblong of the paper, or touches its rim. */
export type Crosses = (box: TiltedBox) => boolean;

/**
 * A drawing's lines sorted into squares of the paper, so that only those near an oblong are looked at: thousands of
 * places are tried for the words of one sheet.
 *
 * @param scale of the paper: oblongs are asked for in its millimetres, from the drawing's own origin
 */
export function inkGrid({ lines }: Ink, scale: PaperScale): Crosses {
  const squares = new Map<number, [Point, Point][]>();
  const put = (a: Point, b: Point) => {
    for (const key of squaresOf(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y))) {
      const square = squares.get(key);
      if (square) square.push([a, b]);
      else squares.set(key, [[a, b]]);
    }
  };
  for (const { points } of lines) {
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [onPaper(points[i - 1] as Point, scale), onPaper(points[i] as Point, scale)];
      // A long slanting line would fall into every square of its box.
      const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / SQUARE));
      const at = (k: number) => point(a.x + ((b.x - a.x) * k) / count, a.y + ((b.y - a.y) * k) / count);
      for (let k = 0; k < count; k += 1) put(at(k), at(k + 1));
    }
  }
  return (box) => {
    const { left, top, right, bottom } = tiltedBounds(box);
    for (const key of squaresOf(left, top, right, bottom)) {
      if (squares.get(key)?.some(([a, b]) => tiltedMeetsSegment(box, a, b))) return true;
    }
    return false;
  };
}

/** A place of the drawing in millimetres of paper. */
export const onPaper = ({ x, y }: Point, scale: PaperScale): Point => point(x * scale.x, y * scale.y);

/** The same of a box. */
export const boxOnPaper = ({ left, top, right, bottom }: Box, { x, y }: PaperScale): Box => ({
  left: left * x,
  right: right * x,
  top: top * y,
  bottom: bottom * y,
});

/** The squares that a box reaches into. */
function squaresOf(left: Mm, top: Mm, right: Mm, bottom: Mm): readonly number[] {
  const found: number[] = [];
  for (let x = Math.floor(left / SQUARE); x <= Math.floor(right / SQUARE); x += 1)
    for (let y = Math.floor(top / SQUARE); y <= Math.floor(bottom / SQUARE); y += 1) found.push(x * ROW + y);
  return found;
}
