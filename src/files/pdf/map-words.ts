import { capitalsOfPt, INK, type InkLine, ptOfCapitals, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxGrown, type Point, pathThrough, point } from '../../plane';
import { clearPlaces, type SheetPart, sheetCell, type Tip, tipBox } from '../../sheets';
import type { PageMap, Pen } from '../pen/pen';
import { TYPE } from '../pen/type-scale';

/** A label or a figure of the map. */
interface MapWord {
  readonly text: string;
  readonly pt: number;
  readonly colour: string;
  /** What it covers, on the drawing; its letters stand in the middle. */
  readonly box: Box;
  /** Whether it found no white and lies on a line. */
  readonly onLine: boolean;
}

/** What the words of the map are placed by. */
interface MapGround {
  /** The sheets and small pieces in the order of taping. */
  readonly parts: readonly SheetPart[];
  readonly tips: readonly Tip[];
  /** Every line of the map as a polyline, on the drawing. */
  readonly drawn: readonly Pick<InkLine, 'points' | 'bounds'>[];
  /** Millimetres of paper for a millimetre of drawing. */
  readonly scale: number;
  readonly widthOf: WidthOf;
}

/** The labels' capitals, in parts of a cell's shorter side: tried from the largest down, until no line runs through them. */
const LABEL_SHARES = [0.3, 0.25, 0.2, 0.16] as const;
const LARGEST_CAPITALS: Mm = 7;
/** Figures, small pieces' labels, and the smallest labels of sheets. */
const LEAST_PT = TYPE.small.pt;
/** White round a label, on the paper. */
const CLEAR: Mm = 0.5;
/** How far from a small piece its label may stand, on the paper. */
export const TIP_REACH: Mm = 9;
/** How finely white is looked for, on the paper. */
const FINE: Mm = 0.4;

/**
 * The map's words, off its lines and off each other as far as there is white. The figures of the order of taping are left
 * out where without them more labels stand clear: the order is in a list, too.
 */
export function mapWords(ground: MapGround): { readonly words: readonly MapWord[]; readonly ordered: boolean } {
  const bare = placedWords(ground, false);
  if (ground.parts.length === 1) return { words: bare, ordered: false };
  const full = placedWords(ground, true);
  const ordered = onLines(full) <= onLines(bare);
  return { words: ordered ? full : bare, ordered };
}

const onLines = (words: readonly MapWord[]): number => words.filter(({ onLine }) => onLine).length;

/** Figures first, each in the corner of its sheet, then labels: the small pieces', which have less room, before the sheets'. */
function placedWords({ parts, tips, drawn, scale, widthOf }: MapGround, ordered: boolean): readonly MapWord[] {
  const words: MapWord[] = [];
  const small = tips.flatMap((tip) => [tipBox(tip), tip.window]);
  const place = (text: string, sizes: readonly number[], room: Box, near: Point, colour: string) => {
    const lines = drawn.filter(({ bounds }) => boxesMeet(bounds, room));
    const clear = clearPlaces(room, { lines }, [...small, ...words.map(({ box }) => box)], scale, FINE);
    const sized = sizes.map((pt) => ({
      pt,
      width: (widthOf(text, pt) + CLEAR) / scale,
      height: (capitalsOfPt(pt) + CLEAR) / scale,
    }));
    const found = sized.flatMap(({ pt, width, height }) => {
      const box = clear(width, height, near);
      return box ? [{ pt, box }] : [];
    })[0];
    const { pt, width, height } = sized.at(-1) as (typeof sized)[number];
    const box = found?.box ?? boxAround(near, width, height);
    words.push({ text, pt: found?.pt ?? pt, colour, box, onLine: !found });
  };
  const sheets = parts.flatMap((part, i) =>
    tips.some(({ label }) => label === part.label)
      ? []
      : [{ label: part.label, order: `${i + 1}`, cell: sheetCell(part) }],
  );
  if (ordered) {
    for (const { order, cell } of sheets) {
      const corner = point(
        cell.left + widthOf(order, LEAST_PT) / 2 / scale + (2 * FINE) / scale,
        cell.top + capitalsOfPt(LEAST_PT) / 2 / scale + (2 * FINE) / scale,
      );
      place(order, [LEAST_PT], cell, corner, INK.mark);
    }
  }
  for (const tip of tips) {
    const order = parts.findIndex(({ label }) => label === tip.label) + 1;
    for (const [box, text] of [
      [tipBox(tip), tip.label],
      [tip.window, ordered ? `${order} ${tip.label}` : tip.label],
    ] as const)
      place(text, [LEAST_PT], boxGrown(box, TIP_REACH / scale), boxMiddle(box), INK.words);
  }
  for (const { label, cell } of sheets) {
    const side = Math.min(cell.right - cell.left, cell.bottom - cell.top) * scale;
    const sizes = LABEL_SHARES.map((share) => ptOfCapitals(Math.min(LARGEST_CAPITALS, side * share)));
    place(label, [...sizes.filter((pt) => pt > LEAST_PT), LEAST_PT], cell, boxMiddle(cell), INK.words);
  }
  return words;
}

/** Draws them; what lies on a line has white behind it. */
export function drawMapWords(pen: Pen, words: readonly MapWord[], map: PageMap): void {
  for (const { box, onLine } of words) {
    const { left, top, right, bottom } = box;
    if (onLine)
      pen.fill(pathThrough(point(left, top), point(right, top), point(right, bottom), point(left, bottom)), map, WHITE);
  }
  for (const { text, pt, colour, box } of words) {
    const { x, y } = map(boxMiddle(box));
    pen.words(text, point(x, y + capitalsOfPt(pt) / 2), { pt, colour, align: 'middle' });
  }
}

const WHITE = '#FFFFFF';

const boxMiddle = ({ left, top, right, bottom }: Box): Point => point((left + right) / 2, (top + bottom) / 2);

const boxAround = ({ x, y }: Point, width: Mm, height: Mm): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});
