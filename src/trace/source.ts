import type { Blocks } from '../block';
import type { Mm } from '../length';
import { type Phrase, say } from '../words';
import { blocksFromTrace, type TracedPair } from './marks';

/** How blocks whose lines somebody brought along came in: on a drawing, or on photographs. */
export const TRACED_SOURCES = ['drawn', 'photographed'] as const;

/** Where a pair of blocks comes from: drafted from the body, or brought along by one of the other roads. */
export const BLOCK_SOURCES = ['drafted', ...TRACED_SOURCES] as const;
export type BlockSource = (typeof BLOCK_SOURCES)[number];

/** Blocks that somebody brought along, as a project keeps them. */
export interface BroughtBlocks extends TracedPair {
  readonly source: (typeof TRACED_SOURCES)[number];
}

/** The one question that later rooms ask of a source: blocks that were brought are used as they are. */
export const isBrought = <Drafted extends { readonly source: 'drafted' }>(
  block: Drafted | BroughtBlocks,
): block is BroughtBlocks => block.source !== 'drafted';

/**
 * The pair of blocks as it was brought.
 *
 * @param bodyRise of the body, from which the blocks' rise ease is told
 * @throws Refusal where their lines are no pair of blocks
 */
export const blocksBrought = ({ front, back }: BroughtBlocks, bodyRise: Mm): Blocks =>
  blocksFromTrace(front, back, bodyRise);

/** How a source is said in a list of what was chosen. */
export const SOURCE_NAMES: Readonly<Record<BlockSource, Phrase>> = {
  drafted: say`drafted from the body`,
  drawn: say`your own, from a drawing`,
  photographed: say`your own, from a photograph`,
};
