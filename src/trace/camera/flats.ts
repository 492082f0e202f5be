import type { Mm } from '../../length';
import { type Box, mapTuple, type Point, pointsBounds } from '../../plane';
import { exactnessAt } from './exactness';
import { type FloorShot, planesOf, sightingsOf } from './floor';
import { type Joined, joinShots } from './join';
import { type LengthFound, lengthFound } from './lengths';
import { type ShotView, turnedView, viewToPlane } from './shot-view';
import type { Sight } from './sightings';

/** A photograph that can be flattened. */
export interface Flat {
  readonly view: ShotView;
  /** What it is joined with: photographs of one plane have this in common. */
  readonly joined: Joined;
  /** Its place among those. */
  readonly shot: number;
  /** The marks of the floor that it shows, on the plane. */
  readonly marks: readonly Point[];
}

/**
 * How each photograph is flattened: those that show the same printed marks, the same rectangle, or places of each other, lie
 * on one plane. Rectangles of the same sides are taken to be one.
 *
 * @returns undefined for one whose corners cross over or lie on a line, or that too little joins to the others
 */
export function flatsOf(shots: readonly FloorShot[]): readonly (Flat | undefined)[] {
  const flats: (Flat | undefined)[] = shots.map(() => undefined);
  for (const members of planesOf(shots)) {
    let held = members;
    let result = joinShots(sightingsOf(shots, held));
    while (!result.ok) {
      const apart = new Set(result.problems.map(({ field }) => Number(/\d+$/.exec(field)?.[0] ?? 0) - 1));
      const left = held.filter((_, i) => !apart.has(i));
      if (left.length === held.length || left.length === 0) break;
      held = left;
      result = joinShots(sightingsOf(shots, held));
    }
    if (!result.ok) continue;
    const turn = turnOf(shots[held[0] ?? 0] as FloorShot, result.value.views[0] as ShotView);
    for (const [shot, member] of held.entries()) {
      const view = turnedView(result.value.views[shot] as ShotView, turn);
      const { rectangle, joins, found, dots, width, height } = shots[member] as FloorShot;
      const glass = dots === undefined ? [] : [at(0, 0), at(width, height)];
      const marked = [
        ...glass,
        ...(rectangle?.corners ?? []),
        ...Object.values(joins),
        ...found.flatMap(({ corners }) => corners),
      ];
      flats[member] = { view, joined: result.value, shot, marks: marked.flatMap((p) => viewToPlane(view, p) ?? []) };
    }
  }
  return flats;
}

/** Sheets may lie any way round: a floor that they hold is turned until down is down on its first picture; radians. */
function turnOf({ found, width, height }: FloorShot, view: ShotView): number {
  if (found.length === 0) return 0;
  const [middle, below] = [0.5, 0.6].map((share) => viewToPlane(view, at(width / 2, share * height)));
  return middle && below ? Math.atan2(below.x - middle.x, below.y - middle.y) : 0;
}

const at = (x: Mm, y: Mm): Point => ({ x, y });

/** Round the marks of the floor there is so much more to see, of their spread. @source tolerance */
const ROUND_MARKS = 0.12;
/** Marks that lie nearer together than a block is long are a sheet beside it, and the block may lie so far off, millimetres. @source practice */
const LEAST_REACH: Mm = 960;
const SMALL: Mm = 400;

/** What of the floor is shown at first, millimetres: what is on the picture, and not too far from the marks. */
export function floorBox({ view, marks }: Flat): Box {
  const known = pointsBounds(marks);
  const spread = Math.max(known.right - known.left, known.bottom - known.top);
  const reach = spread < SMALL ? LEAST_REACH : ROUND_MARKS * spread;
  const far = [at(known.left - reach, known.top - reach), at(known.right + reach, known.bottom + reach)];
  const round = Array.from({ length: 10 }, (_, i) => i / 10).flatMap((t) => [
    at(t, 0),
    at(1, t),
    at(1 - t, 1),
    at(0, 1 - t),
  ]);
  // Beyond the horizon there is no end to the floor.
  const seen = round.flatMap(({ x, y }) => viewToPlane(view, at(x * view.width, y * view.height)) ?? far);
  const box = pointsBounds([...marks, ...seen]);
  const [least, most] = mapTuple(far as [Point, Point], (p) => p);
  return {
    left: Math.max(box.left, least.x),
    top: Math.max(box.top, least.y),
    right: Math.min(box.right, most.x),
    bottom: Math.min(box.bottom, most.y),
  };
}

/** How far off the paper may be. */
export interface Exactness {
  /** By the marks, the click and the paper, in 95 of 100 cases at the worst of the places asked for. */
  readonly byMarks: Mm;
  /** How long a measured length comes out, and how far off by that the longest way across the places may be. */
  readonly check: (LengthFound & { readonly across: Mm }) | undefined;
  /** The larger of both. */
  readonly off: Mm;
  /** Whether anything tells how the lenses bend. */
  readonly lensKnown: boolean;
  /** Whether the marks agree with each other as well as hands set them. */
  readonly agreed: boolean;
}

/** Marks that lie so many times farther beside their places than hands set them don't agree. @source tolerance */
const DISAGREED = 3;

/**
 * How far off places may be when their photographs are flattened.
 *
 * @param flats of all photographs
 * @param places by the photographs' own numbers, all of one plane
 * @param check a length that was measured on one photograph
 * @returns undefined where one can't be flattened so far out
 */
export function exactnessOf(
  flats: readonly (Flat | undefined)[],
  places: readonly Sight[],
  check: { readonly shot: number; readonly ends: readonly [Point, Point]; readonly length: Mm } | undefined,
): Exactness | undefined {
  const joined = flats[places[0]?.shot ?? 0]?.joined;
  if (!joined || places.some(({ shot }) => flats[shot]?.joined !== joined)) return undefined;
  const own = ({ shot, at: pixel }: Sight): Sight => ({ shot: flats[shot]?.shot ?? 0, at: pixel });
  const sights = places.map(own);
  const errors = exactnessAt(joined, sights);
  const onPlane = sights.map(({ shot, at: pixel }) => viewToPlane(joined.views[shot] as ShotView, pixel));
  if (errors.includes(undefined) || onPlane.includes(undefined)) return undefined;
  const byMarks = Math.max(0, ...(errors as Mm[]));
  const { left, top, right, bottom } = pointsBounds(onPlane as Point[]);
  const longest = places.length > 1 ? Math.hypot(right - left, bottom - top) : 0;
  const checked =
    check && check.length > 0 && flats[check.shot]?.joined === joined
      ? lengthFound(
          joined,
          mapTuple(check.ends, (end) => own({ shot: check.shot, at: end })),
          check.length,
        )
      : undefined;
  const across = checked && (Math.abs(checked.difference) / checked.measured) * longest;
  return {
    byMarks,
    check: checked && across !== undefined ? { ...checked, across } : undefined,
    off: Math.max(byMarks, across ?? 0),
    lensKnown: joined.lensKnown.every((known, i) => known || joined.sightings.shots[i]?.flat),
    agreed: joined.spread < DISAGREED,
  };
}
