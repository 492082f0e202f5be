import type { Mm } from '../../length';
import { distance, type Point, pointsBounds, pointsHold } from '../../plane';
import { exactnessAt } from './exactness';
import type { Joined } from './join';
import { viewToPicture } from './shot-view';
import type { Sight } from './sightings';

/** How far off the paper may be in 95 of 100 cases, over a whole block: at the points of a grid, and at worst on each edge. */
export interface ExactMap<Name extends string> {
  /** The grid's first point, and how far its points lie apart, millimetres. */
  readonly first: Point;
  readonly step: Mm;
  readonly columns: number;
  /** Row by row; undefined off the block. */
  readonly values: readonly (Mm | undefined)[];
  readonly edges: Readonly<Record<Name, Mm>>;
  /** At worst on any edge or point of the grid. */
  readonly worst: Mm;
}

/** So many steps of the grid lie across the longer side of a block. @source tolerance */
const STEPS = 16;

/**
 * The map of how exact a block is.
 *
 * @param edges round the block, each as points on the plane, millimetres
 * @param seen where the block was marked: a point of the map is taken from the shot of the nearest of these
 * @returns undefined where a part of the block can't be seen
 */
export function exactMap<Name extends string>(
  joined: Joined,
  edges: Readonly<Record<Name, readonly Point[]>>,
  seen: readonly { readonly place: Point; readonly shot: number }[],
): ExactMap<Name> | undefined {
  const names = Object.keys(edges) as Name[];
  const outline = names.flatMap((name) => edges[name]);
  const { left, top, right, bottom } = pointsBounds(outline);
  const step = Math.max(right - left, bottom - top) / STEPS;
  const [columns, rows] = [Math.ceil((right - left) / step) + 1, Math.ceil((bottom - top) / step) + 1];
  const grid = Array.from({ length: columns * rows }, (_, i) => ({
    x: left + step * (i % columns),
    y: top + step * Math.floor(i / columns),
  }));
  const held = grid.map((p) => pointsHold(outline, p));
  const inner = grid.filter((_, i) => held[i]);
  const sights = [...outline, ...inner].map((p) => sightOf(joined, seen, p));
  if (sights.includes(undefined)) return undefined;
  const found = exactnessAt(joined, sights as Sight[]);
  if (found.includes(undefined)) return undefined;
  const values = found as readonly Mm[];
  const starts = names.map((_, i) => names.slice(0, i).reduce((sum, name) => sum + edges[name].length, 0));
  const worstOf = names.map((name, i) => {
    const start = starts[i] as number;
    return [name, Math.max(...values.slice(start, start + edges[name].length))];
  });
  const ofGrid = values.slice(outline.length).values();
  return {
    first: { x: left, y: top },
    step,
    columns,
    values: held.map((one) => (one ? ofGrid.next().value : undefined)),
    edges: Object.fromEntries(worstOf) as Record<Name, Mm>,
    worst: Math.max(...values),
  };
}

function sightOf(
  { views }: Joined,
  seen: readonly { readonly place: Point; readonly shot: number }[],
  p: Point,
): Sight | undefined {
  const shot = seen.toSorted((a, b) => distance(a.place, p) - distance(b.place, p))[0]?.shot;
  const view = shot === undefined ? undefined : views[shot];
  const at = view && viewToPicture(view, p);
  return at && shot !== undefined ? { shot, at } : undefined;
}
