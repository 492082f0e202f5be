import { apart } from '../../drawing';
import { type Box, type Curve, curveMap, curvesBounds, type Point, pathThrough, point, straight } from '../../plane';
import type { Draft } from '../../project';
import { isStraightTape, TAPE_KEYS, tapesOn } from '../../trace';

/** Half of the line that ends a straight tape, millimetres of the drawing. */
const END = 12;

/** What is lit on the drawing of the blocks for a number of theirs: where the tape lies, and the lines that end a straight one. */
export interface BlockTape {
  readonly part: 'front' | 'back';
  readonly curves: readonly Curve[];
}

/** Where the tape lies on its block for the field at a path; undefined for any other field. */
export function blockTape({ blocks }: Draft, path: string): BlockTape | undefined {
  const [, part, name = ''] = /^block\.(front|back)\.(\w+)/.exec(path) ?? [];
  if (part !== 'front' && part !== 'back') return undefined;
  const block = blocks[part];
  if (name === 'darts')
    return { part, curves: block.darts.flatMap(({ left, tip, right }) => pathThrough(left, tip, right)) };
  const key = TAPE_KEYS.find((one) => one === name);
  if (!key) return undefined;
  const tape = tapesOn(block)[key];
  return { part, curves: isStraightTape(tape) ? stretched(...tape) : tape };
}

/** A tape from one line to another, across both of its ends. */
function stretched(a: Point, b: Point): readonly Curve[] {
  const level = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
  const across = ({ x, y }: Point): Curve =>
    level ? straight(point(x, y - END), point(x, y + END)) : straight(point(x - END, y), point(x + END, y));
  return [straight(a, b), across(a), across(b)];
}

/** Where on the drawing of the blocks that is. */
export function tapeBox({ part, curves }: BlockTape): Box {
  const shifted = curves.map((curve) => curveMap(curve, ({ x, y }) => point(x + apart(part), y)));
  return curvesBounds(shifted);
}
