import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { add, flattenCurves, type Point, pathStart, turned } from '../../plane';
import {
  BLOCK_EDGES,
  edgeThroughMarks,
  exactMap,
  type Flat,
  movedOnto,
  type TracedBlock,
  tracedEdge,
  viewToPlane,
} from '../../trace';
import { flatsOfWork, marksOnPaper, placesOf } from './flat';
import type { Part, PhotoWork } from './work';

/** How far off a block may be in 95 of 100 cases: at places all over it, where its tracing has them, and at worst on each edge. */
export interface ExactSpots {
  readonly spots: readonly { readonly at: Point; readonly off: Mm }[];
  readonly edges: Readonly<Record<BlockEdge, Mm>>;
}

/** Of the front and the back; undefined of one of which a part can't be seen. */
export type ExactPair = Readonly<Record<Part, ExactSpots | undefined>>;

/** An edge may leave its polyline by so much: far less than it may be off. */
const CHORD: Mm = 1;

/**
 * The map of how exact a block is that was marked whole.
 *
 * @param traced the same block, traced
 * @returns undefined where a part of it can't be seen
 */
export function exactSpots(work: PhotoWork, part: Part, traced: TracedBlock): ExactSpots | undefined {
  // The floor as the joining left it: what is told of its exactness lies there.
  const flats = flatsOfWork(work).map(
    (flat) => flat && { ...flat, view: flat.joined.views[flat.shot] as Flat['view'] },
  );
  const seen = placesOf(work[part]).flatMap(({ shot, at }) => {
    const flat = flats[shot];
    const place = flat && viewToPlane(flat.view, at);
    return place ? [{ place, shot: flat.shot }] : [];
  });
  const joined = flats[work[part].shot]?.joined;
  if (!joined || seen.length === 0) return undefined;
  const marks = marksOnPaper(work[part], flats);
  const edges = BLOCK_EDGES.map((name) => edgeThroughMarks(marks, name) ?? []);
  if (edges.some((curves) => curves.length === 0)) return undefined;
  const lines = Object.fromEntries(BLOCK_EDGES.map((name, i) => [name, flattenCurves(edges[i] ?? [], CHORD)]));
  const map = exactMap(joined, lines as Readonly<Record<BlockEdge, readonly Point[]>>, seen);
  if (!map) return undefined;
  const laid = movedOnto(
    edges.map(pathStart),
    BLOCK_EDGES.map((name) => pathStart(tracedEdge(traced, name))),
  );
  const spots = map.values.flatMap((off, i) => {
    if (off === undefined) return [];
    const at = {
      x: map.first.x + map.step * (i % map.columns),
      y: map.first.y + map.step * Math.floor(i / map.columns),
    };
    return [{ at: add(turned(at, { x: 0, y: 0 }, laid.turn), laid.at), off }];
  });
  return { spots, edges: map.edges };
}
