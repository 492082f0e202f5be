import { capitalsOfPt, type Ink, inkCrosses, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxInside, type Point, point } from '../../plane';
import { type JoinMark, MARK, type SheetPart, type SheetPlan, sheetCell } from '../../sheets';

/** A joining mark's number where it can be read: before the mark's tip, or beside its base. */
export interface PlacedNumber {
  readonly text: string;
  /** The middle of the figures, on the drawing. */
  readonly at: Point;
  readonly box: Box;
}

/** Large enough to be found from above, while two sheets are laid on each other. */
export const NUMBER_PT = 10;
/** Between a half-diamond and its number, on the paper. */
const GAP: Mm = 1;
/** White round the figures, on the paper. */
const CLEAR: Mm = 0.4;

const INWARDS: Readonly<Record<JoinMark['towards'], Point>> = {
  left: point(-1, 0),
  right: point(1, 0),
  up: point(0, -1),
  down: point(0, 1),
};

/** The numbers of a sheet's own marks, each off the lines if one of its three places is. */
export function placeNumbers(sheet: SheetPart, plan: SheetPlan, ink: Ink, widthOf: WidthOf): readonly PlacedNumber[] {
  const cell = sheetCell(sheet);
  return sheet.marks.map((mark) => {
    const tried = numberPlaces(mark, plan.scale, widthOf);
    const free = tried.find(({ box }) => boxInside(box, cell) && !inkCrosses(ink, box));
    return free ?? (tried[0] as PlacedNumber);
  });
}

function numberPlaces(
  { number, at, towards, size }: JoinMark,
  scale: SheetPlan['scale'],
  widthOf: WidthOf,
): readonly PlacedNumber[] {
  const text = `${number}`;
  const half = { x: widthOf(text, NUMBER_PT) / 2, y: capitalsOfPt(NUMBER_PT) / 2 };
  const inwards = INWARDS[towards];
  const level = inwards.y === 0;
  const [deep, wide] = level ? [half.x, half.y] : [half.y, half.x];
  const aside = MARK.halfBase * size + GAP + wide;
  const places = [
    { in: MARK.depth * size + GAP + deep, along: 0 },
    { in: GAP + deep, along: -aside },
    { in: GAP + deep, along: aside },
  ];
  return places.map(({ in: inside, along }) => {
    const x = at.x + (inwards.x * inside + (level ? 0 : along)) / scale.x;
    const y = at.y + (inwards.y * inside + (level ? along : 0)) / scale.y;
    const [w, h] = [(half.x + CLEAR) / scale.x, (half.y + CLEAR) / scale.y];
    return { text, at: point(x, y), box: { left: x - w, right: x + w, top: y - h, bottom: y + h } };
  });
}
