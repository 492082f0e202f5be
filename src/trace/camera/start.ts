import { distance, leastSquares, type Point, scale, subtract } from '../../plane';
import { middleOf, movedOnto } from '../marks';
import { type Lens, straightened, TRUE_LENS } from './lens';
import { homographyNear } from './near-homography';
import { rowsOf } from './rows';
import { frameOf, type ShotView, shotView, viewToPlane } from './shot-view';
import type { MarkSeen, Sight, Sightings } from './sightings';
import {
  edgeAt,
  FIRST_PLACE,
  figuresOf,
  OF_SHOT,
  onPlane,
  placesOf,
  type SheetPlace,
  sheetAt,
  sheetPlaceFrom,
  shotAt,
  tieAt,
  type Unknowns,
  viewFrom,
} from './unknowns';

/** Fewer places than this on a shot, and no straight edge, say nothing of its lens, which is then taken as true. @source tolerance */
const PLACES_FOR_LENS = 8;
/** Points on a straight edge from which a bend is seen. @source geometry */
const POINTS_FOR_LENS = 3;

/** Rounds of a fit on the way: the next one begins where it ended. @source tolerance */
const GUESSED = 6;

/** What is known so far; nothing where it isn't. */
interface Known {
  readonly views: (ShotView | undefined)[];
  readonly middles: Point[];
  readonly sheets: (SheetPlace | undefined)[];
  readonly ties: (Point | undefined)[];
}

/**
 * A first guess of all unknowns: from the first sheet to the shots that show it, from them to the other sheets and ties they
 * show, and so on; after each step all that is known is fitted anew, because a sheet says little of what lies far from it.
 *
 * @param lens what the lenses are taken to be at first
 * @returns the unknowns, and the shots that share nothing with the others
 */
export function firstGuess(sightings: Sightings, lens: Lens): { unknowns: Unknowns; apart: readonly number[] } {
  let known: Known = {
    views: sightings.shots.map(() => undefined),
    middles: sightings.shots.map(() => ({ x: 0, y: 0 })),
    sheets: sightings.sheets.map((_, i) => (i === 0 ? FIRST_PLACE : undefined)),
    ties: sightings.ties.map(() => undefined),
  };
  while (true) {
    const more = withTies(sightings, withSheet(sightings, known) ?? withShot(sightings, known, lens));
    if (!more) break;
    known = fitted(sightings, more);
  }
  const apart = known.views.flatMap((view, i) => (view ? [] : [i]));
  return { unknowns: unknownsOf(sightings, known), apart };
}

/** One more sheet: of those that a known shot shows, the one nearest to what is known on it. */
function withSheet({ sheets, marks }: Sightings, known: Known): Known | undefined {
  const shown = marks.filter(({ shot, sheet }) => known.views[shot] && !known.sheets[sheet]);
  const way = ({ shot, at }: MarkSeen) => {
    const near = marks.filter((other) => other.shot === shot && known.sheets[other.sheet]);
    return Math.min(...near.map((other) => distance(middleOf(other.at), middleOf(at))));
  };
  const nearest = shown.toSorted((a, b) => way(a) - way(b))[0];
  if (!nearest) return undefined;
  const all = shown.filter(({ shot, sheet }) => shot === nearest.shot && sheet === nearest.sheet);
  const view = known.views[nearest.shot] as ShotView;
  const pairs = all.flatMap(({ mark, at }) =>
    (sheets[nearest.sheet]?.marks[mark] ?? []).flatMap((from, i) => {
      const to = viewToPlane(view, at[i] as Point);
      return to ? [{ from, to }] : [];
    }),
  );
  const place = movedOnto(
    pairs.map(({ from }) => from),
    pairs.map(({ to }) => to),
  );
  return { ...known, sheets: known.sheets.with(nearest.sheet, place) };
}

/** One more shot: the one that shows most places that are known. */
function withShot(sightings: Sightings, known: Known, lens: Lens): Known | undefined {
  const waiting = sightings.shots.flatMap((shot, i) => {
    if (known.views[i]) return [];
    const pairs = pairsOf(sightings, known, i);
    if (pairs.length === 0) return [];
    const { middle, half } = frameOf(shot);
    const own = shot.flat ? TRUE_LENS : lens;
    const [here, reach] = spreadOf(pairs.map(({ place }) => place));
    const seen = pairs.map(({ place, at }) => ({
      from: scale(subtract(place, here), 1 / reach),
      to: straightened(own, scale(subtract(at, middle), 1 / half)),
    }));
    const found = homographyNear(seen, shot.flat);
    if (!found) return [];
    const [a, b, c, d, e, f, g, h, j] = found;
    const at = (x: number, y: number, z: number): readonly [number, number, number] => [
      x / reach,
      y / reach,
      z - (x * here.x + y * here.y) / reach,
    ];
    const view = shotView(shot, own, [...at(a, b, c), ...at(d, e, f), ...at(g, h, j)]);
    return [{ i, view, here, count: pairs.length }];
  });
  const best = waiting.toSorted((a, b) => b.count - a.count)[0];
  return (
    best && { ...known, views: known.views.with(best.i, best.view), middles: known.middles.with(best.i, best.here) }
  );
}

/** The middle of some points, and their mean distance from it, or 1 where they are one. */
function spreadOf(points: readonly Point[]): readonly [Point, number] {
  const here = middleOf(points);
  return [here, points.reduce((sum, p) => sum + distance(p, here), 0) / points.length || 1];
}

/** The places a shot shows that are known, and where it shows them. */
function pairsOf({ sheets, marks, ties }: Sightings, known: Known, shot: number) {
  const onSheets = marks
    .filter((seen) => seen.shot === shot)
    .flatMap(({ sheet, mark, at }) => {
      const place = known.sheets[sheet];
      return place
        ? (sheets[sheet]?.marks[mark] ?? []).map((p, i) => ({ place: onPlane(place, p), at: at[i] as Point }))
        : [];
    });
  const onTies = ties.flatMap(({ seen }, i) => {
    const place = known.ties[i];
    return place ? seen.filter((sight) => sight.shot === shot).map(({ at }) => ({ place, at })) : [];
  });
  return [...onSheets, ...onTies];
}

/** All ties that a known shot shows. */
function withTies({ ties }: Sightings, known: Known | undefined): Known | undefined {
  if (!known) return undefined;
  const placeOf = ({ shot, at }: Sight) => {
    const view = known.views[shot];
    return view ? (viewToPlane(view, at) ?? []) : [];
  };
  return { ...known, ties: ties.map(({ seen }, i) => known.ties[i] ?? seen.flatMap(placeOf)[0]) };
}

/** Only what speaks of what is known. */
function knownPart(sightings: Sightings, known: Known): Sightings {
  const has = ({ shot }: { readonly shot: number }) => known.views[shot] !== undefined;
  return {
    ...sightings,
    marks: sightings.marks.filter((mark) => has(mark) && known.sheets[mark.sheet]),
    ties: sightings.ties.map((tie, i) => ({ ...tie, seen: known.ties[i] ? tie.seen.filter(has) : [] })),
    edges: sightings.edges.map((edge) => ({ ...edge, points: has(edge) ? edge.points : [] })),
    lengths: sightings.lengths.filter(({ ends }) => ends.every(has)),
  };
}

/** All that is known fitted to each other; as it was where that can't be. */
function fitted(sightings: Sightings, known: Known): Known {
  const unknowns = unknownsOf(sightings, known);
  const part = knownPart(sightings, known);
  const solved = leastSquares(unknowns.values, unknowns.free, (values) => rowsOf(part, unknowns, values), GUESSED);
  if (!solved) return known;
  const { unknowns: values } = solved;
  const { places } = unknowns;
  return {
    ...known,
    views: known.views.map(
      (view, i) =>
        view &&
        viewFrom(sightings.shots[i] as Sightings['shots'][number], values, shotAt(i), known.middles[i] as Point),
    ),
    sheets: known.sheets.map((place, i) => place && sheetPlaceFrom(values, sheetAt(places, i))),
    ties: known.ties.map(
      (p, i) => p && { x: values[tieAt(places, i)] as number, y: values[tieAt(places, i) + 1] as number },
    ),
  };
}

/** The unknowns at what is known; what isn't, and what nothing speaks of, is held. */
function unknownsOf(sightings: Sightings, known: Known): Unknowns {
  const places = placesOf(sightings);
  const values = new Array<number>(places.count).fill(0);
  const free = new Array<boolean>(places.count).fill(false);
  const put = (at: number, figures: readonly number[], open: boolean) =>
    figures.forEach((figure, i) => {
      values[at + i] = figure;
      free[at + i] = open;
    });
  const part = knownPart(sightings, known);
  const shown = (shot: number) =>
    part.marks.reduce((sum, seen) => sum + (seen.shot === shot ? seen.at.length : 0), 0) +
    part.ties.filter(({ seen }) => seen.length > 1 && seen.some((sight) => sight.shot === shot)).length;
  known.views.forEach((view, i) => {
    if (!view) return;
    const { lens, seen } = view;
    const { flat } = sightings.shots[i] as Sightings['shots'][number];
    const figures = figuresOf(seen, known.middles[i] as Point);
    const bends = part.edges.some(({ shot, points }) => shot === i && points.length >= POINTS_FOR_LENS);
    const lensOpen = !flat && (bends || shown(i) >= PLACES_FOR_LENS);
    put(shotAt(i), figures.slice(0, 6), true);
    put(shotAt(i) + 6, figures.slice(6), !flat);
    put(shotAt(i) + OF_SHOT - 2, lensOpen ? [lens.k1, lens.k2] : [0, 0], lensOpen);
  });
  known.sheets.forEach((place, i) => {
    if (place) put(sheetAt(places, i), [place.at.x, place.at.y, place.turn], i > 0);
  });
  known.ties.forEach((p, i) => {
    if (p) put(tieAt(places, i), [p.x, p.y], (part.ties[i]?.seen.length ?? 0) > 1);
  });
  part.edges.forEach(({ shot, points }, i) => {
    if (points.length >= POINTS_FOR_LENS) put(edgeAt(places, i), lineThrough(sightings, known, shot, points), true);
  });
  return { values, free, middles: known.middles, places };
}

/** The direction of the normal, and the distance from the picture's middle, of the line nearest to points of an edge. */
function lineThrough({ shots }: Sightings, known: Known, shot: number, points: readonly Point[]): readonly number[] {
  const { middle, half } = frameOf(shots[shot] as Sightings['shots'][number]);
  const { lens } = known.views[shot] as ShotView;
  const straight = points.map((p) => straightened(lens, scale(subtract(p, middle), 1 / half)));
  const here = middleOf(straight);
  const sum = (of: (p: Point) => number) => straight.reduce((all, p) => all + of(subtract(p, here)), 0);
  const along =
    Math.atan2(
      2 * sum(({ x, y }) => x * y),
      sum(({ x, y }) => x * x - y * y),
    ) / 2;
  const normal = along + Math.PI / 2;
  return [normal, Math.cos(normal) * here.x + Math.sin(normal) * here.y];
}
