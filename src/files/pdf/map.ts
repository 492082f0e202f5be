import {
  capitalsOfPt,
  drawingInk,
  INK,
  type Ink,
  inkCrosses,
  inkNear,
  type LineStyle,
  type PieceDrawing,
  ptOfCapitals,
} from '../../drawing';
import { type Box, boxGrown, boxRound, type Point, pathThrough, point } from '../../plane';
import { planParts, type SheetPlan, sheetCell } from '../../sheets';
import { frameAt } from '../pen/page-frame';
import type { Pen } from '../pen/pen';

const CELL: LineStyle = { width: 0.15, colour: INK.join, dash: [] };
const OUTLINE: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
/** The labels' capitals, in parts of a cell's shorter side. */
const LABEL_SHARE = 0.22;
const LARGEST_CAPITALS = 3.2;
/** White round a label, on the paper. */
const CLEAR = 0.5;
/** From a cell's middle to its rim, in parts of the room, near ones first. */
const STEPS: readonly Point[] = [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1]
  .flatMap((y, _, all) => all.map((x) => point(x, y)))
  .sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));

/**
 * The map of the sheets: every printed sheet as a box with its label, the pieces' cut lines over them.
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
  const cells = planParts(plan).map((part) => ({ label: part.label, box: sheetCell(part) }));
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
  for (const { label, box } of cells) {
    const side = Math.min(box.right - box.left, box.bottom - box.top) * scale;
    const pt = ptOfCapitals(Math.min(LARGEST_CAPITALS, side * LABEL_SHARE));
    const half = { x: (pen.widthOf(label, pt) / 2 + CLEAR) / scale, y: (capitalsOfPt(pt) / 2 + CLEAR) / scale };
    const at = map(clearPlace(box, half, ink));
    pen.words(label, point(at.x, at.y + capitalsOfPt(pt) / 2), { pt, colour: INK.words, align: 'middle' });
  }
}

const corners = ({ left, top, right, bottom }: Box): readonly Point[] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];

/** Where a label stands in its cell: in the middle, or as near to it as no outline runs through it. */
function clearPlace(cell: Box, half: Point, ink: Ink): Point {
  const middle = point((cell.left + cell.right) / 2, (cell.top + cell.bottom) / 2);
  const room = { x: (cell.right - cell.left) / 2 - half.x, y: (cell.bottom - cell.top) / 2 - half.y };
  const near = inkNear(ink, cell);
  const places = STEPS.map((step) => point(middle.x + step.x * room.x, middle.y + step.y * room.y));
  const free = places.find(
    ({ x, y }) => !inkCrosses(near, { left: x - half.x, right: x + half.x, top: y - half.y, bottom: y + half.y }),
  );
  return free ?? middle;
}
