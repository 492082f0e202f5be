import { type SeamKind, seamParts } from '../edges';
import type { Mm } from '../length';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Garment } from './garment';
import type { FinishedHow, SewingStep } from './step';
import { edgeStitch, seamStitch, sergesSeams } from './stitches';
import { PER_METRE } from './time';

/**
 * What a seam is sewn of, and how its raw edges are finished: if nothing else is said, both layers in one go by the serger,
 * or sewn and then overlocked as one.
 */
export function seamSewn(
  g: Garment,
  kind: SeamKind,
  finished: FinishedHow = sergesSeams(g) ? 'serged' : 'together',
): Pick<SewingStep, 'sews' | 'finishes'> {
  const parts = seamParts(g.pieces, kind);
  return {
    sews: parts.map((one) => ({ ...one, how: 'seamed' })),
    finishes: parts.map((one) => ({ ...one, how: finished })),
  };
}

/** How far from the edge a seam is sewn; where no allowance is drawn, as far as it was cut outside the line. */
export const fromEdge = (allowance: Mm): Phrase =>
  allowance > 0 ? say`${mm(allowance)} from the edge` : say`as far from the edge as you cut outside the line`;

/** How a seam is sewn and its edges finished, in one or two sentences. */
export const seamTold = (g: Garment, allowance: Mm): readonly Phrase[] =>
  sergesSeams(g)
    ? [
        say`Overlock along the stitching line, ${fromEdge(allowance)}; the knife trims off the rest. Take pins out before they reach it.`,
      ]
    : [stitchingTold(g, allowance), edgesTold(g)];

/** How it is sewn, where that is not done by the serger. */
const stitchingTold = (g: Garment, allowance: Mm): Phrase =>
  g.cloth.kind === 'knit'
    ? say`Sew ${fromEdge(allowance)} with a narrow zigzag, which gives with the cloth. Don’t pull: let the machine feed.`
    : say`Sew ${fromEdge(allowance)}; backstitch at both ends.`;

/** How its raw edges are finished then, both as one. */
export function edgesTold(g: Garment): Phrase {
  const serger = g.machine === 'serger';
  if (g.cloth.kind === 'knit')
    return serger
      ? say`Overlock both edges together beside the stitching, and trim off what is left outside it.`
      : say`Zigzag both edges together beside the stitching, and trim off what is left outside it.`;
  return serger ? say`Overlock both edges together.` : say`Zigzag both edges together.`;
}

/** How seams that lie inside are pressed: open, or to one side where the serger joined both edges. */
export function seamPressed(g: Garment, seams: 1 | 2 = 1): Phrase {
  if (seams === 1) return sergesSeams(g) ? say`Press the seam to one side.` : say`Press the seam open.`;
  return sergesSeams(g) ? say`Press both seams to one side each.` : say`Press both seams open.`;
}

/** What is done to the allowances of a seam at an edge that is turned: nothing where the serger's knife did it. */
export const trimTold = (g: Garment): Phrase =>
  sergesSeams(g) ? UNSAID : say`Trim the allowances to half and clip them where the edge curves.`;

/** The settings of a seam and its edges. */
export const seamSettings = (g: Garment) => (sergesSeams(g) ? seamStitch(g) : [...seamStitch(g), ...edgeStitch(g)]);

/** Minutes a metre of such a seam. */
export const seamPace = (g: Garment): number => (sergesSeams(g) ? PER_METRE.serged : PER_METRE.seam);
