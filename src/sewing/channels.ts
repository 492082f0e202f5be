import type { Mm } from '../length';
import { mm, number, type Phrase, say } from '../words';
import { sewingFacts } from './facts';
import type { Garment } from './garment';

/** Left open at centre back to thread elastic. @source practice */
export const LEFT_OPEN: Mm = 50;
/** A folded edge lies this far beyond the stitching that holds it. @source practice */
export const BEYOND_STITCHING: Mm = 2;

/** How much of an edge is tucked under, so that its fold lies just beyond the stitching. */
export const tuckedUnder = (beyond: Mm): Mm => Math.max(0, beyond - BEYOND_STITCHING);

/** The channel stitching between rows, or between elastic and cord; empty where there is one channel. */
export function channelTold({ finished: { heights } }: Garment, open: boolean): readonly Phrase[] {
  const lines = heights.channels.slice(1);
  const [first] = lines;
  if (!first) return [];
  return [lines.length === 1 ? oneLineTold(first.from, open) : linesTold(lines.length, first.from, open)];
}

const oneLineTold = (above: Mm, open: boolean): Phrase =>
  open
    ? say`Stitch the line between the two channels, ${mm(above)} above the first stitching, and leave ${mm(LEFT_OPEN)} of it open behind, too, where elastic comes above it.`
    : say`Stitch the line between the two channels, ${mm(above)} above the first stitching.`;

const linesTold = (lines: number, apart: Mm, open: boolean): Phrase =>
  open
    ? say`Stitch the ${number(lines, 0)} lines between the channels, ${mm(apart)} apart, and leave ${mm(LEFT_OPEN)} of each open behind, too.`
    : say`Stitch the ${number(lines, 0)} lines between the channels, ${mm(apart)} apart.`;

/** Seam allowances inside a channel are held down, so that the pin slides past them. */
export const allowancesHeld = (seams: Phrase): Phrase =>
  say`Where the ${seams} will lie inside the casing, press their allowances to one side and stitch them down, from the raw edge to below the stitching line, so that the safety pin does not catch on them.`;

/** The same of seams that were pressed before, open or to one side. */
export const pressedAllowancesHeld = (seams: Phrase): Phrase =>
  say`Where the ${seams} will lie inside the casing, stitch the allowances down as they are pressed, from the raw edge to below the stitching line, so that the safety pin does not catch on them.`;

/** Length of one round of stitching for each channel. */
export const channelLength = (g: Garment): number =>
  sewingFacts(g).waistRound * Math.max(1, g.finished.heights.channels.length);
