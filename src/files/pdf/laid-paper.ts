import { capitalsOfPt, INK, type LineStyle, type PieceDrawing, printedStyle, type StyleOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxInside, type Point, pathThrough, point } from '../../plane';
import { joinLine, markCorners, type SheetPart, type SheetPlan, type Side } from '../../sheets';
import { drawPaths, pictureLook } from '../pen/draw-paths';
import type { PageMap, Pen } from '../pen/pen';

/** Where a picture is drawn, and what. */
export interface Picture {
  readonly plan: SheetPlan;
  readonly drawings: readonly PieceDrawing[];
  /** On the page. */
  readonly place: Box;
  /** The paper on the picture for a millimetre of paper. */
  readonly scale: number;
}

const PAPER = '#FFFFFF';
const EDGE: LineStyle = { width: 0.25, colour: INK.sign, dash: [] };
const JOIN: LineStyle = { width: 0.2, colour: INK.join, dash: [] };
const NUMBER_PT = 8;
/** White between a word and the rim of its picture. */
const RIM: Mm = 0.5;

/** What is on the page already stays where it is. */
export const same: PageMap = (p) => p;

/** A word about its middle; nothing where the picture's rim would cut it. */
export function drawWhole(pen: Pen, { place }: Picture, text: string, at: Point, pt: number, colour: string): void {
  const half = { x: pen.widthOf(text, pt) / 2 + RIM, y: capitalsOfPt(pt) / 2 + RIM };
  if (!boxInside({ left: at.x - half.x, right: at.x + half.x, top: at.y - half.y, bottom: at.y + half.y }, place))
    return;
  pen.words(text, point(at.x, at.y + capitalsOfPt(pt) / 2), { pt, colour, align: 'middle' });
}

/** A sheet's paper on the drawing: its window and the white round it, without what is cut off. */
export function paperBox({ margin, scale }: SheetPlan, part: SheetPart, cut: readonly Side[]): Box {
  const at = (side: Side, by: Mm) =>
    cut.includes(side) ? (joinLine(part, side) ?? part.window[side]) : part.window[side] + by;
  return {
    left: at('left', -margin / scale.x),
    right: at('right', margin / scale.x),
    top: at('top', -margin / scale.y),
    bottom: at('bottom', margin / scale.y),
  };
}

/** A sheet as it lies on the table: paper, lines, joins, half-diamonds with their numbers. */
export function drawPaper(pen: Pen, picture: Picture, sheet: SheetPart, map: PageMap, cut: readonly Side[]): void {
  const { plan, drawings, place, scale } = picture;
  const paper = paperBox(plan, sheet, cut);
  pen.fill(boxPath(paper), map, PAPER);
  const seen = boxOn(map, overlapOf(paper, sheet.window));
  const shown = drawings.filter((drawing) => boxesMeet(drawing.bounds, sheet.window));
  pen.within(overlapOf(seen, place), () =>
    drawPaths(pen, shown, sheet.window, { map }, plan.scale.x * scale, pictureLook(smallStyle)),
  );
  for (const { side, at, from, to } of sheet.joins) {
    const [a, b] =
      side === 'left' || side === 'right' ? [point(at, from), point(at, to)] : [point(from, at), point(to, at)];
    pen.line(map(a), map(b), JOIN);
  }
  pen.frame(boxOn(map, paper), EDGE);
  for (const { at, towards, size, number } of sheet.marks) {
    const base = map(at);
    const corners = markCorners(towards, size).map(({ x, y }) => point(base.x + x * scale, base.y + y * scale));
    pen.fill(pathThrough(...corners, corners[0] as Point), same, INK.mark);
    const tip = corners[1] as Point;
    const way = point(Math.sign(tip.x - base.x), Math.sign(tip.y - base.y));
    const beyond = { x: 1 + pen.widthOf(`${number}`, NUMBER_PT) / 2, y: 1 + capitalsOfPt(NUMBER_PT) / 2 };
    const middle = point(tip.x + way.x * beyond.x, tip.y + way.y * beyond.y);
    drawWhole(pen, picture, `${number}`, middle, NUMBER_PT, INK.mark);
  }
}

const overlapOf = (a: Box, b: Box): Box => ({
  left: Math.max(a.left, b.left),
  right: Math.min(a.right, b.right),
  top: Math.max(a.top, b.top),
  bottom: Math.min(a.bottom, b.bottom),
});

const boxOn = (map: PageMap, box: Box): Box => {
  const [from, to] = [map(point(box.left, box.top)), map(point(box.right, box.bottom))];
  return { left: from.x, top: from.y, right: to.x, bottom: to.y };
};

/** A box's rim. */
export const boxPath = ({ left, top, right, bottom }: Box) =>
  pathThrough(point(left, top), point(right, top), point(right, bottom), point(left, bottom), point(left, top));

/** Lines as thin as the picture is small. */
const smallStyle: StyleOf = (path) => {
  const style = printedStyle(path);
  return { ...style, width: style.width * 0.7, dash: style.dash.map((part) => part * 0.6) };
};
