import { between, distance, type Point, point } from '../../plane';
import type { FourCorners } from './four-corners';
import { brightness, type GreyPicture } from './grey';

/** A side is read at so many places at the most, and at one every so many pixels. @source tolerance */
const PLACES = { most: 48, every: 1.5 } as const;
/** It is read between these shares of it: nearer to the corners the blur of two sides runs into one. @source tolerance */
const READ = { from: 0.1, to: 0.9 } as const;
/** Across it is read so far to either side, as a share of its length: half the width of the frame. @source geometry: the frame is a seventh */
const ACROSS = 1 / 14;
/** A side this long, in pixels, is bent enough by a lens to be read as a bow. @source tolerance: 0.1 pixels at 15 % of distortion */
const BOWED = 40;
const ROUNDS = 3;

/** A side as seen, offset from the straight line between two points: a + b·t + c·t², t from 0 to 1 along it. */
interface Side {
  readonly from: Point;
  readonly to: Point;
  readonly bow: readonly [number, number, number];
}

/**
 * The corners of a dark square to a fraction of a pixel: each side is found where it is steepest, place by place, and
 * drawn through those places as a straight line or a shallow bow; the corners are where the sides meet.
 *
 * @param corners to a few pixels, clockwise
 * @returns undefined where a side can't be read
 */
export function sharpened(picture: GreyPicture, corners: FourCorners): FourCorners | undefined {
  let now: FourCorners | undefined = corners;
  for (let round = 0; now && round < ROUNDS; round += 1) now = once(picture, now, round === 0);
  return now;
}

function once(picture: GreyPicture, corners: FourCorners, first: boolean): FourCorners | undefined {
  const sides = corners.map((from, i) => sideSeen(picture, from, corners[(i + 1) % 4] as Point, first));
  const meet = (i: number): Point | undefined => {
    const [before, after] = [sides[(i + 3) % 4], sides[i]];
    return before && after && meeting(before, after);
  };
  const [a, b, c, d] = [meet(0), meet(1), meet(2), meet(3)];
  return a && b && c && d && [a, b, c, d];
}

function sideSeen(picture: GreyPicture, from: Point, to: Point, first: boolean): Side | undefined {
  const length = distance(from, to);
  const count = Math.max(6, Math.min(PLACES.most, Math.round((length * (READ.to - READ.from)) / PLACES.every)));
  // The way out of a clockwise square on a picture, whose y runs down.
  const out = point((to.y - from.y) / length, (from.x - to.x) / length);
  const reach = Math.max(2.5, ACROSS * length);
  const read: (readonly [t: number, off: number])[] = [];
  for (let i = 0; i < count; i += 1) {
    const t = READ.from + ((READ.to - READ.from) * i) / (count - 1);
    const off = steepest(picture, between(from, to, t), out, first ? Math.max(reach, 4) : reach);
    if (off !== undefined) read.push([t, off]);
  }
  if (read.length < Math.max(4, count / 2)) return undefined;
  const bow = bowThrough(read, length >= BOWED);
  return bow && { from, to, bow };
}

/** How far out from a place the picture brightens most: the middle of the rise, weighed by its steepness. */
function steepest(picture: GreyPicture, at: Point, out: Point, reach: number): number | undefined {
  const step = 0.5;
  const steps = Math.ceil(reach / step);
  const seen = Array.from({ length: 2 * steps + 1 }, (_, i) => {
    const off = (i - steps) * step;
    return brightness(picture, { x: at.x + off * out.x, y: at.y + off * out.y });
  });
  let best = 0;
  let place = -1;
  for (let i = 1; i < seen.length; i += 1) {
    const rise = (seen[i] as number) - (seen[i - 1] as number);
    if (rise > best) [best, place] = [rise, i];
  }
  if (place < 0 || best < 2) return undefined;
  // The foot and the top of the rise round the steepest step.
  let [foot, top] = [place - 1, place];
  while (foot > 0 && (seen[foot - 1] as number) < (seen[foot] as number)) foot -= 1;
  while (top < seen.length - 1 && (seen[top + 1] as number) > (seen[top] as number)) top += 1;
  const half = ((seen[foot] as number) + (seen[top] as number)) / 2;
  for (let i = foot + 1; i <= top; i += 1) {
    const [before, after] = [seen[i - 1] as number, seen[i] as number];
    if (after >= half) return (i - 1 + (half - before) / (after - before) - steps) * step;
  }
  return undefined;
}

/** Least squares, twice: the second time without the places that lie far off. */
function bowThrough(
  read: readonly (readonly [number, number])[],
  bowed: boolean,
): readonly [number, number, number] | undefined {
  const first = fitted(read, bowed);
  if (!first) return undefined;
  const off = read.map(([t, at]) => Math.abs(at - first[0] - first[1] * t - first[2] * t * t));
  const usual = [...off].sort((a, b) => a - b)[Math.floor(off.length / 2)] ?? 0;
  const near = read.filter((_, i) => (off[i] as number) <= Math.max(0.15, 3 * usual));
  return near.length >= 4 ? fitted(near, bowed) : first;
}

function fitted(
  read: readonly (readonly [number, number])[],
  bowed: boolean,
): readonly [number, number, number] | undefined {
  const sum = (of: (t: number, at: number) => number) => read.reduce((total, [t, at]) => total + of(t, at), 0);
  const n = read.length;
  const [s1, s2, s3, s4] = [sum((t) => t), sum((t) => t * t), sum((t) => t ** 3), sum((t) => t ** 4)];
  const [y0, y1, y2] = [sum((_, y) => y), sum((t, y) => t * y), sum((t, y) => t * t * y)];
  if (!bowed) {
    const whole = n * s2 - s1 * s1;
    return whole > 0 ? [(y0 * s2 - y1 * s1) / whole, (n * y1 - s1 * y0) / whole, 0] : undefined;
  }
  const whole = determinant(n, s1, s2, s1, s2, s3, s2, s3, s4);
  if (!(Math.abs(whole) > Number.EPSILON)) return undefined;
  return [
    determinant(y0, s1, s2, y1, s2, s3, y2, s3, s4) / whole,
    determinant(n, y0, s2, s1, y1, s3, s2, y2, s4) / whole,
    determinant(n, s1, y0, s1, s2, y1, s2, s3, y2) / whole,
  ];
}

const determinant = (
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  i: number,
): number => a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

/** Where the end of one side meets the beginning of the next: both shallow, so that a few rounds find it. */
function meeting(before: Side, after: Side): Point | undefined {
  let [s, t] = [1, 0];
  for (let round = 0; round < 4; round += 1) {
    const [p, way] = pointOn(before, s);
    const [q, other] = pointOn(after, t);
    const whole = way.x * other.y - way.y * other.x;
    if (Math.abs(whole) < Number.EPSILON) return undefined;
    const [dx, dy] = [q.x - p.x, q.y - p.y];
    s += (dx * other.y - dy * other.x) / whole;
    t += (dx * way.y - dy * way.x) / whole;
  }
  return Math.abs(s - 1) < 0.3 && Math.abs(t) < 0.3 ? pointOn(before, s)[0] : undefined;
}

function pointOn({ from, to, bow: [a, b, c] }: Side, t: number): readonly [Point, Point] {
  const length = distance(from, to);
  const along = point((to.x - from.x) / length, (to.y - from.y) / length);
  const out = point(along.y, -along.x);
  const off = a + b * t + c * t * t;
  const rise = b + 2 * c * t;
  return [
    point(from.x + along.x * length * t + out.x * off, from.y + along.y * length * t + out.y * off),
    point(along.x * length + out.x * rise, along.y * length + out.y * rise),
  ];
}
