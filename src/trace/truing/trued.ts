import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import {
  add,
  type Curve,
  curveMap,
  outlineEdge,
  type Point,
  pathLength,
  pathReverse,
  pathStartWay,
  scale,
  solveBetween,
  TOLERANCE,
} from '../../plane';
import { mapPair, type TracedBlock, type TracedPair, tracedEdges, tracedOutline } from '../marks';
import { crotchTrued } from './crotch-run';
import { type PairDifference, pairDifferences, type Truing } from './differences';
import { runEndMoved } from './end-moved';
import { downOf, sideAtHip } from './pair-measures';

/** A pair as it was trued, what each truing made even, and what differs still. */
export interface TruedPair {
  readonly pair: TracedPair;
  /** What was trued, with the difference that was there then. */
  readonly made: readonly PairDifference[];
  readonly left: readonly PairDifference[];
}

/**
 * The pair with what somebody chose to true made even, one after the other: of every difference each block takes its
 * half, but for the inseams, where the back’s crotch point is moved, as cutters do.
 *
 * @param pair net
 * @param chosen what is to be trued, in the order in which it was chosen
 * @source practice
 */
export function pairTrued(pair: TracedPair, chosen: readonly Truing[]): TruedPair {
  let now = pair;
  const made: PairDifference[] = [];
  for (const truing of chosen) {
    const found = pairDifferences(now).find((one) => one.truing === truing);
    // What is too much to true is left as it is, and told.
    if (!found || found.kind === 'left') continue;
    made.push(found);
    now = TRUED[truing](now, found);
  }
  return { pair: now, made, left: pairDifferences(now) };
}

const TRUED: Readonly<Record<Truing, (pair: TracedPair, difference: PairDifference) => TracedPair>> = {
  hips: hipsLevelled,
  waist: waistsTrued,
  hem: hemsLevelled,
  inseams: inseamsTrued,
  crotch: crotchTrued,
};

/** Half of a difference, taken from the one that has more and given to the other. */
const halfOf = (part: keyof TracedPair, by: number): number => (part === 'front' ? by : -by) / 2;

function hipsLevelled(pair: TracedPair, { by }: PairDifference): TracedPair {
  return mapPair(pair, (block, part) => ({ ...block, hipLevel: block.hipLevel + halfOf(part, by) }));
}

/** The waist’s end at the side goes up or down until the side is as long above the hip line, front and back. */
function waistsTrued(pair: TracedPair, { by }: PairDifference): TracedPair {
  return mapPair(pair, (block, part) => {
    const parts = sideAtHip(block);
    if (!parts) return block;
    const wanted = pathLength(parts.above) + halfOf(part, by);
    const raised = (up: Mm) => runEndMoved(parts.above, scale(downOf(block), -up));
    const up = solveBetween((mm) => pathLength(raised(mm)) - wanted, -REACH, REACH, TOLERANCE.solved);
    return withEdges(block, {
      side: [...parts.below, ...raised(up)],
      waist: startMoved(edge(block, 'waist'), scale(downOf(block), -up)),
    });
  });
}

/** The whole hem goes up or down, side and inseam with it. */
function hemsLevelled(pair: TracedPair, { by }: PairDifference): TracedPair {
  return mapPair(pair, (block, part) => {
    const down = scale(downOf(block), halfOf(part, by));
    return withEdges(block, {
      inseam: runEndMoved(edge(block, 'inseam'), down),
      hem: edge(block, 'hem').map((curve) => curveMap(curve, (p) => add(p, down))),
      side: startMoved(edge(block, 'side'), down),
    });
  });
}

/** The back’s crotch point is moved along its inseam until both inseams are as long. */
function inseamsTrued(pair: TracedPair, { front: wanted }: PairDifference): TracedPair {
  const { back } = pair;
  const inseam = edge(back, 'inseam');
  const way = pathStartWay(inseam);
  const longer = (by: Mm) => startMoved(inseam, scale(way, -by));
  const by = solveBetween((mm) => pathLength(longer(mm)) - wanted, -REACH, REACH, TOLERANCE.solved);
  const crotch = runEndMoved(edge(back, 'crotch'), scale(way, -by));
  return { ...pair, back: withEdges(back, { crotch, inseam: longer(by) }) };
}

/** Farther no end is moved: twice what may be trued. @source tolerance */
const REACH: Mm = 50;

const edge = (block: TracedBlock, name: BlockEdge): readonly Curve[] => outlineEdge(tracedOutline(block), name).curves;

const startMoved = (run: readonly Curve[], by: Point): readonly Curve[] =>
  pathReverse(runEndMoved(pathReverse(run), by));

const withEdges = (
  block: TracedBlock,
  changed: Readonly<Partial<Record<BlockEdge, readonly Curve[]>>>,
): TracedBlock => ({
  ...block,
  edges: tracedEdges(tracedOutline(block).map(({ name, curves }) => ({ name, curves: changed[name] ?? curves }))),
});
