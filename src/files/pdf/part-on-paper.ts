import { placer } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, type Point, point } from '../../plane';
import { type Sheet, type SheetPart, type SheetPlan, type Tip, tipBox } from '../../sheets';

/** A part as it lies on a sheet of paper: the sheet's own, or a tip in its corner. */
export interface PartOnPaper {
  readonly part: SheetPart;
  /** Degrees by which it lies turned on the page, clockwise as seen. */
  readonly turn: number;
  /** Millimetres of paper for one of its own drawing, which lies turned with it: the printer's correction does not. */
  readonly scale: SheetPlan['scale'];
  /** What is already there, on its own drawing. */
  readonly taken: readonly Box[];
}

/** The scissors on a tip's rim: how long they are, and what they cover beside their middle, on the paper. */
export const SCISSORS = { long: 8, left: 5, right: 3.4, across: 2.4 } as const;

/** A sheet and its tips, each with the scale at which it is printed and what its words keep off. */
export function printedSheet(
  { scale }: Pick<SheetPlan, 'scale'>,
  sheet: Sheet,
): readonly [PartOnPaper, ...PartOnPaper[]] {
  const own = {
    part: sheet,
    turn: 0,
    scale,
    taken: sheet.tips.flatMap((tip) => [tipBox(tip), scissorsBox(tip, scale)]),
  };
  return [own, ...sheet.tips.map((tip) => printedTip(tip, scale))];
}

function printedTip(tip: Tip, scale: SheetPlan['scale']): PartOnPaper {
  const { turn } = tip.place;
  const { left, right, top, bottom } = scissorsBox(tip, scale);
  const back = (p: Point) =>
    placer({ turn: -turn, shift: point(0, 0) })(point(p.x - tip.place.shift.x, p.y - tip.place.shift.y));
  const [a, b] = [back(point(left, top)), back(point(right, bottom))];
  const taken = [
    { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), top: Math.min(a.y, b.y), bottom: Math.max(a.y, b.y) },
  ];
  return { part: tip, turn, scale: turn % 180 === 0 ? scale : { x: scale.y, y: scale.x }, taken };
}

/** Where the scissors are on a tip's upper rim, near its right end, on the drawing of the sheet that bears it. */
export function scissorsAt(tip: Tip, scale: SheetPlan['scale']): Point {
  const { right, top } = tipBox(tip);
  return point(right - SCISSORS.long / scale.x, top);
}

function scissorsBox(tip: Tip, scale: SheetPlan['scale']): Box {
  const { x, y } = scissorsAt(tip, scale);
  const high: Mm = SCISSORS.across / scale.y;
  return { left: x - SCISSORS.left / scale.x, right: x + SCISSORS.right / scale.x, top: y - high, bottom: y + high };
}
