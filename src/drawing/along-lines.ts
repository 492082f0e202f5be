import type { Mm } from '../length';
import { type Box, boxHolds, type Curve, flattenCurves, type Point, point } from '../plane';
import { INK_CHORD } from './ink';
import { onPaper } from './ink-grid';
import { DESCENT, LINE_TOP, mmOfPt, ptOfCapitals, type WidthOf } from './print-type';
import type { PaperScale } from './types';
import type { OpenRoom, WantedAlong, WordSetting } from './wanted-words';
import { type PlacedWord, SMALLER, waysOf, wordAt } from './word-shape';

/** Between a line's rim and the words beside it, on the paper. */
const BESIDE: Mm = 0.85;
/** Words are straight: the line may bend away from them by this, on the paper. */
const BENDS: Mm = 3;
/** From one tried place to the next along the line, and how closely its way is followed, on the paper. */
const STEP: Mm = 4;
/** Left free at the ends of what is seen of a line, on the paper. */
const END: Mm = 3;

/** A line as a walk of short steps, in millimetres of the paper. */
export interface Walk {
  readonly points: readonly Point[];
  /** How far each point lies along it. */
  readonly along: readonly Mm[];
}

/**
 * The words of a line in a room, as full as they find room for; none where it isn't seen there.
 *
 * @param walks its runs, as {@link walkOf} goes them
 */
export function placedAlong(
  wanted: WantedAlong,
  walks: readonly Walk[],
  room: OpenRoom,
  widthOf: WidthOf,
  { every, least, halfLine }: Required<WordSetting>,
): readonly PlacedWord[] {
  const stretches = walks.flatMap((walk) => seenStretches(walk, room.box, wanted.mark ?? false));
  if (stretches.length === 0) return [];
  const own = ptOfCapitals(wanted.size * Math.min(room.scale.x, room.scale.y));
  const pts = new Set(SMALLER.map((factor) => Math.max(least, own * factor)));
  for (const text of wanted.says) {
    for (const pt of pts) {
      const apart = every * Math.min(room.scale.x, room.scale.y);
      const words = repeated(stretches, apart).flatMap((parts) =>
        wordBeside(text, pt, wanted, parts, room, widthOf, halfLine),
      );
      if (words.length > 0) return words;
    }
  }
  return [];
}

/** A stretch of a walk that is seen. */
interface Stretch {
  readonly walk: Walk;
  readonly from: Mm;
  readonly to: Mm;
}

const lengthOf = ({ from, to }: Stretch): Mm => to - from;

/** The stretches among which each word finds its place: all together for one, or each cut into as many as say it again. */
function repeated(stretches: readonly Stretch[], apart: Mm): readonly (readonly Stretch[])[] {
  const longestFirst = stretches.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  const whole = stretches.reduce((sum, one) => sum + lengthOf(one), 0);
  if (whole < 1.5 * apart) return [longestFirst];
  const parts = longestFirst.flatMap((one) => {
    const count = Math.max(1, Math.round(lengthOf(one) / apart));
    const part = lengthOf(one) / count;
    return Array.from({ length: count }, (_, i) => ({
      ...one,
      from: one.from + i * part,
      to: one.from + (i + 1) * part,
    }));
  });
  return parts.filter((part) => lengthOf(part) > apart / 2).map((part) => [part]);
}

function wordBeside(
  text: string,
  pt: number,
  wanted: WantedAlong,
  stretches: readonly Stretch[],
  room: OpenRoom,
  widthOf: WidthOf,
  halfLine: Mm,
): readonly PlacedWord[] {
  const width = widthOf(text, pt);
  for (const stretch of stretches) {
    const half = wanted.mark ? Math.min(width, lengthOf(stretch)) / 2 : width / 2;
    const slack = lengthOf(stretch) / 2 - half - (wanted.mark ? 0 : END);
    const middle = (stretch.from + stretch.to) / 2;
    for (let k = 0; Math.ceil(k / 2) * STEP <= slack; k += 1) {
      const at = middle + (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * STEP;
      const chord = chordOf(stretch.walk, at - half, at + half);
      if (chord.bends > BENDS) continue;
      for (const word of besideChord(text, pt, chord, wanted, room, widthOf, halfLine))
        if (room.isFree(word.covers)) return [word];
    }
  }
  return [];
}

/** A straight stretch in the place of a bent one, and how far that bends off it, to the left as it runs and to the right. */
interface Chord {
  readonly middle: Point;
  readonly degrees: number;
  readonly left: Mm;
  readonly right: Mm;
  readonly bends: Mm;
}

function chordOf({ points, along }: Walk, from: Mm, to: Mm): Chord {
  const [a, b] = [placeAt(points, along, from), placeAt(points, along, to)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const way = length === 0 ? point(1, 0) : point((b.x - a.x) / length, (b.y - a.y) / length);
  let [left, right] = [0, 0];
  for (let i = firstBeyond(along, from); i < points.length && (along[i] as Mm) < to; i += 1) {
    const p = points[i] as Point;
    const off = (p.x - a.x) * way.y - (p.y - a.y) * way.x;
    left = Math.max(left, off);
    right = Math.max(right, -off);
  }
  const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2);
  return { middle, degrees: (Math.atan2(way.y, way.x) * 180) / Math.PI, left, right, bends: Math.max(left, right) };
}

/** The words on either side of a chord, the side first on which they rather stand. */
function besideChord(
  text: string,
  pt: number,
  { middle, degrees, left, right }: Chord,
  { turn: turned, side }: WantedAlong,
  { scale }: OpenRoom,
  widthOf: WidthOf,
  halfLine: Mm,
): readonly PlacedWord[] {
  const turn = readable(degrees, turned);
  const backwards = Math.cos(((turn - degrees) * Math.PI) / 180) < 0;
  const { up } = waysOf(turn);
  const em = mmOfPt(pt);
  const word = (above: boolean) => {
    // What lies on the left of the run lies above the words, unless they are read against it.
    const bend = above !== backwards ? left : right;
    const beside = BESIDE + halfLine + bend;
    const off = above ? beside + DESCENT * em : -(beside + LINE_TOP * em);
    return wordAt(text, point(middle.x + up.x * off, middle.y + up.y * off), pt, turn, scale, widthOf);
  };
  // The inside of a clockwise outline is on its right.
  const first = side === 'above' || backwards;
  return [word(first), word(!first)];
}

/** The way along a line in which words don't stand on their head for who has the piece upright; upwards on an upright line. */
function readable(degrees: number, turned: number): number {
  const own = (((degrees - turned) % 360) + 360) % 360;
  const onItsHead = own > 89 && own < 269;
  return onItsHead ? degrees + 180 : degrees;
}

/** A run of curves in short steps, on the paper. */
export function walkOf(run: readonly Curve[], scale: PaperScale): Walk {
  const points: Point[] = [];
  const along: Mm[] = [];
  let length = 0;
  for (const p of flattenCurves(run, INK_CHORD)) {
    const next = onPaper(p, scale);
    const last = points.at(-1);
    const way = last ? Math.hypot(next.x - last.x, next.y - last.y) : 0;
    const count = last ? Math.ceil(way / STEP) : 1;
    for (let k = 1; k <= count; k += 1) {
      const share = k / count;
      points.push(last ? point(last.x + (next.x - last.x) * share, last.y + (next.y - last.y) * share) : next);
      along.push(length + way * share);
    }
    length += way;
  }
  return { points, along };
}

/** What of a walk lies in a room; of a mark, whether its middle does. */
function seenStretches(walk: Walk, box: Box, mark: boolean): readonly Stretch[] {
  const { points, along } = walk;
  if (mark) {
    const to = along.at(-1) ?? 0;
    return points.length > 1 && boxHolds(box, placeAt(points, along, to / 2)) ? [{ walk, from: 0, to }] : [];
  }
  const found: Stretch[] = [];
  let from: Mm | undefined;
  for (const [i, p] of points.entries()) {
    const seen = boxHolds(box, p);
    if (seen && from === undefined) from = along[i] as Mm;
    if (from === undefined || (seen && i < points.length - 1)) continue;
    found.push({ walk, from, to: along[seen ? i : i - 1] as Mm });
    from = undefined;
  }
  return found;
}

function firstBeyond(along: readonly Mm[], length: Mm): number {
  let [low, high] = [0, along.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((along[middle] as Mm) <= length) low = middle + 1;
    else high = middle;
  }
  return low;
}

function placeAt(points: readonly Point[], along: readonly Mm[], length: Mm): Point {
  const i = Math.min(Math.max(firstBeyond(along, length), 1), points.length - 1);
  const [a, b] = [points[i - 1] as Point, points[i] as Point];
  const [from, to] = [along[i - 1] as Mm, along[i] as Mm];
  const share = to === from ? 0 : Math.min(1, Math.max(0, (length - from) / (to - from)));
  return point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
}
