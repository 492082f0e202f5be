import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import { BEYOND_STITCHING, tuckedUnder } from './channels';
import type { Garment } from './garment';
import { edgeNamed } from './stitches';

/** An overlocked hem is stitched this far inside its edge. @source practice */
const INSIDE_OVERLOCKED: Mm = 4;

type Hemmed = Pick<Garment, 'hem' | 'finished' | 'machine'>;

/** What a knit's edge that was chosen to be turned under is better without; nothing of other cloth. @source practice */
export const knitTurnedOnce = ({ cloth }: Pick<Garment, 'cloth'>, under: Mm): readonly Phrase[] =>
  cloth.kind === 'knit' && under > 0
    ? [
        say`A knit doesn’t fray, and turned twice it makes a ridge. If the scrap shows one, cut the ${mm(under)} off, overlock or zigzag the edge, and turn it once.`,
      ]
    : [];

/** A casing's stitching must lie a whole channel from the fold; a plain hem's only near the edge. */
const isCasing = ({ finished }: Hemmed): boolean => finished.hemPlan.channel !== undefined;

/** How deep the turning lies on the leg, from its fold to the edge that is seen. */
export function turnedDepth({ finished: { hemPlan } }: Hemmed): Mm {
  const { depth, beyond, turnedUnder, channel } = hemPlan;
  return depth + (turnedUnder ? (channel ? BEYOND_STITCHING : 0) : beyond);
}

/** How much of the hem's edge is turned under. */
export const hemTucked = (g: Hemmed): Mm => (isCasing(g) ? tuckedUnder(g.hem.turnUnder) : g.hem.turnUnder);

/** From the fold to the stitching. */
export function hemStitchingAt(g: Hemmed): Mm {
  const { depth } = g.finished.hemPlan;
  if (isCasing(g)) return depth;
  return depth - (g.hem.turnUnder > 0 ? BEYOND_STITCHING : Math.min(INSIDE_OVERLOCKED, depth / 2));
}

/** How a turned hem or casing is folded. */
export function turningTold(g: Hemmed): readonly Phrase[] {
  const { hem, finished } = g;
  if (hem.turnUnder === 0)
    return [
      say`Turn the ${edgeNamed(g, false)} edge up to the wrong side in its crease, ${mm(turnedDepth(g))} deep, and pin.`,
      ...(isCasing(g)
        ? [say`The ${edgeNamed(g, false)} edge lies ${mm(finished.hemPlan.beyond)} beyond the stitching line.`]
        : []),
    ];
  return [
    say`Turn ${mm(hemTucked(g))} under, then ${mm(turnedDepth(g))} up, to the wrong side, in the creases, and pin.`,
    ...(isCasing(g) ? [say`The folded edge lies ${mm(BEYOND_STITCHING)} beyond the stitching line.`] : []),
  ];
}
