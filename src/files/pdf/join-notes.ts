import { ASCENT, DESCENT, type Ink, inkCrosses, LINE_TOP, mmOfPt, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxGrown, type Point, point } from '../../plane';
import type { SheetJoin, SheetPart, SheetPlan } from '../../sheets';
import { own, words } from '../../words';

/** A few words along a join: what to do there, and which sheet it is that joins. */
export interface JoinNote {
  readonly text: string;
  /** The middle of the baseline, on the drawing. */
  readonly at: Point;
  readonly turn: 0 | -90;
  readonly box: Box;
}

export const JOIN_NOTE_PT = 8;
/** Between the join and the words, on the paper. */
const AWAY: Mm = 0.8;
/** Between the words and a line that ends beside them, on the paper. */
const AIR: Mm = 0.5;
/** From one tried place to the next, and from the ends of the join to the first, on the paper. */
const STEP: Mm = 4;
const END: Mm = 6;

const EM = mmOfPt(JOIN_NOTE_PT);
const HEIGHT = EM * (ASCENT + DESCENT);

/**
 * The words along a sheet's joins, one for each neighbour: where its margin is cut off and what it lies on, and which
 * sheet will lie on it. Words beside a long join find a place; where little is free, the neighbour's label stands alone.
 */
export function placeJoinNotes(
  plan: SheetPlan,
  part: SheetPart,
  ink: Ink,
  taken: readonly Box[],
  widthOf: WidthOf,
): readonly JoinNote[] {
  const notes: JoinNote[] = [];
  for (const join of part.joins) {
    const blocked = (box: Box) =>
      inkCrosses(ink, boxGrown(lineOf(box, join, plan), AIR / Math.min(plan.scale.x, plan.scale.y))) ||
      taken.some((other) => boxesMeet(other, box)) ||
      notes.some((other) => boxesMeet(other.box, box));
    const note = joinTexts(join, plan.overlap).flatMap((text) => {
      const free = notePlaces(plan, join, text, widthOf).find(({ box }) => !blocked(box));
      return free ? [free] : [];
    })[0];
    if (note) notes.push(note);
  }
  return notes;
}

/** A note's box as high as its line, in which a letter may have an accent. */
function lineOf(box: Box, { side }: SheetJoin, { scale }: SheetPlan): Box {
  const accent = (LINE_TOP - ASCENT) * EM;
  return side === 'left' || side === 'right'
    ? { ...box, left: box.left - accent / scale.x }
    : { ...box, top: box.top - accent / scale.y };
}

/** What is said of a neighbour, at length and in short; the arrows point to it, for the words are turned with the join. */
function joinTexts({ side, neighbour }: SheetJoin, overlap: Mm): readonly string[] {
  const label = own(neighbour);
  const before = side === 'left' || side === 'top';
  const arrow = before ? '↑' : '↓';
  if (overlap === 0)
    return [
      before ? words`cut along this line, ${label} meets it ↑` : words`cut along this line, ${label} meets it ↓`,
      `${neighbour} ${arrow}`,
    ];
  return before
    ? [words`cut along this line, then lay it on ${label} ↑`, words`lay on ${label} ↑`, `${neighbour} ${arrow}`]
    : [words`${label} goes here ↓ its cut edge on this line`, words`${label} goes here ↓`, `${neighbour} ${arrow}`];
}

/** Where words may stand along the part of a join that a neighbour has, from its middle outwards, the outer side of the line first. */
function notePlaces(
  plan: SheetPlan,
  { side, at, from, to }: SheetJoin,
  text: string,
  widthOf: WidthOf,
): readonly JoinNote[] {
  const down = side === 'left' || side === 'right';
  const [across, along] = down ? [plan.scale.x, plan.scale.y] : [plan.scale.y, plan.scale.x];
  const half = widthOf(text, JOIN_NOTE_PT) / 2 / along;
  const first = from + END / along + half;
  const last = to - END / along - half;
  const middle = (first + last) / 2;
  const count = Math.floor((last - first) / 2 / (STEP / along));
  if (last < first) return [];
  const places = Array.from({ length: 2 * count + 1 }, (_, i) => (i % 2 === 0 ? i / 2 : -(i + 1) / 2));
  return bands(side, at, plan, across).flatMap((near) =>
    places.map((i): JoinNote => {
      const s = middle + (i * STEP) / along;
      const box = down
        ? { left: near, right: near + HEIGHT / across, top: s - half, bottom: s + half }
        : { left: s - half, right: s + half, top: near, bottom: near + HEIGHT / across };
      const line = near + (ASCENT * EM) / across;
      return { text, at: down ? point(line, s) : point(s, line), turn: down ? -90 : 0, box };
    }),
  );
}

/** Where the words begin across a join: in the strip that the neighbour will cover, else within the sheet. */
function bands(side: SheetJoin['side'], at: Mm, { overlap }: SheetPlan, across: number): readonly Mm[] {
  if (side === 'left' || side === 'top') return [at + AWAY / across];
  const inside = at - (AWAY + HEIGHT) / across;
  return overlap >= HEIGHT + 2 * AWAY ? [at + AWAY / across, inside] : [inside];
}
