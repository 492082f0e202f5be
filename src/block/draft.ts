import type { Body } from '../body';
import { type Curve, outlineEdge, pathLength, solveBetween, TOLERANCE } from '../plane';
import { backBlock, backInseam, frontBlock } from './construct';
import { type BlockOptions, type CrotchFit, type Proportions, proportionsOf, UNFITTED } from './proportions';
import type { Blocks } from './types';

/** The back crotch point is looked for so far above and below the front's: bounds of a search; a lesson's drop is 1 cm. @source tolerance */
const DROP_LIMITS = [-60, 90] as const;

/** Blocks and the proportions they were drawn by, for the working. */
export interface DraftedBlocks {
  readonly blocks: Blocks;
  readonly proportions: Proportions;
}

/**
 * Drafts the fitted front and back block, net.
 *
 * @param body the body
 * @param options eases and balance
 * @param crotchFit how a measured crotch length is met: it is found on a leg made of such blocks
 */
export function draftBlocks(body: Body, options: BlockOptions, crotchFit: CrotchFit = UNFITTED): DraftedBlocks {
  const proportions = proportionsOf(body, options, crotchFit);
  const front = frontBlock(proportions);
  const backCrotchDrop = dropFor(proportions, outlineEdge(front.edges, 'inseam').curves);
  const { backRaise, riseEase, extensionFront, extensionBack, shapingLeft } = proportions;
  return {
    proportions,
    blocks: {
      front,
      back: backBlock(proportions, backCrotchDrop),
      crotchFit: crotchFit.fit,
      crotchRest: 0,
      frontCrotchRest: 0,
      crotchWanted: body.crotchLength === undefined ? undefined : body.crotchLength + proportions.crotchEase,
      backCrotchDrop,
      backRaise,
      riseEase,
      extensionFront,
      extensionBack,
      shapingLeft,
    },
  };
}

/** How far the back's crotch point is dropped until its inseam is as long as the front's. */
function dropFor(proportions: Proportions, frontInseam: readonly Curve[]): number {
  const inseam = pathLength(frontInseam);
  return solveBetween((d) => pathLength(backInseam(proportions, d)) - inseam, ...DROP_LIMITS, TOLERANCE.solved);
}
