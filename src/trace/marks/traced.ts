import type { Block, BlockEdge, Blocks } from '../../block';
import { curveMap, distance, outlineEdge, type Point, pathEnd, pathLength, pathStart } from '../../plane';
import { mm, own, type Phrase, type Problem, Refusal, say } from '../../words';
import { BLOCK_EDGES, pointOf, type TracedBlock, type TracedPair, tracedEdge, tracedOutline } from './traced-block';

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
  refuseBroken({ front, back });
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

/**
 * Refuses lines that are no blocks.
 *
 * @throws Refusal naming each edge that is missing or doesn't meet its neighbour, and levels off the block
 */
export function refuseBroken({ front, back }: TracedPair): void {
  const problems = [...traceProblems('block.front', front), ...traceProblems('block.back', back)];
  if (problems.length > 0) throw new Refusal(problems);
}

const crotchPointOf = (block: Block): Point => pathStart(outlineEdge(block.edges, 'inseam').curves);

/** One block: loose ends closed, its centre on its own side, its waist at the side at level 0. */
function blockFromTrace(part: 'front' | 'back', traced: TracedBlock): Block {
  const outline = tracedOutline(traced);
  const side = pathEnd(outlineEdge(outline, 'side').curves);
  const crotch = pathStart(outlineEdge(outline, 'inseam').curves);
  const mirror = crotch.x > side.x === (part === 'front') ? 1 : -1;
  const place = (p: Point): Point => ({ x: mirror * (p.x - side.x), y: p.y - side.y });
  const edges = outline.map((edge) => ({
    name: edge.name,
    curves: edge.curves.map((curve) => curveMap(curve, place)),
  }));
  const [top, bottom] = traced.grainline.map((end) => place(pointOf(end))) as [Point, Point];
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
    const end = pathEnd(tracedEdge(traced, before));
    const start = pathStart(tracedEdge(traced, name));
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
  const [waist, hem] = [pathStart(tracedEdge(traced, 'waist')), pathStart(tracedEdge(traced, 'hem'))];
  const short = BLOCK_EDGES.filter((name) => pathLength(tracedEdge(traced, name)) < LOOSE_ENDS).map((name) =>
    problem(`edges.${name}`, traced.edges[name], say`is too short to be an edge.`),
  );
  const level = (where: 'hipLevel' | 'kneeLevel', value: number | undefined) =>
    value === undefined || (value > waist.y && value < hem.y)
      ? []
      : [problem(where, value, say`must lie between the waist, ${mm(waist.y)}, and the hem, ${mm(hem.y)}.`)];
  return [...short, ...level('hipLevel', traced.hipLevel), ...level('kneeLevel', traced.kneeLevel)];
}
