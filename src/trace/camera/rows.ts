import type { Row } from '../../plane';
import { distance, dot, type Point, scale, subtract, turned } from '../../plane';
import { straightened } from './lens';
import { type Predicted, predicted } from './predicted';
import { frameOf, viewToPlane } from './shot-view';
import type { MarkSeen, MeasuredLength, Sight, Sightings, StraightEdge } from './sightings';
import { edgeAt, OF_SHOT, onPlane, sheetAt, sheetPlaceFrom, shotAt, tieAt, type Unknowns, viewFrom } from './unknowns';

/** What lenses usually do, as a standard deviation of both terms: what marks say nothing of stays near a true lens. @source practice */
const USUAL_LENS = { k1: 0.2, k2: 0.1 } as const;

/** All equations at a guess, those of each mark together and in the order of the marks; undefined where it makes no sense. */
export function rowsOf(
  sightings: Sightings,
  unknowns: Unknowns,
  values: readonly number[],
): readonly Row[] | undefined {
  const all: (readonly Row[] | undefined)[] = [
    ...sightings.marks.map((mark) => markRows(sightings, unknowns, values, mark)),
    ...sightings.ties.flatMap(({ seen, off }, i) => {
      const at = tieAt(unknowns.places, i);
      return unknowns.free[at] ? seen.map((sight) => tieRows(sightings, unknowns, values, sight, at, off)) : [];
    }),
    ...sightings.edges.map((edge, i) => {
      const at = edgeAt(unknowns.places, i);
      return unknowns.free[at] ? edgeRows(sightings, values, edge, at) : [];
    }),
    ...sightings.lengths.map((length) => lengthRow(sightings, unknowns, values, length)),
    sightings.shots.flatMap((_, shot) => lensRows(unknowns, values, shotAt(shot))),
  ];
  const rows: Row[] = [];
  for (const some of all) {
    if (!some) return undefined;
    rows.push(...some);
  }
  return rows;
}

function markRows(sightings: Sightings, unknowns: Unknowns, values: readonly number[], seen: MarkSeen) {
  const { shot, sheet, mark, off } = seen;
  const at = sheetAt(unknowns.places, sheet);
  const place = sheetPlaceFrom(values, at);
  const rows: Row[] = [];
  for (const [i, onSheet] of (sightings.sheets[sheet]?.marks[mark] ?? []).entries()) {
    const there = seen.at[i];
    const where = onPlane(place, onSheet);
    const found = there && predictedBy(sightings, unknowns, values, shot, where);
    if (!found) return undefined;
    // Turned by a little, it goes a quarter turn on from where it lies.
    const round = turned(subtract(where, place.at), { x: 0, y: 0 }, Math.PI / 2);
    const { xx, xy, yx, yy } = found.byPlace;
    const by = { x: [xx, xy, xx * round.x + xy * round.y], y: [yx, yy, yx * round.x + yy * round.y] };
    rows.push(...rowsFor(found, there, shot, [at, at + 1, at + 2], by, off));
  }
  return rows;
}

function tieRows(
  sightings: Sightings,
  unknowns: Unknowns,
  values: readonly number[],
  { shot, at: there }: Sight,
  at: number,
  off: number,
) {
  const found = predictedBy(sightings, unknowns, values, shot, {
    x: values[at] as number,
    y: values[at + 1] as number,
  });
  if (!found) return undefined;
  const { xx, xy, yx, yy } = found.byPlace;
  return rowsFor(found, there, shot, [at, at + 1], { x: [xx, xy], y: [yx, yy] }, off);
}

const predictedBy = (sightings: Sightings, unknowns: Unknowns, values: readonly number[], shot: number, where: Point) =>
  predicted(
    sightings.shots[shot] as Sightings['shots'][number],
    values,
    shotAt(shot),
    unknowns.middles[shot] as Point,
    where,
  );

function rowsFor(
  found: Predicted,
  there: Point,
  shot: number,
  of: readonly number[],
  by: { readonly x: readonly number[]; readonly y: readonly number[] },
  off: number,
): readonly Row[] {
  const at = [...Array.from({ length: OF_SHOT }, (_, i) => shotAt(shot) + i), ...of];
  return (['x', 'y'] as const).map((axis) => ({
    off: (found.at[axis] - there[axis]) / off,
    at,
    by: [...found[axis], ...by[axis]].map((value) => value / off),
  }));
}

/** Each point of a straight edge lies on one line of the straightened picture, whose normal and distance are unknown. */
function edgeRows(
  { shots }: Sightings,
  values: readonly number[],
  { shot, points, off }: StraightEdge,
  at: number,
): readonly Row[] {
  const { middle, half } = frameOf(shots[shot] as Sightings['shots'][number]);
  const lensAt = shotAt(shot) + 8;
  const lens = { k1: values[lensAt] as number, k2: values[lensAt + 1] as number };
  const [angle, away] = [values[at] as number, values[at + 1] as number];
  const normal = { x: Math.cos(angle), y: Math.sin(angle) };
  const along = { x: -normal.y, y: normal.x };
  return points.map((pixel) => {
    const p = scale(subtract(pixel, middle), 1 / half);
    const straight = straightened(lens, p);
    const square = dot(p, p);
    const outwards = dot(normal, p) * square;
    return {
      off: (half * (dot(normal, straight) - away)) / off,
      at: [lensAt, lensAt + 1, at, at + 1],
      by: [outwards, outwards * square, dot(along, straight), -1].map((value) => (half * value) / off),
    };
  });
}

/** A measured length against what lies between its ends on the plane. */
function lengthRow(
  { shots }: Sightings,
  unknowns: Unknowns,
  values: readonly number[],
  { ends, length, off }: MeasuredLength,
): readonly Row[] | undefined {
  const found = ends.map((sight) => placeSeen(shots, unknowns, values, sight));
  const [a, b] = found;
  if (!a || !b) return undefined;
  const between = distance(a.place, b.place);
  if (between === 0) return undefined;
  const way = scale(subtract(b.place, a.place), 1 / between);
  const by = (one: PlaceSeen, sign: number) =>
    one.x.map((dx, i) => (sign * (way.x * dx + way.y * (one.y[i] as number))) / off);
  const at = ends.flatMap(({ shot }) => Array.from({ length: OF_SHOT }, (_, i) => shotAt(shot) + i));
  return [{ off: (between - length) / off, at, by: [...by(a, -1), ...by(b, 1)] }];
}

/** A place of the plane, and how it moves with its shot's ten unknowns and with a pixel of the picture, millimetres. */
export interface PlaceSeen {
  readonly place: Point;
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** How a pixel to the right, and one down, moves it. */
  readonly right: Point;
  readonly down: Point;
}

/** What a pixel shows of the plane: what is predicted stays where it is seen, so that the place gives way. */
export function placeSeen(
  shots: Sightings['shots'],
  { middles }: Pick<Unknowns, 'middles'>,
  values: readonly number[],
  { shot, at }: Sight,
): PlaceSeen | undefined {
  const [size, middle] = [shots[shot], middles[shot]];
  if (!size || !middle) return undefined;
  const place = viewToPlane(viewFrom(size, values, shotAt(shot), middle), at);
  const found = place && predicted(size, values, shotAt(shot), middle, place);
  if (!found) return undefined;
  const { xx, xy, yx, yy } = found.byPlace;
  const whole = xx * yy - xy * yx;
  const gives = (dx: number, dy: number): Point => ({ x: (yy * dx - xy * dy) / whole, y: (xx * dy - yx * dx) / whole });
  const moves = found.x.map((dx, i) => gives(-dx, -(found.y[i] as number)));
  return {
    place,
    x: moves.map((move) => move.x),
    y: moves.map((move) => move.y),
    right: gives(1, 0),
    down: gives(0, 1),
  };
}

/** Only where the lens is looked for. */
function lensRows({ free }: Unknowns, values: readonly number[], start: number): readonly Row[] {
  return (['k1', 'k2'] as const).flatMap((term, i) => {
    const at = start + 8 + i;
    if (!free[at]) return [];
    return { off: (values[at] as number) / USUAL_LENS[term], at: [at], by: [1 / USUAL_LENS[term]] };
  });
}
