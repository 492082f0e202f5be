import type { Mm } from '../length';
import { solveBetween } from '../plane';
import { type Centre, centresOf } from './centres';
import type { JoinedBlocks } from './join';

/** How far a centre leans inwards between the crotch curve and the waist edge, as a ruler on the drawing reads it. */
export const centreLean = (
  part: 'front' | 'back',
  { curveEnd, waistPoint }: Pick<Centre, 'curveEnd' | 'waistPoint'>,
) => (part === 'front' ? curveEnd.x - waistPoint.x : waistPoint.x - curveEnd.x);

/** What centre back can lean: as the block does, and as far as straightening brings it. */
export interface LeanRange {
  readonly asBlock: Mm;
  readonly upright: Mm;
}

const backLean = (joined: JoinedBlocks, raiseWaist: Mm, straighten: number): Mm =>
  centreLean('back', centresOf(joined, straighten, raiseWaist).back);

/**
 * Between what leans centre back can be set.
 *
 * @param joined the joined and spread blocks
 * @param raiseWaist how far the waist edge is raised
 */
export function leanRange(joined: JoinedBlocks, raiseWaist: Mm): LeanRange {
  return { asBlock: backLean(joined, raiseWaist, 0), upright: backLean(joined, raiseWaist, 1) };
}

/** A lean is set this exactly, millimetres: finer than any number shown. @source tolerance */
const EXACT = 1e-5;

/**
 * The straightening that leaves centre back a given lean.
 *
 * @param joined the joined and spread blocks
 * @param raiseWaist how far the waist edge is raised
 * @param lean the lean that is wanted, mm
 * @returns 0 as on the block … 1 upright; the nearer end where the lean can't be had
 */
export function straighteningFor(joined: JoinedBlocks, raiseWaist: Mm, lean: Mm): number {
  const { asBlock, upright } = leanRange(joined, raiseWaist);
  const [low, high] = [Math.min(asBlock, upright), Math.max(asBlock, upright)];
  if (lean <= low) return asBlock < upright ? 0 : 1;
  if (lean >= high) return asBlock < upright ? 1 : 0;
  return solveBetween((t) => backLean(joined, raiseWaist, t) - lean, 0, 1, EXACT);
}
