import { drawingInk, INK, type LineStyle, type PieceDrawing, type WidthOf } from '../../drawing';
import { type Box, boxGrown, boxRound, type Point, pathThrough, point } from '../../plane';
import { partsInOrder, type SheetPlan, sheetCell, tipBox } from '../../sheets';
import { frameAt } from '../pen/page-frame';
import type { PageMap, Pen } from '../pen/pen';
import type { MapShown } from './first-words';
import { drawMapWords, mapWords, TIP_REACH } from './map-words';

const CELL: LineStyle = { width: 0.15, colour: INK.join, dash: [] };
/** Where a small piece is printed, and where it belongs. */
const TIP: LineStyle = { width: 0.25, colour: INK.sign, dash: [1.2, 0.8] };
const OUTLINE: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };

/** A map with its words in their places, to be drawn with them or without. */
export interface PlacedMap extends MapShown {
  /** @param lit labels of the sheets that stand out in grey */
  readonly draw: (pen: Pen, worded: boolean, lit: readonly string[]) => void;
}

/** A map's height by its width. */
export function mapRatio(plan: SheetPlan): number {
  const { left, right, top, bottom } = mapBox(plan);
  return (bottom - top) / (right - left);
}

/**
 * The map of the sheets: every printed sheet as a box with its label, the pieces' cut lines over them, and where there
 * are several sheets, each one's figure in the order of taping. A small piece is shown where it is printed and where it
 * belongs. Where the sheets are too small on it for labels and figures, labels alone are there, and as many as find room.
 *
 * @param place on the page
 */
export function placedMap(plan: SheetPlan, drawings: readonly PieceDrawing[], place: Box, widthOf: WidthOf): PlacedMap {
  const parts = partsInOrder(plan);
  const all = mapBox(plan);
  const tips = plan.sheets.flatMap((sheet) => sheet.tips);
  const room = tips.length > 0 ? boxGrown(place, -TIP_REACH) : place;
  const scale = Math.min(
    (room.right - room.left) / (all.right - all.left),
    (room.bottom - room.top) / (all.bottom - all.top),
  );
  const spare = room.right - room.left - (all.right - all.left) * scale;
  const { map } = frameAt(room.left + spare / 2, room.top, all, { x: scale, y: scale });
  const { lines } = drawingInk(drawings);
  const drawn = [
    ...lines.filter(({ stroke }) => stroke === 'cut' || stroke === 'fold'),
    ...parts.map(sheetCell).map((box) => ({ points: closed(corners(box)), bounds: box })),
  ];
  const { words, ordered, whole } = mapWords({ parts, tips, drawn, scale, widthOf });
  const draw: PlacedMap['draw'] = (pen, worded, lit) => {
    for (const part of parts) {
      if (lit.includes(part.label)) pen.fill(pathThrough(...corners(sheetCell(part))), map, INK.frame);
    }
    for (const part of parts) drawBox(pen, sheetCell(part), map, CELL);
    for (const path of drawings.flatMap((drawing) => drawing.paths)) {
      if (path.stroke === 'cut') pen.stroke(path.curves, map, OUTLINE, { closed: true });
      if (path.stroke === 'fold') pen.stroke(path.curves, map, CELL);
    }
    for (const box of tips.flatMap((tip) => [tipBox(tip), tip.window])) drawBox(pen, box, map, TIP);
    if (worded) drawMapWords(pen, words, map);
  };
  return { ordered, whole, draw };
}

const mapBox = (plan: SheetPlan): Box => boxRound(partsInOrder(plan).map(sheetCell));

function drawBox(pen: Pen, box: Box, map: PageMap, style: LineStyle): void {
  const [from, to] = [map(point(box.left, box.top)), map(point(box.right, box.bottom))];
  pen.frame(boxGrown({ left: from.x, top: from.y, right: to.x, bottom: to.y }, -style.width), style);
}

const corners = ({ left, top, right, bottom }: Box): readonly Point[] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];

const closed = (points: readonly Point[]): readonly Point[] => [...points, ...points.slice(0, 1)];
