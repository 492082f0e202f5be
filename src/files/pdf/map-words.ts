import { capitalsOfPt, DESCENT, INK, type InkLine, LINE_TOP, mmOfPt, ptOfCapitals, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxGrown, type Point, point } from '../../plane';
import { clearPlaces, type SheetPart, sheetCell, type Tip, tipBox } from '../../sheets';
import type { PageMap, Pen } from '../pen/pen';
import { TYPE } from '../pen/type-scale';

/** A label or a figure of the map. */
interface MapWord {
  readonly text: string;
  readonly pt: number;
  readonly colour: string;
  /** A sheet's label, beside which those of small pieces are plain. */
  readonly bold?: true;
  /** Its line's box on the drawing, in the middle of which its capitals stand. */
  readonly box: Box;
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

/** The words of a map, and how many found no place. */
interface MapWords {
  readonly words: readonly MapWord[];
  readonly left: number;
}

/**
 * The map's words, off its lines and off each other. One that finds no white is left out; the figures of the order of taping
 * are, where without them more labels find some: the order is in a list, too.
 *
 * @returns `ordered`: whether the figures are there; `whole`: whether all labels are
 */
export function mapWords(ground: MapGround): {
  readonly words: readonly MapWord[];
  readonly ordered: boolean;
  readonly whole: boolean;
} {
  const bare = placedWords(ground, false);
  const full = ground.parts.length === 1 ? bare : placedWords(ground, true);
  const ordered = full !== bare && full.left <= bare.left;
  const { words, left } = ordered ? full : bare;
  return { words, ordered, whole: left === 0 };
}

/** Where a word may stand, and what of the small pieces it keeps off there. */
interface WordPlace {
  readonly room: Box;
  readonly off: readonly Box[];
}

/** Whether white is wanted for a whole line, at best, or for its capitals alone. */
const TRIES = [true, false] as const;

/** Figures first, each in the corner of its sheet, then labels: the small pieces', which have less room, before the sheets'. */
function placedWords({ parts, tips, drawn, scale, widthOf }: MapGround, ordered: boolean): MapWords {
  const words: MapWord[] = [];
  let left = 0;
  const small = tips.flatMap((tip) => [tipBox(tip), tip.window]);
  const firstPlace = (text: string, pts: readonly number[], places: readonly WordPlace[], near: Point) => {
    for (const line of TRIES)
      for (const { room, off } of places) {
        const lines = drawn.filter(({ bounds }) => boxesMeet(bounds, room));
        // Capitals keep as far from other words as their line would.
        const rise = line ? 0 : riseOf(Math.max(...pts)) / scale;
        const others = words.map(({ box }) => ({ ...box, top: box.top - rise, bottom: box.bottom + rise }));
        const white = clearPlaces(room, { lines }, scale, FINE)([...off, ...others]);
        for (const pt of pts) {
          const height = (line ? lineOf(pt) : capitalsOfPt(pt)) + CLEAR;
          const box = white((widthOf(text, pt) + CLEAR) / scale, height / scale, near);
          const more = line ? 0 : riseOf(pt) / scale;
          if (box) return { pt, box: { ...box, top: box.top - more, bottom: box.bottom + more } };
        }
      }
    return undefined;
  };
  const place = (
    text: string,
    pts: readonly number[],
    places: readonly WordPlace[],
    near: Point,
    style: Pick<MapWord, 'colour' | 'bold'>,
  ) => {
    const found = firstPlace(text, pts, places, near);
    if (found) words.push({ text, ...style, ...found });
    else left += 1;
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
      place(order, [LEAST_PT], [{ room: cell, off: small }], corner, { colour: INK.mark });
    }
  }
  for (const tip of tips) {
    const order = parts.findIndex(({ label }) => label === tip.label) + 1;
    for (const [box, text] of [
      [tipBox(tip), tip.label],
      [tip.window, ordered ? `${order} ${tip.label}` : tip.label],
    ] as const) {
      const inside = { room: boxGrown(box, -CLEAR / scale), off: small.filter((one) => one !== box) };
      const beside = { room: boxGrown(box, TIP_REACH / scale), off: small };
      place(text, [LEAST_PT], [inside, beside], boxMiddle(box), { colour: INK.words });
    }
  }
  for (const { label, cell } of sheets) {
    const side = Math.min(cell.right - cell.left, cell.bottom - cell.top) * scale;
    const pts = LABEL_SHARES.map((share) => ptOfCapitals(Math.min(LARGEST_CAPITALS, side * share)));
    const larger = pts.filter((pt) => pt > LEAST_PT);
    place(label, [...larger, LEAST_PT], [{ room: cell, off: small }], boxMiddle(cell), {
      colour: INK.words,
      bold: true,
    });
  }
  return { words, left };
}

/** The height of a line about the middle of its capitals, where readers take it to end. */
const lineOf = (pt: number): Mm =>
  2 * Math.max(LINE_TOP * mmOfPt(pt) - capitalsOfPt(pt) / 2, DESCENT * mmOfPt(pt) + capitalsOfPt(pt) / 2);

/** How much higher a line reaches than its capitals, and as much lower. */
const riseOf = (pt: number): Mm => (lineOf(pt) - capitalsOfPt(pt)) / 2;

export function drawMapWords(pen: Pen, words: readonly MapWord[], map: PageMap): void {
  for (const { text, pt, colour, bold, box } of words) {
    const { x, y } = map(boxMiddle(box));
    pen.words(text, point(x, y + capitalsOfPt(pt) / 2), { pt, colour, bold, align: 'middle' });
  }
}

const boxMiddle = ({ left, top, right, bottom }: Box): Point => point((left + right) / 2, (top + bottom) / 2);
