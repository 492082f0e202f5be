import {
  capitalsOfPt,
  drawingInk,
  INK,
  type Ink,
  inkNear,
  type LineStyle,
  type PieceDrawing,
  ptOfCapitals,
} from '../../drawing';
import { type Box, boxGrown, boxRound, type Point, pathThrough, point } from '../../plane';
import { clearPlaces, partsInOrder, type SheetPlan, sheetCell, type Tip, tipBox } from '../../sheets';
import { frameAt } from '../pen/page-frame';
import type { PageMap, Pen } from '../pen/pen';

const CELL: LineStyle = { width: 0.15, colour: INK.join, dash: [] };
/** Where a small piece is printed, and where it belongs. */
const TIP: LineStyle = { width: 0.25, colour: INK.sign, dash: [1.2, 0.8] };
const OUTLINE: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
/** The labels' capitals, in parts of a cell's shorter side: tried from the largest down, until no line runs through them. */
const LABEL_SHARES = [0.3, 0.25, 0.2, 0.16] as const;
const LARGEST_CAPITALS = 7;
/** White round a label, on the paper. */
const CLEAR = 0.5;
/** The figure of the order of taping, in the upper left corner of its cell. */
const ORDER_PT = 8;
const ORDER_AWAY = 0.7;
/** How far from a small piece its label may stand, on the paper. */
const TIP_REACH = 9;
/** How finely white is looked for, on the paper. */
const FINE = 0.4;

/** What is drawn on the map so far, for words to keep off it. */
interface MapGround {
  readonly map: PageMap;
  readonly scale: number;
  readonly ink: Ink;
  /** The small pieces where they are printed, and the words that stand there. */
  readonly taken: readonly Box[];
}

/**
 * The map of the sheets: every printed sheet as a box with its label, the pieces' cut lines over them, and where there
 * are several sheets, each one's figure in the order of taping. A small piece is shown where it is printed and where it
 * belongs.
 *
 * @param lit labels of the sheets that stand out in grey
 */
export function drawMap(
  pen: Pen,
  plan: SheetPlan,
  drawings: readonly PieceDrawing[],
  whole: Box,
  lit: readonly string[] = [],
): void {
  const parts = partsInOrder(plan);
  const all = boxRound(parts.map(sheetCell));
  const tips = plan.sheets.flatMap((sheet) => sheet.tips);
  const room = tips.length > 0 ? boxGrown(whole, -TIP_REACH) : whole;
  const scale = Math.min(
    (room.right - room.left) / (all.right - all.left),
    (room.bottom - room.top) / (all.bottom - all.top),
  );
  const spare = room.right - room.left - (all.right - all.left) * scale;
  const { map } = frameAt(room.left + spare / 2, room.top, all, { x: scale, y: scale });
  for (const part of parts) {
    const box = sheetCell(part);
    if (lit.includes(part.label)) pen.fill(pathThrough(...corners(box)), map, INK.frame);
  }
  for (const part of parts) drawBox(pen, sheetCell(part), map, CELL);
  for (const path of drawings.flatMap((drawing) => drawing.paths)) {
    if (path.stroke === 'cut') pen.stroke(path.curves, map, OUTLINE, { closed: true });
    if (path.stroke === 'fold') pen.stroke(path.curves, map, CELL);
  }
  const drawn = drawingInk(drawings);
  const ink = { ...drawn, lines: drawn.lines.filter(({ stroke }) => stroke === 'cut' || stroke === 'fold') };
  let ground: MapGround = { map, scale, ink, taken: tips.map(tipBox) };
  for (const tip of tips) {
    drawBox(pen, tipBox(tip), map, TIP);
    drawBox(pen, tip.window, map, TIP);
    const order = parts.findIndex(({ label }) => label === tip.label) + 1;
    ground = { ...ground, taken: [...ground.taken, ...drawTipLabels(pen, tip, order, ground)] };
  }
  for (const [i, part] of parts.entries()) {
    if (tips.some(({ label }) => label === part.label)) continue;
    const box = sheetCell(part);
    const order = parts.length > 1 ? [drawOrder(pen, i + 1, box, ground)] : [];
    drawLabel(pen, part.label, box, { ...ground, taken: [...ground.taken, ...order] });
  }
}

function drawBox(pen: Pen, box: Box, map: PageMap, style: LineStyle): void {
  const [from, to] = [map(point(box.left, box.top)), map(point(box.right, box.bottom))];
  pen.frame(boxGrown({ left: from.x, top: from.y, right: to.x, bottom: to.y }, -style.width), style);
}

/** A sheet's label: as large as no line runs through it, as near to the middle as there is white. */
function drawLabel(pen: Pen, label: string, box: Box, { map, scale, ink, taken }: MapGround): void {
  const clear = clearPlaces(box, inkNear(ink, box), taken, scale, FINE);
  const side = Math.min(box.right - box.left, box.bottom - box.top) * scale;
  const middle = boxMiddle(box);
  const sizes = LABEL_SHARES.map((share) => ptOfCapitals(Math.min(LARGEST_CAPITALS, side * share)));
  const found = sizes.flatMap((pt) => {
    const place = clear((pen.widthOf(label, pt) + CLEAR) / scale, (capitalsOfPt(pt) + CLEAR) / scale, middle);
    return place ? [{ pt, at: boxMiddle(place) }] : [];
  });
  const { pt, at } = found[0] ?? { pt: sizes.at(-1) as number, at: middle };
  const { x, y } = map(at);
  pen.words(label, point(x, y + capitalsOfPt(pt) / 2), { pt, colour: INK.words, align: 'middle' });
}

/** A small piece's label beside where it is printed and, with its figure, where it belongs; returns what they cover. */
function drawTipLabels(pen: Pen, tip: Tip, order: number, { map, scale, ink, taken }: MapGround): readonly Box[] {
  const reach = TIP_REACH / scale;
  const covered: Box[] = [];
  for (const [box, text] of [
    [tipBox(tip), tip.label],
    [tip.window, `${order} ${tip.label}`],
  ] as const) {
    const room = boxGrown(box, reach);
    const clear = clearPlaces(room, inkNear(ink, room), [...taken, tip.window, ...covered], scale, FINE);
    const size = { width: pen.widthOf(text, ORDER_PT) + CLEAR, height: capitalsOfPt(ORDER_PT) + CLEAR };
    const place = clear(size.width / scale, size.height / scale, boxMiddle(box)) ?? box;
    const { x, y } = map(boxMiddle(place));
    const down = capitalsOfPt(ORDER_PT) / 2;
    pen.words(text, point(x, y + down), { pt: ORDER_PT, colour: INK.words, align: 'middle' });
    covered.push(place);
  }
  return covered;
}

const boxMiddle = ({ left, top, right, bottom }: Box): Point => point((left + right) / 2, (top + bottom) / 2);

/** A sheet's figure in the order of taping, in the corner of its cell; returns what it covers. */
function drawOrder(pen: Pen, order: number, { left, top }: Box, { map, scale }: MapGround): Box {
  const [text, capitals] = [`${order}`, capitalsOfPt(ORDER_PT)];
  const { x, y } = map(point(left, top));
  pen.words(text, point(x + ORDER_AWAY, y + ORDER_AWAY + capitals), { pt: ORDER_PT, colour: INK.mark });
  const right = left + (pen.widthOf(text, ORDER_PT) + 2 * ORDER_AWAY) / scale;
  return { left, top, right, bottom: top + (capitals + 2 * ORDER_AWAY) / scale };
}

const corners = ({ left, top, right, bottom }: Box): readonly Point[] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];
