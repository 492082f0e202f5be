import type { Mm } from '../../length';
import { between, distance, dot, type Point, subtract, unit } from '../../plane';
import type { Corner } from './corners';
import { type Turning, turnedBetween } from './turning';
import { pointRound, type WayRound } from './way-round';

/** The corners of a block, round it from the waist at the side; between the second and the last but two lies the crotch curve. */
export const BLOCK_CORNERS = ['waistSide', 'waistCentre', 'crotchPoint', 'hemInseam', 'hemSide'] as const;
export type BlockCorner = (typeof BLOCK_CORNERS)[number];

/** How one may take the corners of an outline for those of a block. */
export interface CornerReading {
  readonly places: Readonly<Record<BlockCorner, Mm>>;
  /** Whether the block’s corners follow one another as the outline runs, clockwise. */
  readonly forward: boolean;
  /** How unlike a block that is: 0 is as every textbook draws it. */
  readonly unlike: number;
}

/** So many corners at most are tried, the sharpest. @source practice */
const MOST_CORNERS = 13;

/** Every way to take the corners of an outline for those of a block, the likeliest first. */
export function cornerReadings(way: WayRound, turning: Turning, corners: readonly Corner[]): readonly CornerReading[] {
  const outer = corners
    .filter(({ turn }) => turn > 0)
    .sort((a, b) => b.turn - a.turn)
    .slice(0, MOST_CORNERS)
    .sort((a, b) => a.at - b.at);
  const points = outer.map(({ at }) => pointRound(way, at));
  const found: CornerReading[] = [];
  for (const five of fivesOf(outer.length))
    for (let first = 0; first < five.length; first += 1)
      for (const forward of [true, false]) {
        const order = five.map((_, i) => five.at((first + (forward ? i : -i)) % five.length) as number);
        const unlike = unlikeness(way, turning, outer, points, order, forward);
        if (unlike > HOPELESS) continue;
        const places = Object.fromEntries(BLOCK_CORNERS.map((name, i) => [name, outer[order[i] as number]?.at]));
        found.push({ places: places as Record<BlockCorner, Mm>, forward, unlike });
      }
  return found.sort((a, b) => a.unlike - b.unlike);
}

/** No block is as unlike as that. @source practice */
const HOPELESS = 60;

/** Five of so many, in their order. */
function fivesOf(count: number): readonly (readonly number[])[] {
  const found: number[][] = [];
  const add = (chosen: readonly number[], from: number) => {
    if (chosen.length === BLOCK_CORNERS.length) found.push([...chosen]);
    else for (let i = from; i < count; i += 1) add([...chosen, i], i + 1);
  };
  add([], 0);
  return found;
}

/** By how many times what is usual a figure lies beyond what is usual, squared. */
const beyond = (value: number, usual: number): number => Math.max(0, value / usual) ** 2;

/**
 * How usual each part of a block is, as the trade draws it: waist and hem across, side and inseam along, square corners,
 * no corners between, a hollow crotch curve that is straight above. Angles in radians.
 *
 * @source practice
 */
const USUAL = {
  waistSlant: 0.3,
  hemSlant: 0.15,
  sideSlant: 0.15,
  inseamSlant: 0.3,
  hollow: 0.9,
  hollowMissing: 0.3,
  hollowLow: 0.6,
  hollowHigh: 0.15,
  cornerTurn: 1.1,
  cornerFlat: 0.5,
  between: 0.5,
  inseamLonger: 0.1,
} as const;

function unlikeness(
  way: WayRound,
  turning: Turning,
  outer: readonly Corner[],
  points: readonly Point[],
  order: readonly number[],
  forward: boolean,
): number {
  const [waistSide, waistCentre, crotchPoint, hemInseam, hemSide] = order.map((i) => points[i]) as [
    Point,
    Point,
    Point,
    Point,
    Point,
  ];
  const up = unit(subtract(between(waistSide, waistCentre, 0.5), between(hemInseam, hemSide, 0.5)));
  const [along, across] = [slantOf(up), slantOf({ x: -up.y, y: up.x })];
  const height = (p: Point) => dot(subtract(p, hemSide), up);
  // The crotch point lies between the waist and the hem.
  if (height(crotchPoint) >= Math.min(height(waistSide), height(waistCentre)) || height(crotchPoint) <= 0)
    return Number.POSITIVE_INFINITY;
  const stretch = (i: number): readonly [Mm, Mm] => {
    const [a, b] = [outer[order[i] as number] as Corner, outer[order[(i + 1) % order.length] as number] as Corner];
    const [from, to] = forward ? [a.at, b.at] : [b.at, a.at];
    return [from, to > from ? to : to + way.length];
  };
  const [from, to] = stretch(1);
  const hollow = turnedBetween(turning, way.length, from + NOT_THERE, to - NOT_THERE).back;
  const [side, inseam] = [distance(hemSide, waistSide), distance(crotchPoint, hemInseam)];
  let sum =
    beyond(across(waistSide, waistCentre), USUAL.waistSlant) +
    beyond(across(hemInseam, hemSide), USUAL.hemSlant) +
    beyond(along(hemSide, waistSide), USUAL.sideSlant) +
    beyond(along(crotchPoint, hemInseam), USUAL.inseamSlant) +
    beyond(USUAL.hollow - hollow, USUAL.hollowMissing) +
    beyond(inseam / side - 1, USUAL.inseamLonger);
  if (sum > HOPELESS) return sum;
  sum += beyond(USUAL.hollowLow - hollowPlace(way, turning, from, to, forward), USUAL.hollowHigh);
  for (const i of order) sum += beyond(USUAL.cornerTurn - (outer[i] as Corner).turn, USUAL.cornerFlat);
  // Corners that no edge of a block has: those that were left out.
  outer.forEach(({ turn }, i) => {
    if (!order.includes(i)) sum += beyond(turn, USUAL.between);
  });
  return sum;
}

/** Beside a corner, millimetres: what it turns is none of its edge. @source tolerance */
const NOT_THERE: Mm = 0.5;

/** How far from the waist along the centre its hollow lies, in the middle: a share of the way to the crotch point. */
function hollowPlace(way: WayRound, turning: Turning, from: Mm, to: Mm, forward: boolean): number {
  const parts = 24;
  const step = (to - from - 2 * NOT_THERE) / parts;
  let [sum, all] = [0, 0];
  for (let i = 0; i < parts; i += 1) {
    const start = from + NOT_THERE + i * step;
    const { back } = turnedBetween(turning, way.length, start, start + step);
    all += back;
    sum += back * ((i + 0.5) / parts);
  }
  const share = all > 0 ? sum / all : 0;
  return forward ? share : 1 - share;
}

/** How far two points lie off a direction, radians, whichever comes first. */
const slantOf =
  (way: Point) =>
  (a: Point, b: Point): number => {
    const chord = unit(subtract(b, a));
    return Math.acos(Math.min(1, Math.abs(dot(chord, way))));
  };
