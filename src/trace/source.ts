import type { Blocks } from '../block';
import type { Mm } from '../length';
import { type Phrase, say } from '../words';
import { blocksFromTrace, refuseBroken, type TracedPair } from './marks';
import { type NumbersPair, pairOfNumbers, withDarts } from './numbers';
import { type PaperAllowances, pairNet, pairTrued, type TruedPair, type Truing } from './truing';

/** How blocks whose lines somebody brought along came in: on a drawing, or on photographs. */
export const TRACED_SOURCES = ['drawn', 'photographed'] as const;

/** Where a pair of blocks comes from: drafted from the body, or brought along by one of the other roads. */
export const BLOCK_SOURCES = ['drafted', ...TRACED_SOURCES, 'numbers'] as const;
export type BlockSource = (typeof BLOCK_SOURCES)[number];

/** The ease of blocks all round, where somebody knows it: it tells what body they are for, and moves no line. */
export interface BlocksEase {
  readonly hipEase?: Mm;
  readonly waistEase?: Mm;
}

/** What is done to brought blocks before they are used, by whatever road they came; what was brought stays as it was. */
export interface BroughtChoices extends BlocksEase {
  /** What of them is allowance, and taken off. */
  readonly allowances?: PaperAllowances;
  /** What of the pair is trued, in the order in which it was chosen. */
  readonly trued?: readonly Truing[];
}

/** Blocks whose lines somebody brought along, as a project keeps them. */
export interface TracedBlocks extends TracedPair, BroughtChoices {
  readonly source: (typeof TRACED_SOURCES)[number];
}

/** Blocks that somebody measured on their paper: the table itself is kept, and the lines are drawn from it. */
export interface NumberedBlocks extends NumbersPair, BroughtChoices {
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
 * The lines of a pair, net and trued as somebody chose, and what its two blocks differ by.
 *
 * @throws Refusal where the lines or numbers are no pair of blocks, or hold less than is to be taken off
 */
export function broughtTrued(block: BroughtBlocks): TruedPair {
  const lines = block.source === 'numbers' ? pairOfNumbers(block) : block;
  refuseBroken(lines);
  const { allowances = {}, trued = [] } = block;
  if (trued.length === 0 && Object.keys(allowances).length === 0) return pairTrued(lines, []);
  const key = JSON.stringify(block);
  if (last?.key !== key) last = { key, made: pairTrued(pairNet(lines, allowances), trued) };
  return last.made;
}

/** The pair that was trued last: while anything else of a project is changed, its blocks stay the same. */
let last: { readonly key: string; readonly made: TruedPair } | undefined;

/**
 * The pair of blocks that somebody brought.
 *
 * @param bodyRise of the body, from which the blocks' rise ease is told
 * @throws Refusal where their lines or numbers are no pair of blocks
 */
export function blocksBrought(block: BroughtBlocks, bodyRise: Mm): Blocks {
  const { front, back } = broughtTrued(block).pair;
  const blocks = blocksFromTrace(front, back, bodyRise);
  return block.source === 'numbers' ? withDarts(blocks, block) : blocks;
}

/** How a source is said in a list of what was chosen. */
export const SOURCE_NAMES: Readonly<Record<BlockSource, Phrase>> = {
  drafted: say`drafted from the body`,
  drawn: say`your own, from a drawing`,
  photographed: say`your own, from a photograph`,
  numbers: say`your own, by its numbers`,
};
