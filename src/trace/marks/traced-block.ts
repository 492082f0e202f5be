import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { type Curve, type Outline, type Point, pathEnd } from '../../plane';

/** A point in a file: x and y in millimetres, y down. */
export type Pair = readonly [number, number];
/** A cubic curve in a file: start, two handles, end. */
export type CurvePoints = readonly [Pair, Pair, Pair, Pair];

/** A block that somebody brought along, as it stands in a project file: at true size, lying any way round. */
export interface TracedBlock {
  /** The named edges, each from the side round by the centre: waist, centre, crotch, inseam, hem, side. */
  readonly edges: Readonly<Record<BlockEdge, readonly CurvePoints[]>>;
  /** Two points on the grainline, the upper one first. */
  readonly grainline: readonly [Pair, Pair];
  /** The level (y) of the fullest hip. */
  readonly hipLevel: number;
  /** The level of the knee; by default 2 in above the middle of the inseam. */
  readonly kneeLevel?: number | undefined;
}

/** Both blocks of somebody's own. */
export interface TracedPair {
  readonly front: TracedBlock;
  readonly back: TracedBlock;
}

/** The same done to both blocks. */
export const mapPair = (
  { front, back }: TracedPair,
  change: (block: TracedBlock, part: keyof TracedPair) => TracedBlock,
): TracedPair => ({ front: change(front, 'front'), back: change(back, 'back') });

export const BLOCK_EDGES: readonly BlockEdge[] = ['waist', 'centre', 'crotch', 'inseam', 'hem', 'side'];

/** Blocks with as many curves an edge are drafted within a second; one every few millimetres is finer than any pencil. @source practice */
export const MOST_EDGE_CURVES = 250;

/** No point of a block lies farther from where its waist begins, to any side, millimetres. @source practice: no block is half as large */
export const FARTHEST: Mm = 5000;

export const pointOf = ([x, y]: Pair): Point => ({ x, y });
export const pairOf = ({ x, y }: Point): Pair => [x, y];
const curveOf = ([a, b, c, d]: CurvePoints): Curve => [pointOf(a), pointOf(b), pointOf(c), pointOf(d)];
const curvePointsOf = ([a, b, c, d]: Curve): CurvePoints => [pairOf(a), pairOf(b), pairOf(c), pairOf(d)];

/** An edge of a brought block as curves of the plane. */
export const tracedEdge = ({ edges }: TracedBlock, name: BlockEdge): readonly Curve[] => edges[name].map(curveOf);

/** All edges of a brought block as curves of the plane, every one starting where the one before it ended. */
export const tracedOutline = (traced: TracedBlock): Outline<BlockEdge> =>
  closedUp(BLOCK_EDGES.map((name) => ({ name, curves: tracedEdge(traced, name) })));

/** Edges as a project keeps them. */
export const tracedEdges = (outline: Outline<BlockEdge>): TracedBlock['edges'] =>
  Object.fromEntries<readonly CurvePoints[]>(
    outline.map(({ name, curves }) => [name, curves.map(curvePointsOf)]),
  ) as TracedBlock['edges'];

function closedUp(edges: Outline<BlockEdge>): Outline<BlockEdge> {
  return edges.map((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length];
    const [first, ...rest] = edge.curves;
    if (!first || !before || before.curves.length === 0) return edge;
    return { name: edge.name, curves: [[pathEnd(before.curves), first[1], first[2], first[3]], ...rest] };
  });
}
