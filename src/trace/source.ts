import type { Blocks } from '../block';
import type { Mm } from '../length';
import { type Phrase, say } from '../words';
import { blocksFromTrace, type TracedPair } from './marks';
import { blocksFromNumbers, type NumbersPair } from './numbers';

/** How blocks whose lines somebody brought along came in: on a drawing, or on photographs. */
export const TRACED_SOURCES = ['drawn', 'photographed'] as const;

/** Where a pair of blocks comes from: drafted from the body, or brought along by one of the other roads. */
export const BLOCK_SOURCES = ['drafted', ...TRACED_SOURCES, 'numbers'] as const;
export type BlockSource = (typeof BLOCK_SOURCES)[number];

/** Blocks whose lines somebody brought along, as a project keeps them. */
export interface TracedBlocks extends TracedPair {
  readonly source: (typeof TRACED_SOURCES)[number];
}

/** Blocks that somebody measured on their paper: the table itself is kept, and the lines are drawn from it. */
export interface NumberedBlocks extends NumbersPair {
  readonly source: 'numbers';
}

/** Blocks by numbers before the first of them was measured. */
export const NOTHING_MEASURED: NumberedBlocks = { source: 'numbers', front: {}, back: {} };

/** Blocks that somebody brought along, by whatever road. */
export type BroughtBlocks = TracedBlocks | NumberedBlocks;

/** The one question that later rooms ask of a source: blocks that were brought are used as they are. */
export const isBrought = <Drafted extends { readonly source: 'drafted' }>(
  block: Drafted | BroughtBlocks,
): block is BroughtBlocks => block.source !== 'drafted';

/**
 * The pair of blocks as it was brought.
 *
 * @param bodyRise of the body, from which the blocks' rise ease is told
 * @throws Refusal where their lines or numbers are no pair of blocks
 */
export const blocksBrought = (block: BroughtBlocks, bodyRise: Mm): Blocks =>
  block.source === 'numbers' ? blocksFromNumbers(block, bodyRise) : blocksFromTrace(block.front, block.back, bodyRise);

/** How a source is said in a list of what was chosen. */
export const SOURCE_NAMES: Readonly<Record<BlockSource, Phrase>> = {
  drafted: say`drafted from the body`,
  drawn: say`your own, from a drawing`,
  photographed: say`your own, from a photograph`,
  numbers: say`your own, by its numbers`,
};
