import { SELVEDGE } from '../check';
import type { Mm } from '../length';
import type { Lay, LayCloth, Layout } from './types';

/** The bend of a fold lies round: cuts through both layers keep this far from it. @source practice */
const BEND: Mm = 5;
/** Each end of the cloth is straightened along a thread before anything is laid. @source practice */
const STRAIGHTENED: Mm = 25;

/** The table as the cloth lies on it: where may be cut, and how its length counts. */
export interface CuttingTable {
  readonly layout: Layout;
  /** Of the cloth, flat and washed. */
  readonly clothWidth: Mm;
  readonly width: Mm;
  /** The left end of what may be cut, and how wide that is. */
  readonly left: Mm;
  readonly room: Mm;
  /** Its upper end. */
  readonly top: Mm;
}

/** What the wash leaves of a cloth's width; all of it where the pieces themselves are drawn larger. */
const washedWidth = ({ width, washFirst, shrinkWidth }: LayCloth): Mm =>
  washFirst ? width * (1 - shrinkWidth) : width;

/** What lies between the selvedges, flat and washed. */
export const cuttableWidth = (cloth: LayCloth): Mm => washedWidth(cloth) - 2 * SELVEDGE;

/** What a repeat takes of the width: stripes are brought onto each other before the cloth is cut. */
function matchingAcross({ repeatAcross }: LayCloth, layout: Layout): Mm {
  // A fold lies on the middle of a stripe or between two: at most a quarter of a repeat from the middle of the cloth.
  // Two legs beside each other are moved by at most half a repeat until both halves of it look alike.
  return layout === 'foldedLengthwise' ? repeatAcross / 4 : layout === 'single' ? repeatAcross / 2 : 0;
}

/** Both selvedges, the fold and the matching: what of the table's width is not cut. */
function lostAcross(cloth: LayCloth, layout: Layout): Mm {
  const edges = layout === 'foldedLengthwise' ? BEND + SELVEDGE : 2 * SELVEDGE;
  return edges + matchingAcross(cloth, layout);
}

export function tableFor(cloth: LayCloth, layout: Layout): CuttingTable {
  const clothWidth = washedWidth(cloth);
  const width = layout === 'foldedLengthwise' ? clothWidth / 2 : clothWidth;
  return {
    layout,
    clothWidth,
    width,
    left: layout === 'foldedLengthwise' ? BEND : SELVEDGE,
    room: width - lostAcross(cloth, layout),
    top: layout === 'foldedCrosswise' ? BEND : 0,
  };
}

/** The least width of cloth, as it is bought, on which so much can be cut. */
export function clothWidthFor(room: Mm, cloth: LayCloth, layout: Layout): Mm {
  const lies = (room + lostAcross(cloth, layout)) * (layout === 'foldedLengthwise' ? 2 : 1);
  return cloth.washFirst ? lies / (1 - cloth.shrinkWidth) : lies;
}

/** Layers that the length of a table counts. */
export const layersAlong = (layout: Layout): 1 | 2 => (layout === 'foldedCrosswise' ? 2 : 1);

/**
 * How much to buy, to the millimetre: the length of the lay, one repeat more to begin where the check wants it, both
 * ends to straighten; and where the cloth is washed first, what it loses.
 *
 * @param lengthNeeded of the cloth as it lies, all layers
 * @param cloth shrinkage and repeat
 */
export function lengthToBuy(lengthNeeded: Lay['lengthNeeded'], cloth: LayCloth): Mm {
  const lies = lengthNeeded + cloth.repeat + 2 * STRAIGHTENED;
  return cloth.washFirst ? lies / (1 - cloth.shrinkLength) : lies;
}

/** What straightening takes in all. */
export const ENDS: Mm = 2 * STRAIGHTENED;
