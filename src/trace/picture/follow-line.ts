import { type Box, distance, type Point, point, pointsBounds } from '../../plane';
import { clearestWay } from './clearest-way';
import { type GreyPicture, halved } from './grey';
import { type LineStrength, lineStrength, profileAcross } from './line-strength';

/** A drawn line as it was followed on a picture. */
export interface FollowedLine {
  /** From the first place to the last, a few pixels apart, in pixels of the picture. */
  readonly points: readonly Point[];
  /** How much of it showed, 0 to 1; below {@link FAINT} it was guessed for the most part. */
  readonly shown: number;
}

/** Where less of a line shows, a person is told so and draws it by hand. @source tolerance */
export const FAINT = 0.5;

/** The line is looked for on a picture on which the straight way is so many pixels long at the most. @source tolerance */
const LOOKED_AT = 500;
/** It runs within so much of the straight way on either side, as a share of its length: a crotch curve bends out by a third. @source practice */
const ASIDE = 0.45;
/** Points of it lie so far apart, pixels of the picture that is looked at. @source tolerance */
const APART = 6;

/**
 * The drawn pencil line, or the edge of the paper, that leads through the given places: the live outline that snaps
 * between two marked corners.
 *
 * @param picture as photographed, or flattened
 * @param places from corner to corner; those between are places that it must pass
 * @param wide how wide a pencil line is, pixels
 */
export function followLine(picture: GreyPicture, places: readonly Point[], wide: number): FollowedLine {
  const runs = places.slice(1).map((to, i) => runBetween(picture, places[i] as Point, to, wide));
  const points = runs.flatMap((run, i) => (i === 0 ? run.points : run.points.slice(1)));
  const long = runs.reduce((sum, run) => sum + run.length, 0);
  const shown = long > 0 ? runs.reduce((sum, run) => sum + run.shown * run.length, 0) / long : 0;
  return { points, shown };
}

interface Run extends FollowedLine {
  readonly length: number;
}

function runBetween(picture: GreyPicture, from: Point, to: Point, wide: number): Run {
  const length = distance(from, to);
  if (length < 2 * APART) return { points: [from, to], shown: 1, length };
  let [level, scale] = [picture, 1];
  while (length / scale > LOOKED_AT && wide / scale > 1) [level, scale] = [halved(level), 2 * scale];
  const down = ({ x, y }: Point) => point(x / scale, y / scale);
  const up = ({ x, y }: Point) => point(x * scale, y * scale);
  const strength = lineStrength(level, roomRound(down(from), down(to)), wide / scale);
  const way = clearestWay(strength, down(from), down(to));
  const shown = shownAlong(strength, way);
  const even = evenly(smoothed(way), APART);
  const middle = even.slice(1, -1).map((p, i) => acrossAt(picture, up(p), wayAt(even, i + 1), wide, scale));
  return { points: [from, ...placed(middle), to], shown, length };
}

function roomRound(from: Point, to: Point): Box {
  const aside = ASIDE * distance(from, to) + 12;
  const { left, right, top, bottom } = pointsBounds([from, to]);
  return { left: left - aside, right: right + aside, top: top - aside, bottom: bottom + aside };
}

/** How clearly the way shows: the mean of what shows along it. */
function shownAlong({ left, top, width, data }: LineStrength, way: readonly Point[]): number {
  const sum = way.reduce(
    (total, { x, y }) => total + (data[(Math.floor(y) - top) * width + Math.floor(x) - left] ?? 0),
    0,
  );
  return sum / Math.max(1, way.length);
}

/** Steps from pixel to pixel are no curve: each place is the mean of those near it. */
function smoothed(way: readonly Point[]): readonly Point[] {
  const reach = 4;
  return way.map((p, i) => {
    const near = Math.min(reach, i, way.length - 1 - i);
    if (near === 0) return p;
    const some = way.slice(i - near, i + near + 1);
    return point(
      some.reduce((sum, one) => sum + one.x, 0) / some.length,
      some.reduce((sum, one) => sum + one.y, 0) / some.length,
    );
  });
}

/** Places along a way, evenly apart, both ends included. */
function evenly(way: readonly Point[], apart: number): readonly Point[] {
  const lengths = way.map((p, i) => (i === 0 ? 0 : distance(way[i - 1] as Point, p)));
  const whole = lengths.reduce((a, b) => a + b, 0);
  const count = Math.max(2, Math.round(whole / apart));
  const out: Point[] = [];
  let [gone, at] = [0, 1];
  for (let i = 0; i <= count; i += 1) {
    const wanted = (whole * i) / count;
    while (at < way.length - 1 && gone + (lengths[at] as number) < wanted) {
      gone += lengths[at] as number;
      at += 1;
    }
    const [a, b] = [way[at - 1] as Point, way[at] as Point];
    const t = Math.max(0, Math.min(1, (wanted - gone) / (lengths[at] || 1)));
    out.push(point(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t));
  }
  return out;
}

function wayAt(points: readonly Point[], i: number): Point {
  const [a, b] = [points[Math.max(0, i - 1)] as Point, points[Math.min(points.length - 1, i + 1)] as Point];
  const length = distance(a, b) || 1;
  return point((b.x - a.x) / length, (b.y - a.y) / length);
}

/** A place of the way, and how far across it the line lies, if it is one, or the edge. */
interface Across {
  readonly at: Point;
  readonly across: Point;
  readonly line: number | undefined;
  readonly edge: number | undefined;
}

function acrossAt(picture: GreyPicture, at: Point, way: Point, wide: number, scale: number): Across {
  const across = point(-way.y, way.x);
  const seen = profileAcross(picture, at, across, Math.max(REACH, 4 * wide, 3 * scale));
  return { at, across, line: darkMiddle(seen), edge: steepestPlace(seen) };
}

/** The way runs at the most so many pixels beside what it follows. @source tolerance */
const REACH = 8;

/**
 * Each place moved across the way: onto the line, where as much of the run is one, or else onto the edge. Where another
 * line crosses nothing can be read, and a place lies as far aside as its neighbours.
 */
function placed(run: readonly Across[]): readonly Point[] {
  const lines = run.filter(({ line }) => line !== undefined).length;
  const edges = run.filter(({ edge }) => edge !== undefined).length;
  const offs = steady(run.map(({ line, edge }) => (2 * lines >= edges ? line : edge)));
  return run.map(({ at, across }, i) => {
    const off = offs[i] ?? besides(offs, i);
    return point(at.x + off * across.x, at.y + off * across.y);
  });
}

/** Without the places that jump aside, where another line crosses. */
const steady = (offs: readonly (number | undefined)[]): readonly (number | undefined)[] =>
  offs.map((off, i) => {
    const near = offs.slice(Math.max(0, i - NEAR), i + NEAR + 1).filter((one) => one !== undefined);
    const middle = near.sort((a, b) => a - b)[Math.floor(near.length / 2)];
    return off !== undefined && middle !== undefined && Math.abs(off - middle) > JUMP ? undefined : off;
  });

/** So many places to either side are its neighbours, and a place that lies so many pixels off them has jumped. @source tolerance */
const NEAR = 3;
const JUMP = 2;

function besides(offs: readonly (number | undefined)[], i: number): number {
  let [before, after] = [i - 1, i + 1];
  while (before >= 0 && offs[before] === undefined) before -= 1;
  while (after < offs.length && offs[after] === undefined) after += 1;
  const [a, b] = [offs[before], offs[after]];
  if (a === undefined || b === undefined) return a ?? b ?? 0;
  return a + ((b - a) * (i - before)) / (after - before);
}

/** The middle of what is darker than both sides of a profile, pixels from its middle; undefined where it is an edge. */
function darkMiddle(seen: readonly number[]): number | undefined {
  const rim = Math.min(mean(seen.slice(0, 3)), mean(seen.slice(-3)));
  const darkest = Math.min(...seen);
  const apart = Math.abs(mean(seen.slice(0, 3)) - mean(seen.slice(-3)));
  const depth = rim - darkest;
  if (depth < 4 || depth < apart) return undefined;
  let [sum, weight] = [0, 0];
  seen.forEach((value, i) => {
    const dark = Math.max(0, rim - value - depth / 3);
    sum += dark * (i - (seen.length - 1) / 2);
    weight += dark;
  });
  return weight > 0 ? sum / weight / 2 : undefined;
}

/** Where a profile changes most, weighed by how much. */
function steepestPlace(seen: readonly number[]): number | undefined {
  const sign = Math.sign((seen.at(-1) ?? 0) - (seen[0] ?? 0));
  let [sum, weight] = [0, 0];
  for (let i = 1; i < seen.length; i += 1) {
    const rise = Math.max(0, sign * ((seen[i] as number) - (seen[i - 1] as number))) ** 2;
    sum += rise * (i - 0.5 - (seen.length - 1) / 2);
    weight += rise;
  }
  return weight > 16 ? sum / weight / 2 : undefined;
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
