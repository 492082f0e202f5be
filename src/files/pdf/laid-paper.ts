import {
  capitalsOfPt,
  INK,
  type Ink,
  inkCrosses,
  type LineStyle,
  lineHeight,
  type PieceDrawing,
  printedStyle,
  type StyleOf,
} from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxInside, boxRound, type Point, pathThrough, point } from '../../plane';
import { joinLine, markCorners, type SheetPart, type SheetPlan, type Side } from '../../sheets';
import { drawPaths, pictureLook } from '../pen/draw-paths';
import type { PageMap, Pen } from '../pen/pen';

/** Where a picture is drawn, and what. */
export interface Picture {
  readonly plan: SheetPlan;
  readonly drawings: readonly PieceDrawing[];
  /** On the page. */
  readonly place: Box;
  /** What words keep off. */
  readonly ink: Ink;
  /** The paper on the picture for a millimetre of paper. */
  readonly scale: number;
}

const PAPER = '#FFFFFF';
const EDGE: LineStyle = { width: 0.25, colour: INK.sign, dash: [] };
const JOIN: LineStyle = { width: 0.2, colour: INK.join, dash: [] };
const NUMBER_PT = 8;
/** White round a number. */
const RIM: Mm = 0.5;

/** What is on the page already stays where it is. */
export const same: PageMap = (p) => p;

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

/**
 * A sheet as it lies on the table: paper, lines, joins, half-diamonds with their numbers.
 *
 * @param off what words keep off beside the drawing, on the page
 * @returns the same with what words keep off on this sheet
 */
export function drawPaper(
  pen: Pen,
  picture: Picture,
  sheet: SheetPart,
  map: PageMap,
  cut: readonly Side[],
  off: readonly Box[],
): readonly Box[] {
  const { plan, drawings, place, scale } = picture;
  const paper = paperBox(plan, sheet, cut);
  pen.fill(boxPath(paper), map, PAPER);
  const seen = boxOn(map, overlapOf(paper, sheet.window));
  const shown = drawings.filter((drawing) => boxesMeet(drawing.bounds, sheet.window));
  pen.within(overlapOf(seen, place), () =>
    drawPaths(pen, shown, sheet.window, { map }, plan.scale.x * scale, pictureLook(smallStyle)),
  );
  const joins = sheet.joins.map(({ side, at, from, to }) =>
    side === 'left' || side === 'right'
      ? boxOn(map, { left: at, right: at, top: from, bottom: to })
      : boxOn(map, { left: from, right: to, top: at, bottom: at }),
  );
  for (const { left, right, top, bottom } of joins) pen.line(point(left, top), point(right, bottom), JOIN);
  const rim = boxOn(map, paper);
  pen.frame(rim, EDGE);
  const marks = sheet.marks.map(({ at, towards, size, number }) => {
    const base = map(at);
    const corners = markCorners(towards, size).map(({ x, y }) => point(base.x + x * scale, base.y + y * scale));
    pen.fill(pathThrough(...corners, corners[0] as Point), same, INK.mark);
    const tip = corners[1] as Point;
    const way = point(Math.sign(tip.x - base.x), Math.sign(tip.y - base.y));
    return { at, base, tip, way, text: `${number}`, box: boxRound(corners.map((p) => boxAbout(p, point(0, 0)))) };
  });
  const sides = (['left', 'right', 'top', 'bottom'] as const).map((side) => ({ ...rim, [OTHER[side]]: rim[side] }));
  const taken = [...off, ...joins, ...sides, ...marks.map(({ box }) => box)];
  for (const mark of marks) taken.push(...drawNumber(pen, picture, mark, taken));
  return taken;
}

const OTHER = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const;

/** A mark on its drawing and on the page, and the way that it points. */
interface ShownMark {
  readonly at: Point;
  readonly base: Point;
  readonly tip: Point;
  readonly way: Point;
  readonly text: string;
}

/** A mark's number beyond its tip or beside it, off the lines; none where there is no white, for its other half has it, too. */
function drawNumber(
  pen: Pen,
  picture: Picture,
  { at, base, tip, way, text }: ShownMark,
  taken: readonly Box[],
): readonly Box[] {
  const { plan, ink, place } = picture;
  const half = { x: pen.widthOf(text, NUMBER_PT) / 2 + RIM, y: lineHeight(NUMBER_PT) / 2 };
  const [deep, wide] = way.y === 0 ? [half.x, half.y] : [half.y, half.x];
  const depth = Math.hypot(tip.x - base.x, tip.y - base.y);
  const places = [0, 1, -1].flatMap((side) =>
    [depth, depth + 2, depth / 2].map((from) => ({ inside: from + RIM + deep, along: side * (depth + wide) })),
  );
  for (const { inside, along } of places) {
    const by = point(way.x * inside + way.y * along, way.y * inside + way.x * along);
    const box = boxAbout(point(base.x + by.x, base.y + by.y), half);
    const [kx, ky] = [plan.scale.x * picture.scale, plan.scale.y * picture.scale];
    const on = boxAbout(point(at.x + by.x / kx, at.y + by.y / ky), { x: half.x / kx, y: half.y / ky });
    if (!boxInside(box, place) || inkCrosses(ink, on) || taken.some((other) => boxesMeet(other, box))) continue;
    const middle = point(base.x + by.x, base.y + by.y + capitalsOfPt(NUMBER_PT) / 2);
    pen.words(text, middle, { pt: NUMBER_PT, colour: INK.mark, align: 'middle' });
    return [box];
  }
  return [];
}

/** A box round its middle. */
export const boxAbout = ({ x, y }: Point, half: Point): Box => ({
  left: x - half.x,
  right: x + half.x,
  top: y - half.y,
  bottom: y + half.y,
});

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
