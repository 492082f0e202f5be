import type { Block, BlockEdge, Blocks } from '../../block';
import type { Mm } from '../../length';
import {
  type Curve,
  curveMap,
  distance,
  type Outline,
  outlineEdge,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
} from '../../plane';
import { mm, own, type Phrase, type Problem, Refusal, say } from '../../words';

/** A point in a file: x and y in millimetres, y down. */
export type Pair = readonly [number, number];
/** A cubic curve in a file: start, two handles, end. */
export type CurvePoints = readonly [Pair, Pair, Pair, Pair];

/** A block that somebody brought along, as it stands in a project file: net, at true size, lying any way round. */
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

export const BLOCK_EDGES: readonly BlockEdge[] = ['waist', 'centre', 'crotch', 'inseam', 'hem', 'side'];

/** Blocks with as many curves an edge are drafted within a second; one every few millimetres is finer than any pencil. @source practice */
export const MOST_EDGE_CURVES = 250;

/** No point of a block lies farther from where its waist begins, to any side, millimetres. @source practice: no block is half as large */
export const FARTHEST: Mm = 5000;

/** Ends of neighbouring edges may lie this far apart on a tracing; they are drawn together. @source tolerance */
const LOOSE_ENDS = 1;
/** The knee lies 2 in above the middle of the inseam. @source *The Practical Designer*, 1911, lesson 82; *Dressmaking/Pants*, Wikibooks */
const KNEE_ABOVE_MIDDLE = 50.8;

/**
 * The pair of blocks from two tracings.
 *
 * @param front the front; where it lies mirrored, its centre is turned to its own side
 * @param back the back, likewise
 * @param bodyRise of the body, from which the block's rise ease is told
 * @throws Refusal naming each edge that is missing or doesn't meet its neighbour, and levels off the block
 */
export function blocksFromTrace(front: TracedBlock, back: TracedBlock, bodyRise: number): Blocks {
  const problems = [...traceProblems('block.front', front), ...traceProblems('block.back', back)];
  if (problems.length > 0) throw new Refusal(problems);
  const [frontBlock, backBlock] = [blockFromTrace('front', front), blockFromTrace('back', back)];
  const backShift = backBlock.hipLevel - frontBlock.hipLevel;
  const extension = (block: Block) =>
    Math.abs(crotchPointOf(block).x - pathEnd(outlineEdge(block.edges, 'centre').curves).x);
  return {
    front: frontBlock,
    back: backBlock,
    crotchFit: 0,
    crotchRest: 0,
    frontCrotchRest: 0,
    crotchWanted: undefined,
    backCrotchDrop: crotchPointOf(backBlock).y - backShift - crotchPointOf(frontBlock).y,
    backRaise: backShift - pathEnd(outlineEdge(backBlock.edges, 'waist').curves).y,
    riseEase: frontBlock.crotchLevel - bodyRise,
    extensionFront: extension(frontBlock),
    extensionBack: extension(backBlock),
    shapingLeft: 0,
  };
}

const crotchPointOf = (block: Block): Point => pathStart(outlineEdge(block.edges, 'inseam').curves);

/** One block: loose ends closed, its centre on its own side, its waist at the side at level 0. */
function blockFromTrace(part: 'front' | 'back', traced: TracedBlock): Block {
  const raw = BLOCK_EDGES.map((name) => ({ name, curves: traced.edges[name].map(curveOf) }));
  const side = pathEnd(outlineEdge(raw, 'side').curves);
  const crotch = pathStart(outlineEdge(raw, 'inseam').curves);
  const mirror = crotch.x > side.x === (part === 'front') ? 1 : -1;
  const place = (p: Point): Point => ({ x: mirror * (p.x - side.x), y: p.y - side.y });
  const edges = closedUp(raw).map((edge) => ({
    name: edge.name,
    curves: edge.curves.map((curve) => curveMap(curve, place)),
  }));
  const [top, bottom] = traced.grainline.map(([x, y]) => place({ x, y })) as [Point, Point];
  const inseam = outlineEdge(edges, 'inseam').curves;
  const [crotchLevel, hemLevel] = [pathStart(inseam).y, pathEnd(inseam).y];
  return {
    part,
    edges,
    grainline: [top, bottom],
    hipLevel: traced.hipLevel - side.y,
    crotchLevel,
    kneeLevel:
      traced.kneeLevel === undefined
        ? Math.max(crotchLevel, (crotchLevel + hemLevel) / 2 - KNEE_ABOVE_MIDDLE)
        : traced.kneeLevel - side.y,
    darts: [],
  };
}

const pointOf = ([x, y]: Pair): Point => ({ x, y });
const curveOf = ([a, b, c, d]: CurvePoints): Curve => [pointOf(a), pointOf(b), pointOf(c), pointOf(d)];

/** Every edge starts where the one before it ended. */
function closedUp(edges: Outline<BlockEdge>): Outline<BlockEdge> {
  return edges.map((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length];
    const [first, ...rest] = edge.curves;
    if (!first || !before) return edge;
    return { name: edge.name, curves: [[pathEnd(before.curves), first[1], first[2], first[3]], ...rest] };
  });
}

function traceProblems(field: string, traced: TracedBlock): readonly Problem[] {
  const problem = (where: string, value: unknown, phrase: Phrase): Problem => ({
    field: `${field}.${where}`,
    value,
    phrase,
  });
  const empty = BLOCK_EDGES.filter((name) => traced.edges[name].length === 0);
  if (empty.length > 0) return empty.map((name) => problem(`edges.${name}`, [], say`needs at least one curve.`));
  const loose = BLOCK_EDGES.flatMap((name, i) => {
    const before = BLOCK_EDGES[(i + BLOCK_EDGES.length - 1) % BLOCK_EDGES.length] as BlockEdge;
    const end = pathEnd(traced.edges[before].map(curveOf));
    const start = pathStart(traced.edges[name].map(curveOf));
    const gap = distance(end, start);
    return gap <= LOOSE_ENDS
      ? []
      : [
          problem(
            `edges.${name}`,
            traced.edges[name],
            say`must start where ${own(before)} ends; they are ${mm(gap)} apart.`,
          ),
        ];
  });
  if (loose.length > 0) return loose;
  const [waist, hem] = [pathStart(traced.edges.waist.map(curveOf)), pathStart(traced.edges.hem.map(curveOf))];
  const short = BLOCK_EDGES.filter((name) => pathLength(traced.edges[name].map(curveOf)) < LOOSE_ENDS).map((name) =>
    problem(`edges.${name}`, traced.edges[name], say`is too short to be an edge.`),
  );
  const level = (where: 'hipLevel' | 'kneeLevel', value: number | undefined) =>
    value === undefined || (value > waist.y && value < hem.y)
      ? []
      : [problem(where, value, say`must lie between the waist, ${mm(waist.y)}, and the hem, ${mm(hem.y)}.`)];
  return [...short, ...level('hipLevel', traced.hipLevel), ...level('kneeLevel', traced.kneeLevel)];
}
