import { capitalsOfPt, DESCENT, type Ink, inkCrosses, LINE_TOP, mmOfPt, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxInside, type Point, point } from '../../plane';
import { type JoinMark, MARK, sheetCell } from '../../sheets';
import type { PartOnPaper } from './part-on-paper';

/** A joining mark's number where it can be read: before the mark's tip, beside its base, or as near as there is room. */
export interface PlacedNumber {
  readonly text: string;
  readonly pt: number;
  /** The middle of the figures, on the drawing. */
  readonly at: Point;
  readonly box: Box;
}

/** Large enough to be found from above, while two sheets are laid on each other; where it is narrow, at least legible. */
const NUMBER_PTS = [10, 8] as const;
/** Between a half-diamond and its number, on the paper. */
const GAP: Mm = 1;
/** White between the figures and a line's middle, on the paper. */
const CLEAR: Mm = 0.4;
/** How far from the middle of a mark's base a number is looked for, on the paper, and in what steps. */
const REACH: Mm = 16;
const STEP: Mm = 1;
/** A number is this much nearer to its own mark than to another one. */
const NEARER = 1.25;

const INWARDS: Readonly<Record<JoinMark['towards'], Point>> = {
  left: point(-1, 0),
  right: point(1, 0),
  up: point(0, -1),
  down: point(0, 1),
};

/**
 * The numbers of a part's own marks, each off the lines, off what is there and off the other marks, and nearer to its
 * own mark than to another. Where there is no such place a number is left out: the mark's other half bears it, too.
 */
export function placeNumbers(printed: PartOnPaper, ink: Ink, widthOf: WidthOf): readonly PlacedNumber[] {
  const { part, scale, taken } = printed;
  const cell = sheetCell(part);
  const placed: PlacedNumber[] = [];
  for (const mark of part.marks) {
    const others = part.marks.filter((other) => other !== mark);
    const covered = [
      ...taken,
      ...part.marks.map((one) => markBox(one, scale)),
      ...placed.map(({ box }) => grown(box, CLEAR, scale)),
    ];
    const isOwn = ({ at }: PlacedNumber) =>
      others.every((other) => paperApart(at, other.at, scale) > NEARER * paperApart(at, mark.at, scale));
    const isFree = ({ box }: PlacedNumber) =>
      boxInside(box, cell) && !covered.some((one) => boxesMeet(one, box)) && !inkCrosses(ink, grown(box, CLEAR, scale));
    const found = NUMBER_PTS.flatMap((pt) =>
      firstOf(numberPlaces(mark, pt, scale, widthOf), (n) => isFree(n) && isOwn(n)),
    )[0];
    if (found) placed.push(found);
  }
  return placed;
}

function firstOf<T>(items: Iterable<T>, holds: (item: T) => boolean): readonly T[] {
  for (const item of items) if (holds(item)) return [item];
  return [];
}

/** Before the mark's tip, beside its base, then all round within reach, the nearest first. */
function* numberPlaces(
  { number, at, towards, size }: JoinMark,
  pt: number,
  scale: PartOnPaper['scale'],
  widthOf: WidthOf,
): Generator<PlacedNumber> {
  const text = `${number}`;
  const em = mmOfPt(pt);
  const figures = capitalsOfPt(pt) / 2;
  // A reader takes the figures to be as high as the line on which they stand.
  const half = { x: widthOf(text, pt) / 2, y: Math.max(LINE_TOP * em - figures, DESCENT * em + figures) };
  const inwards = INWARDS[towards];
  const level = inwards.y === 0;
  const [deep, wide] = level ? [half.x, figures] : [figures, half.x];
  const aside = MARK.halfBase * size + GAP + wide;
  const place = ({ inside, along }: Away): PlacedNumber => {
    const x = at.x + (inwards.x * inside + (level ? 0 : along)) / scale.x;
    const y = at.y + (inwards.y * inside + (level ? along : 0)) / scale.y;
    const [w, h] = [half.x / scale.x, half.y / scale.y];
    return { text, pt, at: point(x, y), box: { left: x - w, right: x + w, top: y - h, bottom: y + h } };
  };
  yield place({ inside: MARK.depth * size + GAP + deep, along: 0 });
  yield place({ inside: GAP + deep, along: -aside });
  yield place({ inside: GAP + deep, along: aside });
  for (const away of ROUND) yield place(away);
}

/** How far a number stands from the middle of its mark's base, on the paper: into the part and along the join. */
interface Away {
  readonly inside: Mm;
  readonly along: Mm;
}

const ROUND: readonly Away[] = Array.from({ length: REACH / STEP }, (_, i) => (i + 1) * STEP)
  .flatMap((inside) => Array.from({ length: (2 * REACH) / STEP + 1 }, (_, i) => ({ inside, along: i * STEP - REACH })))
  .toSorted((a, b) => Math.hypot(a.inside, a.along) - Math.hypot(b.inside, b.along));

/** The box of a half-diamond on its own side of the join. */
function markBox({ at, towards, size }: JoinMark, scale: PartOnPaper['scale']): Box {
  const { x, y } = INWARDS[towards];
  const [deep, wide] = [MARK.depth * size, MARK.halfBase * size];
  const reach = { x: (x === 0 ? wide : deep / 2) / scale.x, y: (y === 0 ? wide : deep / 2) / scale.y };
  const middle = { x: at.x + (x * deep) / 2 / scale.x, y: at.y + (y * deep) / 2 / scale.y };
  return {
    left: middle.x - reach.x,
    right: middle.x + reach.x,
    top: middle.y - reach.y,
    bottom: middle.y + reach.y,
  };
}

const paperApart = (a: Point, b: Point, { x, y }: PartOnPaper['scale']): Mm =>
  Math.hypot((a.x - b.x) * x, (a.y - b.y) * y);

const grown = ({ left, right, top, bottom }: Box, by: Mm, { x, y }: PartOnPaper['scale']): Box => ({
  left: left - by / x,
  right: right + by / x,
  top: top - by / y,
  bottom: bottom + by / y,
});
