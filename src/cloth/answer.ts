import type { Mm } from '../length';
import { amount, mm, type Phrase, say } from '../words';
import { layOn } from './lay';
import type { LayPiece } from './lay-piece';
import { LAYOUT_WORDS } from './layout-words';
import type { Lay, LayAnswer, LayCloth, Layout } from './types';

/** The layouts, the one that is quickest to cut first: a fold gives both legs at one cut. */
const LAYOUTS = ['foldedLengthwise', 'foldedCrosswise', 'single'] as const satisfies readonly Layout[];

/** Folded cloth is cut once instead of twice; that is worth this much of it. @source practice */
const WORTH_A_FOLD: Mm = 50;

/**
 * The layouts that these pieces may be cut in. Two layers give mirrored pairs: what is cut for one side only lies on a
 * single one, right side up.
 */
const layoutsFor = (pieces: readonly LayPiece[]): readonly Layout[] =>
  pieces.some(({ oneHanded }) => oneHanded) ? ['single'] : LAYOUTS;

/**
 * The lay on one width: in the layout that was chosen, or in the best one, which is the shortest or, where it costs
 * little more, the one that is quicker to cut.
 *
 * @param pieces made ready to be laid; at least one
 * @param cloth as it is bought
 * @param wanted a layout, or `best`; a single layer is taken where a piece is cut for one side only
 */
export function layAnswer(pieces: readonly LayPiece[], cloth: LayCloth, wanted: Layout | 'best'): LayAnswer {
  const chosen = wanted === 'best' || layoutsFor(pieces).includes(wanted) ? wanted : 'single';
  const best = chosen === 'best' ? bestOf(pieces, cloth) : undefined;
  if (best) return { fits: true, lay: best };
  // Where nothing fits, a single layer is the roomiest to speak of.
  const tried = chosen === 'best' ? 'single' : chosen;
  const found = layOn(pieces, cloth, tried);
  if (found.fits) return found;
  const { widest, room, widthWanted } = found;
  return {
    fits: false,
    layout: tried,
    width: cloth.width,
    widest: { piece: widest.piece.ref, width: Math.min(...widest.ways.map((way) => widest.piece.shape(way).width)) },
    room,
    widthWanted,
    instead: insteadOf(pieces, cloth, tried, widthWanted),
  };
}

/** The layout to take; none where nothing fits. */
function bestOf(pieces: readonly LayPiece[], cloth: LayCloth): Lay | undefined {
  const lays = laysOf(pieces, cloth, layoutsFor(pieces));
  const shortest = Math.min(...lays.map(({ lengthNeeded }) => lengthNeeded));
  return lays.find(({ lengthNeeded }) => lengthNeeded <= shortest + WORTH_A_FOLD);
}

const laysOf = (pieces: readonly LayPiece[], cloth: LayCloth, layouts: readonly Layout[]): readonly Lay[] =>
  layouts.flatMap((layout) => {
    const found = layOn(pieces, cloth, layout);
    return found.fits ? [found.lay] : [];
  });

/** What would fit where a layout does not: other layouts of the same cloth, and a wider cloth. */
function insteadOf(pieces: readonly LayPiece[], cloth: LayCloth, layout: Layout, widthWanted: Mm): readonly Phrase[] {
  const others = laysOf(
    pieces,
    cloth,
    layoutsFor(pieces).filter((other) => other !== layout),
  );
  return [
    ...others.map((lay) => say`${LAYOUT_WORDS[lay.layout]}, ${amount(lay.toBuy)} of this width`),
    say`${LAYOUT_WORDS[layout]}, a cloth at least ${mm(widthWanted)} wide`,
  ];
}
