import { type Box, boxesMeet, boxGrown, boxHolds, boxMeetsSegment, cross, type Point, point, subtract } from '../plane';

/** A straight stretch of a line that is drawn, pixels of the window. */
export interface Stretch {
  readonly a: Point;
  readonly b: Point;
  /** Whether it is the outline of something: a word that belongs to one side of it is not carried to the other. */
  readonly parts: boolean;
}

/** A word of a drawing as it would stand at its own place, pixels of the window. */
export interface StandingWord {
  readonly box: Box;
  /** Whether it says what it stands in, and is better left out than put beside it. */
  readonly inside: boolean;
}

/** What words have to keep clear of. */
export interface Surroundings {
  readonly lines: readonly Stretch[];
  /** What lies over the drawing: buttons, tools, notes. */
  readonly taken: readonly Box[];
  /** What is seen of the drawing. */
  readonly room: Box;
}

/** Between a word and the next line or word, pixels. */
const AIR = 1;
/** From one place that is tried to the next, and how far off the last of them are, pixels. */
const STEP = 4;
const [ACROSS, DOWN] = [20, 24];

/** Steps away from a word's own place, near ones first: up or down sooner than aside, as lines of writing are set. */
const STEPS: readonly Point[] = Array.from({ length: (2 * ACROSS + 1) * (2 * DOWN + 1) }, (_, i) =>
  point(STEP * ((i % (2 * ACROSS + 1)) - ACROSS), STEP * (Math.floor(i / (2 * ACROSS + 1)) - DOWN)),
).sort((a, b) => Math.hypot(1.2 * a.x, a.y) - Math.hypot(1.2 * b.x, b.y));

/** Letters as large as show mode's, pixels: their words are larger, and so is what is near them. */
const LARGE = 28;
const FAR = 2;
const FAR_STEPS: readonly Point[] = [...STEPS, ...STEPS.map(({ x, y }) => point(FAR * x, FAR * y))];

/**
 * By how much each word is moved so that it lies on no line and on no other word; words are placed in the order in
 * which they are given.
 *
 * @returns pixels of the window; undefined for a word that has no such place within reach, and is better not shown
 */
export function wordShifts(
  words: readonly StandingWord[],
  { lines, taken, room }: Surroundings,
): readonly (Point | undefined)[] {
  const covered = [...taken];
  return words.map(({ box, inside }) => {
    const large = Math.min(box.right - box.left, box.bottom - box.top) > LARGE;
    const steps = large ? FAR_STEPS : STEPS;
    const reach = boxGrown(box, (large ? FAR : 1) * STEP * Math.max(ACROSS, DOWN) + AIR);
    const near = lines.filter(({ a, b }) => boxMeetsSegment(reach, a, b));
    const others = covered.filter((one) => boxesMeet(one, reach));
    const outlines = near.filter(({ parts }) => parts);
    const [from, seen] = [middle(box), boxHolds(room, middle(box))];
    const clear = (by: Point) => {
      const there = boxGrown(movedBox(box, by), AIR);
      if (seen && !boxInside(there, room)) return false;
      return !others.some((one) => boxesMeet(one, there)) && !near.some(({ a, b }) => boxMeetsSegment(there, a, b));
    };
    const crossed = (by: Point) => {
      const to = point(from.x + by.x, from.y + by.y);
      return outlines.filter(({ a, b }) => cut(from, to, a, b) && cut(a, b, from, to)).length;
    };
    const shift =
      steps.find((by) => clear(by) && crossed(by) === 0) ??
      // A name that has no room in what it names stands close beside it, and in nothing else.
      (inside ? undefined : steps.find((by) => clear(by) && crossed(by) === 1));
    if (shift) covered.push(movedBox(box, shift));
    return shift;
  });
}

/** Whether a straight stretch's ends lie on either side of the line through two points. */
const cut = (from: Point, to: Point, a: Point, b: Point): boolean => {
  const way = subtract(to, from);
  return cross(way, subtract(a, from)) > 0 !== cross(way, subtract(b, from)) > 0;
};

const middle = ({ left, top, right, bottom }: Box): Point => point((left + right) / 2, (top + bottom) / 2);

const boxInside = (box: Box, room: Box): boolean =>
  box.left >= room.left && box.right <= room.right && box.top >= room.top && box.bottom <= room.bottom;

const movedBox = ({ left, top, right, bottom }: Box, { x, y }: Point): Box => ({
  left: left + x,
  top: top + y,
  right: right + x,
  bottom: bottom + y,
});
