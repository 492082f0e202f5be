import { ANKLE_HEIGHT, type Blocks } from '../block';
import type { BlockTold, BlockToldKey, Estimate } from '../body';
import type { Mm } from '../length';
import { distance, edgeLength, outlineEdge } from '../plane';
import { Refusal, say } from '../words';
import { numbersOf } from './numbers';
import { type BlocksEase, type BroughtBlocks, blocksBrought, isBrought } from './source';

/** The ease that is taken for that of a block where nobody says another. @source practice, for fitted blocks: 2 in at the hip, 1 in at the waist */
export const USUAL_EASE = { hip: 50.8, waist: 25 } as const;
/** A fitted block's crotch line lies so far below the seat. @source *Measurements for Fitting Pants*, New Mexico State University Extension, C-209: ½ to 1 in */
const RISE_EASE: Mm = 19;
/** A block whose inseam is less than so many rises is cut short, and tells no inside leg. @source practice: a small child's is 1.8 of them, an adult's 2.5 to 3 */
const WHOLE_LEG = 1.6;

/** By how much the body of a block may differ from what it implies, standard deviation, millimetres: people cut with other eases. @source practice */
const SPREADS: Readonly<Record<BlockToldKey, Mm>> = {
  waistGirth: 20,
  hipGirth: 25,
  hipDepth: 10,
  bodyRise: 10,
  insideLeg: 25,
};

const SOURCE = say`your own blocks, less the ease that they have or are taken to have`;

/** What a pair of blocks says of its wearer, and the lengths of its own that nothing of a body follows from alone. */
export interface BlocksImplied {
  readonly body: BlockTold;
  /** From waist to waist through the crotch, and along the inseam, on the block itself. */
  readonly crotchLength: Mm;
  readonly inseam: Mm;
}

/**
 * What blocks imply about whoever they fit: their girths less the ease (the waist only by numbers, which tell the darts), their rise less what a crotch hangs free, their
 * inseam down to the ankle.
 *
 * @param blocks net
 * @param ease all round
 * @source practice
 */
export function blocksImplied(
  blocks: Blocks,
  { hipEase, waistEase, source }: BlocksEase & Partial<Pick<BroughtBlocks, 'source'>>,
): BlocksImplied {
  const parts = [blocks.front, blocks.back] as const;
  const edge = (name: 'waist' | 'centre' | 'crotch' | 'inseam') =>
    parts.map((block) => edgeLength(outlineEdge(block.edges, name)));
  const sum = (lengths: readonly Mm[]): Mm => lengths.reduce((a, b) => a + b, 0);
  const darts = sum(parts.flatMap((block) => block.darts.map(({ left, right }) => distance(left, right))));
  const [hip, waist] = [hipEase ?? USUAL_EASE.hip, waistEase ?? USUAL_EASE.waist];
  const rise = blocks.front.crotchLevel - RISE_EASE;
  const [inseam = 0] = edge('inseam');
  const whole = inseam >= WHOLE_LEG * rise;
  const told: Readonly<Partial<Record<BlockToldKey, Mm>>> = {
    // Lines don't say which of them are darts: a waist is only told where a table says what they take in.
    ...(source !== 'drawn' && source !== 'photographed' && { waistGirth: 2 * (sum(edge('waist')) - darts) - waist }),
    hipGirth: 2 * sum(parts.map((block) => numbersOf(block).hipWidth)) - hip,
    hipDepth: blocks.front.hipLevel,
    bodyRise: rise,
    ...(whole && { insideLeg: (inseam + RISE_EASE) / (1 - ANKLE_HEIGHT) }),
  };
  const estimate = (key: BlockToldKey, value: Mm): Estimate => ({
    key,
    value: Math.round(value),
    spread: SPREADS[key],
    from: [],
    source: SOURCE,
    basis: 'block',
  });
  return {
    body: Object.fromEntries(Object.entries(told).map(([key, value]) => [key, estimate(key as BlockToldKey, value)])),
    crotchLength: sum(edge('centre')) + sum(edge('crotch')),
    inseam,
  };
}

/** What brought blocks tell of their wearer; nothing where they are refused, which is told at them, or where blocks are drafted. */
export function toldByBlocks<Drafted extends { readonly source: 'drafted' }>(
  block: Drafted | BroughtBlocks,
): BlockTold {
  if (!isBrought(block)) return {};
  try {
    return blocksImplied(blocksBrought(block, 0), block).body;
  } catch (error) {
    if (error instanceof Refusal) return {};
    throw error;
  }
}
