import type { BlockEdge } from '../../block';
import type { Mm } from '../../length';
import { insetOutline } from '../../plane';
import { type Phrase, Refusal, say } from '../../words';
import { mapPair, type TracedBlock, type TracedPair, tracedEdges, tracedOutline } from '../marks';

/** The seams that may have an allowance on the paper: centre and crotch are one. */
export const PAPER_SEAMS = ['waist', 'crotch', 'inseam', 'hem', 'side'] as const;
export type PaperSeam = (typeof PAPER_SEAMS)[number];

/** What such an allowance is called. */
export const PAPER_SEAM_NAMES: Readonly<Record<PaperSeam, Phrase>> = {
  waist: say`On the paper, at the waist`,
  crotch: say`On the paper, at centre and crotch`,
  inseam: say`On the paper, at the inseam`,
  hem: say`On the paper, at the hem`,
  side: say`On the paper, at the side`,
};

/** How much of what was brought is allowance, seam by seam, millimetres; none where it is left out. */
export type PaperAllowances = Readonly<Partial<Record<PaperSeam, Mm>>>;

/** No seam or hem allowance on paper is wider. @source practice */
export const WIDEST_ON_PAPER: Mm = 100;

const seamOf = (edge: BlockEdge): PaperSeam => (edge === 'centre' ? 'crotch' : edge);

/**
 * The net pair: what was brought without the allowances that are on its paper.
 *
 * @param pair as it was brought
 * @throws Refusal where they are more than a block holds
 */
export const pairNet = (pair: TracedPair, allowances: PaperAllowances): TracedPair =>
  PAPER_SEAMS.every((seam) => !allowances[seam])
    ? pair
    : mapPair(pair, (block, part) => blockNet(block, part, allowances));

function blockNet(block: TracedBlock, part: keyof TracedPair, allowances: PaperAllowances): TracedBlock {
  const net = insetOutline(tracedOutline(block), (edge) => allowances[seamOf(edge)] ?? 0);
  if (net) return { ...block, edges: tracedEdges(net) };
  const widest = PAPER_SEAMS.reduce((a, b) => ((allowances[b] ?? 0) > (allowances[a] ?? 0) ? b : a));
  const phrase =
    part === 'front' ? say`is more than can be taken off the front.` : say`is more than can be taken off the back.`;
  throw new Refusal([{ field: `block.allowances.${widest}`, value: allowances[widest], phrase }]);
}
