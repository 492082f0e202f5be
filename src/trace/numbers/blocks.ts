import type { Block, Blocks, Dart } from '../../block';
import type { Mm } from '../../length';
import { leftOf, moved, outlineEdge, pathAt, scale } from '../../plane';
import { mm, type Problem, Refusal, say } from '../../words';
import { pairOf, type TracedBlock, type TracedPair, tracedEdges } from '../marks';
import { type Contradiction, contradictionsOf } from './contradictions';
import { shapeFitted } from './fitted';
import { type DrawnBlock, shapeDrawn } from './shape';
import type { BlockNumbers, DartNumbers, NumbersPair, TapeKey } from './table';
import { usualPlaces } from './usual';

/** A block as its numbers draw it, and what is to be told of them. */
export interface BlockByNumbers {
  readonly drawn: DrawnBlock;
  /** What the drawing rests on and was not measured: taken by the proportions of a usual block from what was. */
  readonly estimated: readonly TapeKey[];
  readonly contradictions: readonly Contradiction[];
}

/**
 * The block that a table of tape measurements draws: cubics through them, each number as it was measured, what was not
 * measured by the usual proportions of this block.
 *
 * @param part which one
 * @param pair what was measured of both; where one lacks a number the other's tells more than a usual block
 * @throws Refusal where the numbers leave no block to draw
 */
function blockByNumbers(part: 'front' | 'back', pair: NumbersPair): BlockByNumbers {
  const numbers = pair[part];
  const problems = tableProblems(part, numbers);
  if (problems.length > 0) throw new Refusal(problems);
  const fitted = shapeFitted(part, numbers, usualPlaces(part, pair));
  const contradictions = contradictionsOf(part, pair, fitted);
  const gross = contradictions.filter(({ given, others }) => Math.abs(given - others) > DRAWN_WITH);
  if (gross.length > 0) throw new Refusal(gross.map(contradictionProblem));
  return {
    drawn: shapeDrawn(part, fitted.shape),
    estimated: estimatedOf(numbers),
    contradictions,
  };
}

/** Numbers that contradict each other by more draw no block that anybody has: one of them is a slip of the pen. @source practice */
const DRAWN_WITH: Mm = 40;

const contradictionProblem = ({ part, key, given, others }: Contradiction): Problem => ({
  field: `block.${part}.${key}`,
  value: given,
  phrase: say`can’t be ${mm(given)}, for the other numbers make it ${mm(others)}: measure it again, and what it hangs together with.`,
});

/** Both blocks by their numbers. */
export interface PairByNumbers {
  readonly front: BlockByNumbers;
  readonly back: BlockByNumbers;
}

/** The pair that was drawn last: while anything else of a project is changed, its table stays the same. */
let last: { readonly table: string; readonly drawn: PairByNumbers } | undefined;

/** The same for both blocks. @throws Refusal likewise */
export function pairByNumbers({ front, back }: NumbersPair): PairByNumbers {
  const table = JSON.stringify([front, back]);
  if (last?.table === table) return last.drawn;
  const pair = { front, back };
  const drawn = { front: blockByNumbers('front', pair), back: blockByNumbers('back', pair) };
  last = { table, drawn };
  return drawn;
}

/**
 * The lines of the pair that two tables draw, as those of any blocks that were brought.
 *
 * @throws Refusal where the numbers leave no blocks to draw
 */
export function pairOfNumbers(pair: NumbersPair): TracedPair {
  const { front, back } = pairByNumbers(pair);
  return { front: asTraced(front.drawn, pair.front), back: asTraced(back.drawn, pair.back) };
}

/** The blocks with the darts of their tables drawn on their waists. */
export function withDarts(blocks: Blocks, pair: NumbersPair): Blocks {
  const drawn = (block: Block): Block => ({
    ...block,
    darts: (pair[block.part].darts ?? []).map((dart) => dartOn(block, dart)),
  });
  return { ...blocks, front: drawn(blocks.front), back: drawn(blocks.back) };
}

/** The drawn block as one that was brought along; without a knee line where none was measured. */
const asTraced = (
  { edges, grainline: [top, bottom], hipLevel, kneeLevel }: DrawnBlock,
  numbers: BlockNumbers,
): TracedBlock => ({
  edges: tracedEdges(edges),
  grainline: [pairOf(top), pairOf(bottom)],
  hipLevel,
  ...(hasKnee(numbers) && { kneeLevel }),
});

const hasKnee = (numbers: BlockNumbers): boolean => numbers.crotchToKnee !== undefined;

/** A dart square to the waist edge at its place. */
function dartOn({ part, edges }: Block, { intake, length, fromSide }: DartNumbers): Dart {
  const waist = outlineEdge(edges, 'waist').curves;
  const { at, way } = pathAt(waist, fromSide);
  // Of the two directions square to the edge the one that goes down.
  const inwards = part === 'front' ? scale(leftOf(way), -1) : leftOf(way);
  const [left, right] = [pathAt(waist, fromSide - intake / 2).at, pathAt(waist, fromSide + intake / 2).at];
  return { left, right, tip: moved(at, inwards, length) };
}

/** What each place follows from where a length that depends on it alone was measured. */
const FOLLOWS: Readonly<Partial<Record<TapeKey, readonly TapeKey[]>>> = {
  crotchToHem: ['inseam', 'side'],
  waistWidth: ['waistEdge'],
  fork: ['crotchWidth'],
};
/** A drawing rests on these; how the grainline lies is a matter of balance, and a knee need not be there. */
const RESTS_ON = [
  'waistToHip',
  'hipToCrotch',
  'crotchToHem',
  'waistWidth',
  'hipWidth',
  'hemWidth',
  'fork',
  'centreRise',
  'centreLean',
  'curveStart',
] as const;

const estimatedOf = (numbers: BlockNumbers): readonly TapeKey[] => {
  const knee = hasKnee(numbers) ? (['kneeWidth'] as const) : [];
  return [...RESTS_ON, ...knee].filter((key) =>
    [key, ...(FOLLOWS[key] ?? [])].every((one) => numbers[one] === undefined),
  );
};

/** Levels that lie in the wrong order leave no block to draw. */
function tableProblems(part: 'front' | 'back', numbers: BlockNumbers): readonly Problem[] {
  const { crotchToKnee: knee, crotchToHem: hem, curveStart, waistToHip, hipToCrotch, waistEdge, darts = [] } = numbers;
  const problem = (key: TapeKey | 'darts', value: unknown, phrase: Problem['phrase']): Problem => ({
    field: `block.${part}.${key}`,
    value,
    phrase,
  });
  const problems: Problem[] = [];
  if (knee !== undefined && hem !== undefined && knee >= hem)
    problems.push(
      problem(
        'crotchToKnee',
        knee,
        say`must be less than the ${mm(hem)} to the hem; leave it out where the block ends above the knee.`,
      ),
    );
  if (curveStart !== undefined && waistToHip !== undefined && hipToCrotch !== undefined) {
    const depth = waistToHip + hipToCrotch;
    if (curveStart >= depth)
      problems.push(
        problem('curveStart', curveStart, say`must be less than the ${mm(depth)} from the crotch line to the waist.`),
      );
  }
  const taken = darts.reduce((sum, { intake }) => sum + intake, 0);
  if (waistEdge !== undefined && taken >= waistEdge)
    problems.push(problem('darts', darts, say`must take in less than the ${mm(waistEdge)} of the whole waist edge.`));
  return problems;
}
