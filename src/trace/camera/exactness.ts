import type { Mm } from '../../length';
import { forward, type Point, subtract } from '../../plane';
import { middleOf } from '../marks';
import type { Joined } from './join';
import { predicted } from './predicted';
import { type PlaceSeen, placeSeen } from './rows';
import type { MarkSeen, Shot, Sight } from './sightings';
import { type Standpoint, standpointOf } from './standpoint';
import { onPlane, type SheetPlace, shotAt } from './unknowns';

/** A mark that is set by hand lies within so many pixels of its place, evenly, in x and in y; a mark that is found lies nearer. @source practice */
const CLICK = 1;
/** The standard deviation of what lies evenly within ±1. @source geometry */
const EVENLY = 1 / Math.sqrt(3);
/** How a hand's mark is off, a standard deviation, pixels. */
export const HAND_OFF = CLICK * EVENLY;

/** Paper lies flat to this, both ways: creases and the curl of a roll. @source practice */
const OFF_PLANE: Mm = 1;
/**
 * How far off places may be in 95 of 100 cases, each against the others: it doesn't matter how all of them lie together.
 * Four things are summed: what the marks leave open of shots and lenses, what paper under the marks does to that when it
 * isn't flat, the click on the place itself, and its own paper, which is shifted by its height times the tangent of the
 * angle from the plumb line at which it is seen.
 *
 * @param places where they are seen
 * @param off how each is marked, a standard deviation, pixels
 * @source propagation of covariance, Hartley & Zisserman 2004, chapter 5; the plane moved freely, W. Baarda's S-transformation, 1973; from memory
 * @returns millimetres for each; undefined for one that can't be seen
 */
export function exactnessAt(joined: Joined, places: readonly Sight[], off = HAND_OFF): readonly (Mm | undefined)[] {
  const { sightings, unknowns } = joined;
  const stands = joined.views.map((view, i) => (sightings.shots[i]?.flat ? undefined : standpointOf(view)));
  const seen = places.map((sight) => placeSeen(sightings.shots, unknowns, unknowns.values, sight));
  const known = seen.flatMap((place, i) => (place ? [{ place, i, shot: (places[i] as Sight).shot }] : []));
  const sums = known.map(({ place, shot }) => {
    const click = [place.right, place.down].map(({ x, y }) => ({ x: off * x, y: off * y }));
    const lift = shiftOf(stands[shot], place.place);
    return [...click, { x: EVENLY * OFF_PLANE * lift.x, y: EVENLY * OFF_PLANE * lift.y }];
  });
  const reached = known.map((one) => reachOf(joined, one));
  const pulls = [...ofUnknowns(joined, reached), ...ofHeights(joined, reached, stands)];
  const where = known.map(({ place }) => place.place);
  for (const pull of pulls) for (const [i, by] of withoutMoving(where, pull).entries()) sums[i]?.push(by);
  const found: (Mm | undefined)[] = places.map(() => undefined);
  known.forEach(({ i }, at) => {
    found[i] = reachOf95(sums[at] as readonly Point[]);
  });
  return found;
}

interface Known {
  readonly place: PlaceSeen;
  readonly shot: number;
}

/** How a place moves, in x and in y, with each of as many independent chances as there are unknowns, all of the same size. */
interface Reach {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

function reachOf({ solved, unknowns: { values, free } }: Joined, { place, shot }: Known): Reach {
  const along = (axis: 'x' | 'y') => {
    const line = new Array<number>(values.length).fill(0);
    place[axis].forEach((value, i) => {
      const at = shotAt(shot) + i;
      if (free[at]) line[at] = value;
    });
    return forward(solved.triangle, line);
  };
  return { x: along('x'), y: along('y') };
}

/** How all places move with each of those chances. */
const ofUnknowns = ({ unknowns, spread }: Joined, reached: readonly Reach[]): readonly (readonly Point[])[] =>
  unknowns.values.map((_, k) =>
    reached.map(({ x, y }) => ({ x: spread * (x[k] as number), y: spread * (y[k] as number) })),
  );

/** How all places move when the paper under one mark lies off the plane, mark by mark. */
function ofHeights(joined: Joined, reached: readonly Reach[], stands: readonly (Standpoint | undefined)[]) {
  const { sightings, unknowns, solved } = joined;
  const lifted = new Map<string, number[]>();
  let row = 0;
  for (const seen of sightings.marks) {
    const key = `${seen.sheet} ${seen.mark}`;
    const slope = lifted.get(key) ?? new Array<number>(unknowns.values.length).fill(0);
    lifted.set(key, slope);
    for (const pixel of liftedPixels(joined, seen, stands[seen.shot])) {
      const { at, by } = solved.rows[row] as (typeof solved.rows)[number];
      at.forEach((unknown, k) => {
        if (unknowns.free[unknown])
          slope[unknown] = (slope[unknown] as number) + ((by[k] as number) * pixel) / seen.off;
      });
      row += 1;
    }
  }
  return [...lifted.values()].map((slope) => {
    const answer = forward(solved.triangle, slope);
    const along = (line: readonly number[]) =>
      EVENLY * OFF_PLANE * line.reduce((sum, value, i) => sum + value * (answer[i] as number), 0);
    return reached.map(({ x, y }) => ({ x: along(x), y: along(y) }));
  });
}

/** By how many pixels each place of a mark is seen shifted, in x and in y, when it lies a millimetre above the plane. */
function liftedPixels(
  { sightings, sheets, unknowns }: Joined,
  { shot, sheet, mark, at }: MarkSeen,
  stand: Standpoint | undefined,
) {
  const { values, middles } = unknowns;
  return at.flatMap((_, i) => {
    const where = onPlane(sheets[sheet] as SheetPlace, sightings.sheets[sheet]?.marks[mark]?.[i] as Point);
    const found = predicted(sightings.shots[shot] as Shot, values, shotAt(shot), middles[shot] as Point, where);
    const { xx, xy, yx, yy } = found?.byPlace ?? { xx: 0, xy: 0, yx: 0, yy: 0 };
    const { x, y } = shiftOf(stand, where);
    return [xx * x + xy * y, yx * x + yy * y];
  });
}

/** By how much a place is seen shifted, away from the camera's foot, when it lies a millimetre above the plane. */
function shiftOf(stand: Standpoint | undefined, place: Point): Point {
  if (!stand) return { x: 0, y: 0 };
  const { x, y } = subtract(place, stand.foot);
  return { x: x / stand.height, y: y / stand.height };
}

/** What remains of how places move when all of them may be moved and turned together; one place alone stays as it is. */
function withoutMoving(places: readonly Point[], moves: readonly Point[]): readonly Point[] {
  if (places.length < 2) return moves;
  const [here, by] = [middleOf(places), middleOf(moves)];
  const arms = places.map((p) => subtract(p, here));
  const square = arms.reduce((sum, { x, y }) => sum + x * x + y * y, 0);
  const turn =
    square > 0
      ? arms.reduce((sum, { x, y }, i) => sum + x * (moves[i] as Point).y - y * (moves[i] as Point).x, 0) / square
      : 0;
  return moves.map((move, i) => {
    const { x, y } = arms[i] as Point;
    return { x: move.x - by.x + turn * y, y: move.y - by.y - turn * x };
  });
}

/**
 * 95 of 100 lie within so many standard deviations of the larger axis: where all lie on a line, and how many more where they
 * lie round; between them the share of the smaller axis counts by this power, which is the integral to 0.01.
 *
 * @source geometry: the normal distribution in the plane
 */
const ON_LINE = 1.96;
const ROUND = Math.sqrt(-2 * Math.log(0.05)) - ON_LINE;
const POWER = 2.7;

/** How far 95 of 100 sums of independent moves reach. */
function reachOf95(moves: readonly Point[]): Mm {
  const sum = (of: (p: Point) => number) => moves.reduce((total, p) => total + of(p), 0);
  const [xx, yy, xy] = [sum(({ x }) => x * x), sum(({ y }) => y * y), sum(({ x, y }) => x * y)];
  const apart = Math.hypot(xx - yy, 2 * xy);
  const [larger, smaller] = [(xx + yy + apart) / 2, Math.max(0, xx + yy - apart) / 2];
  if (larger === 0) return 0;
  return Math.sqrt(larger) * (ON_LINE + ROUND * (smaller / larger) ** (POWER / 2));
}
