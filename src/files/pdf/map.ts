import { capitalsOfPt, drawingInk, INK, inkNear, type LineStyle, type PieceDrawing, ptOfCapitals } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxGrown, boxRound, type Point, pathThrough, point } from '../../plane';
import { clearPlaces, partsInOrder, type SheetPlan, sheetCell } from '../../sheets';
import { frameAt } from '../pen/page-frame';
import type { Pen } from '../pen/pen';

const CELL: LineStyle = { width: 0.15, colour: INK.join, dash: [] };
const OUTLINE: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
/** The labels' capitals, in parts of a cell's shorter side: tried from the largest down, until no line runs through them. */
const LABEL_SHARES = [0.3, 0.25, 0.2, 0.16] as const;
const LARGEST_CAPITALS = 7;
/** White round a label, on the paper. */
const CLEAR = 0.5;
/** The figure of the order of taping, in the upper left corner of its cell. */
const ORDER_PT = 8;
const ORDER_AWAY = 0.7;
/** How finely white is looked for, on the paper. */
const FINE = 0.4;

/**
 * The map of the sheets: every printed sheet as a box with its label, the pieces' cut lines over them, and where there
 * are several sheets, each one's figure in the order of taping.
 *
 * @param lit labels of the sheets that stand out in grey
 */
export function drawMap(
  pen: Pen,
  plan: SheetPlan,
  drawings: readonly PieceDrawing[],
  room: Box,
  lit: readonly string[] = [],
): void {
  const cells = partsInOrder(plan).map((part) => ({ label: part.label, box: sheetCell(part) }));
  const all = boxRound(cells.map(({ box }) => box));
  const scale = Math.min(
    (room.right - room.left) / (all.right - all.left),
    (room.bottom - room.top) / (all.bottom - all.top),
  );
  const spare = room.right - room.left - (all.right - all.left) * scale;
  const { map } = frameAt(room.left + spare / 2, room.top, all, { x: scale, y: scale });
  for (const { box } of cells.filter(({ label }) => lit.includes(label)))
    pen.fill(pathThrough(...corners(box)), map, INK.frame);
  for (const { box } of cells) {
    const from = map(point(box.left, box.top));
    const to = map(point(box.right, box.bottom));
    pen.frame(boxGrown({ left: from.x, top: from.y, right: to.x, bottom: to.y }, -CELL.width), CELL);
  }
  for (const path of drawings.flatMap((drawing) => drawing.paths)) {
    if (path.stroke === 'cut') pen.stroke(path.curves, map, OUTLINE, { closed: true });
    if (path.stroke === 'fold') pen.stroke(path.curves, map, CELL);
  }
  const whole = drawingInk(drawings);
  const ink = { ...whole, lines: whole.lines.filter(({ stroke }) => stroke === 'cut' || stroke === 'fold') };
  for (const [i, { label, box }] of cells.entries()) {
    const order = cells.length > 1 ? [drawOrder(pen, i + 1, map(point(box.left, box.top)))] : [];
    const taken = order.map(({ width, height }) => ({
      left: box.left,
      top: box.top,
      right: box.left + width / scale,
      bottom: box.top + height / scale,
    }));
    const clear = clearPlaces(box, inkNear(ink, box), taken, scale, FINE);
    const side = Math.min(box.right - box.left, box.bottom - box.top) * scale;
    const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
    const sizes = LABEL_SHARES.map((share) => ptOfCapitals(Math.min(LARGEST_CAPITALS, side * share)));
    const found = sizes.flatMap((pt) => {
      const place = clear((pen.widthOf(label, pt) + CLEAR) / scale, (capitalsOfPt(pt) + CLEAR) / scale, middle);
      return place ? [{ pt, at: point((place.left + place.right) / 2, (place.top + place.bottom) / 2) }] : [];
    });
    const { pt, at } = found[0] ?? { pt: sizes.at(-1) as number, at: middle };
    const { x, y } = map(at);
    pen.words(label, point(x, y + capitalsOfPt(pt) / 2), { pt, colour: INK.words, align: 'middle' });
  }
}

/** A sheet's figure in the order of taping, in the corner of its cell; returns what it covers. */
function drawOrder(pen: Pen, order: number, corner: Point): { readonly width: Mm; readonly height: Mm } {
  const [text, capitals] = [`${order}`, capitalsOfPt(ORDER_PT)];
  pen.words(text, point(corner.x + ORDER_AWAY, corner.y + ORDER_AWAY + capitals), { pt: ORDER_PT, colour: INK.mark });
  return { width: pen.widthOf(text, ORDER_PT) + 2 * ORDER_AWAY, height: capitals + 2 * ORDER_AWAY };
}

const corners = ({ left, top, right, bottom }: Box): readonly Point[] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];
