import { frontOfTwo } from './block';
import type { BlockReading } from './block-reading';
import type { Drawing, DrawnOutline } from './drawn';
import { outlinesOf } from './outlines';
import { outlineScaled, readingOf } from './reading';
import { isBlockSize, outlineReach, widestGap } from './size';

/** Which outline is the front and which the back, by their numbers. */
export interface PiecesPicked {
  readonly front: number;
  readonly back: number;
}

/** A drawing as it is shown to be picked from: its outlines in its own units. */
export interface DrawnSheet {
  readonly outlines: readonly DrawnOutline[];
  /** Millimetres in a unit, as the drawing tells. */
  readonly unit: number | undefined;
  /** What it may be where it doesn’t tell. */
  readonly likelyUnit: number;
  readonly unread: number;
  /** The only two outlines that look like blocks; undefined where there are fewer or more. */
  readonly picked: PiecesPicked | undefined;
}

/** Units that drawings are made in, millimetres: by how much each is used. @source SVG 2, chapter 8: absolute lengths */
export const DRAWING_UNITS = { mm: 1, cm: 10, in: 25.4, pt: 25.4 / 72, px: 25.4 / 96 } as const;

/** The outlines of a drawing, and which of them look like a front and a back. */
export function drawnSheet(drawing: Drawing): DrawnSheet {
  const outlines = outlinesOf(drawing, widestGap(drawing));
  const { unit, unread } = drawing;
  const largest = Math.max(0, ...outlines.map(outlineReach));
  const likelyUnit = unit ?? likeliestUnit(largest);
  const read = outlines.slice(0, MOST_READ).map((outline, i) => {
    const scaled = outlineScaled(outline, likelyUnit);
    return { i, scaled, reading: isBlockSize(outlineReach(scaled)) ? readingOf(scaled) : undefined };
  });
  const likely = read.flatMap(({ i, scaled, reading }) =>
    reading && cornersAreSure(reading) ? [{ i, scaled, reading }] : [],
  );
  const [one, other] = likely;
  const picked =
    one && other && likely.length === 2
      ? frontOfTwo([one.scaled, other.scaled], [one.reading, other.reading]).front === 0
        ? { front: one.i, back: other.i }
        : { front: other.i, back: one.i }
      : undefined;
  return { outlines, unit, likelyUnit, unread, picked };
}

/** A block of trousers is about as long as this, millimetres. @source practice */
const USUAL_REACH = 1000;

/** The unit in which a piece is most nearly as large as a block; millimetres where in none it could be one. */
function likeliestUnit(reach: number): number {
  const off = (unit: number) => Math.abs(Math.log((reach * unit) / USUAL_REACH));
  const able = Object.values(DRAWING_UNITS).filter((unit) => isBlockSize(reach * unit));
  return able.sort((a, b) => off(a) - off(b))[0] ?? DRAWING_UNITS.mm;
}

/** Blocks are among the largest pieces; of more outlines than this none is read before it is picked. @source practice */
const MOST_READ = 60;

const cornersAreSure = ({ places, doubts }: BlockReading): boolean =>
  Object.keys(places).length > 0 && [...doubts].every((one) => one === 'grain' || one === 'hip' || one === 'crotchTop');
