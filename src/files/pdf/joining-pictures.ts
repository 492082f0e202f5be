import {
  capitalsOfPt,
  drawingInk,
  INK,
  inkCrosses,
  type LineStyle,
  lineHeight,
  type PieceDrawing,
} from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxHolds, boxInside, boxRound, flattenCurves, type Point, point } from '../../plane';
import { joinLine, type Sheet, type SheetPlan, type Side } from '../../sheets';
import type { PagePicture } from '../pen/passage';
import type { PageMap, Pen } from '../pen/pen';
import { drawArrow } from './arrow';
import { boxAbout, boxPath, drawPaper, type Picture, paperBox, same } from './laid-paper';
import { drawScissors } from './scissors';

/** The paper on the picture for a millimetre of paper. */
const SCALE = 1 / 3.3;
const TABLE = '#E9E4DA';
const CUT_OFF = '#C9C2B4';
const RIM: LineStyle = { width: 0.2, colour: INK.join, dash: [] };
const EDGE: LineStyle = { width: 0.25, colour: INK.sign, dash: [] };
const CUT: LineStyle = { width: 0.35, colour: INK.cut, dash: [1.6, 0.9] };
/** How far off the mark the arrow runs, on the page. */
const ARROW_ASIDE: Mm = -9;
const SCISSORS = { long: 11, fromRim: 7 } as const;
/** What words keep off round scissors, whichever way they lie, and round an arrow's ends. */
const SCISSORS_HALF = point(8, 8);
const ARROW_HALF = point(1.5, 1.5);
/** Sizes of the sheets' labels, the white at their sides, and the places at which they are tried, best first: from the join, and from the mark along it, on their paper. */
const LABEL = {
  pts: [14, 11, 8],
  clear: 0.3,
  across: [24, 20, 28, 17, 31],
  along: [-21, 21, -18, 18, -26, 26],
} as const;
/** How far the second sheet still is from its place while it is being laid, across the join and along it, on its paper. */
const COMING = { across: 20, along: 9 } as const;
/** Strips of tape across the join: how far off the mark, and how large, on the paper. */
const TAPE = { at: [-42, 42], long: 44, wide: 15, fill: '#DAD3C4' } as const;

/** A join of this plan for the pictures, as its second sheet sees it: one sheet beside another, else one below another. */
interface ShownJoin {
  readonly first: Sheet;
  readonly second: Sheet;
  readonly side: 'left' | 'top';
  /** The mark in the middle of the picture. */
  readonly at: Point;
}

/** The join whose picture says most: with a cut line near its first mark where there is one. */
function shownJoin({ sheets }: SheetPlan, drawings: readonly PieceDrawing[], half: Mm): ShownJoin | undefined {
  const joins = sheets.flatMap((second) =>
    second.joins.flatMap(({ side, neighbour }): readonly ShownJoin[] => {
      const first = sheets.find(({ label }) => label === neighbour);
      const theirs = new Set(first?.marks.map(({ number }) => number));
      const marks = second.marks.filter(({ number }) => theirs.has(number));
      return first && (side === 'left' || side === 'top') ? marks.map(({ at }) => ({ first, second, side, at })) : [];
    }),
  );
  const cuts = drawings.flatMap(({ paths }) => paths.filter(({ stroke }) => stroke === 'cut'));
  const near = ({ at }: ShownJoin) => {
    const box = { left: at.x - half, right: at.x + half, top: at.y - half, bottom: at.y + half };
    return cuts.some(({ curves }) =>
      curves.some((curve) => flattenCurves([curve], half / 10).some((p) => boxHolds(box, p))),
    );
  };
  const beside = joins.filter(({ side }) => side === 'left');
  const shown = beside.length > 0 ? beside : joins;
  return shown.find(near) ?? shown[0];
}

/** One picture: where it is drawn, the join that it shows, and its places across that join and along it. */
interface JoinPicture extends Picture {
  readonly join: ShownJoin;
  /** From the mark, on the paper, to the page. */
  readonly off: (across: Mm, along: Mm) => Point;
  /** The drawing on the page, pushed away across the join and along it. */
  readonly pushed: (across: Mm, along: Mm) => PageMap;
}

/**
 * Cutting, laying and taping at one of this plan's own joins, smaller than it is; nothing where there is none.
 *
 * @param size of each picture on the page
 */
export function joiningPictures(
  plan: SheetPlan,
  drawings: readonly PieceDrawing[],
  size: { readonly width: Mm; readonly height: Mm },
): readonly PagePicture[] {
  const join = shownJoin(plan, drawings, (0.4 * Math.min(size.width, size.height)) / SCALE / plan.scale.x);
  if (!join) return [];
  const ink = drawingInk(drawings);
  return [drawCutting, drawLaying, drawTaping].map((draw) => ({
    ratio: size.height / size.width,
    widest: size.width,
    draw: (pen, place) => {
      pen.within(place, () => {
        pen.fill(boxPath(place), same, TABLE);
        draw(pen, joinPicture({ plan, drawings, ink, place, scale: SCALE }, join));
      });
      pen.frame(place, RIM);
    },
  }));
}

function joinPicture(picture: Picture, join: ShownJoin): JoinPicture {
  const { place, plan } = picture;
  const middle = point((place.left + place.right) / 2, (place.top + place.bottom) / 2);
  const off = (across: Mm, along: Mm) => {
    const [x, y] = join.side === 'left' ? [across, along] : [along, across];
    return point(middle.x + x * SCALE, middle.y + y * SCALE);
  };
  const pushed = (across: Mm, along: Mm): PageMap => {
    const from = off(across, along);
    return ({ x, y }) =>
      point(from.x + (x - join.at.x) * plan.scale.x * SCALE, from.y + (y - join.at.y) * plan.scale.y * SCALE);
  };
  return { ...picture, join, off, pushed };
}

/** The second sheet: what is cut off is grey, and scissors run along the join. */
function drawCutting(pen: Pen, picture: JoinPicture): void {
  const { plan, join, pushed, off } = picture;
  const { second, side } = join;
  const { left, right, top, bottom } = picture.place;
  const reach = (side === 'left' ? bottom - top : right - left) / 2 / SCALE;
  const scissors = off(0, reach - SCISSORS.fromRim / SCALE);
  const taken = drawPaper(pen, picture, second, pushed(0, 0), [], [boxAbout(scissors, SCISSORS_HALF)]);
  drawLabel(pen, picture, second, taken);
  const paper = paperBox(plan, second, []);
  const line = joinLine(second, side);
  const strip = side === 'left' ? { ...paper, right: line ?? paper.right } : { ...paper, bottom: line ?? paper.bottom };
  pen.fill(boxPath(strip), pushed(0, 0), CUT_OFF);
  pen.line(off(0, -reach), off(0, reach), CUT);
  drawScissors(pen, scissors, side === 'left' ? 90 : 0, SCISSORS.long);
}

/** The second sheet, cut, on its way to the first one's line. */
function drawLaying(pen: Pen, picture: JoinPicture): void {
  const aside = ARROW_ASIDE / SCALE;
  const [from, to] = [picture.off(COMING.across, COMING.along + aside), picture.off(0, aside)];
  const arrow = boxRound([from, to].map((end) => boxAbout(end, ARROW_HALF)));
  drawBoth(pen, picture, COMING, [arrow]);
  drawArrow(pen, from, to);
}

/** Both sheets where they belong, with tape across the join. */
function drawTaping(pen: Pen, picture: JoinPicture): void {
  const tapes = TAPE.at.map((at) => {
    const from = picture.off(-TAPE.long / 2, at - TAPE.wide / 2);
    const to = picture.off(TAPE.long / 2, at + TAPE.wide / 2);
    return { left: from.x, right: to.x, top: from.y, bottom: to.y };
  });
  drawBoth(pen, picture, { across: 0, along: 0 }, tapes);
  for (const tape of tapes) {
    pen.fill(boxPath(tape), same, TAPE.fill);
    pen.frame(tape, EDGE);
  }
}

/** @param off what words keep off, on the page */
function drawBoth(
  pen: Pen,
  picture: JoinPicture,
  by: { readonly across: Mm; readonly along: Mm },
  off: readonly Box[],
): void {
  const { plan, join, pushed } = picture;
  const butted: readonly Side[] = plan.overlap === 0 ? [join.side === 'left' ? 'right' : 'bottom'] : [];
  const first = drawPaper(pen, picture, join.first, pushed(0, 0), butted, off);
  const taken = drawPaper(pen, picture, join.second, pushed(by.across, by.along), [join.side], first);
  drawLabel(pen, picture, join.first, taken);
  drawLabel(pen, picture, join.second, taken, by);
}

/** A sheet's label beside its half of the mark, off the lines; none where there is no white. */
function drawLabel(
  pen: Pen,
  picture: JoinPicture,
  sheet: Sheet,
  taken: readonly Box[],
  by = { across: 0, along: 0 },
): void {
  const { plan, join, off, place, ink } = picture;
  const towards = sheet === join.second ? 1 : -1;
  const { x: right, y: down } = off(0, 0);
  for (const pt of LABEL.pts) {
    const half = { x: pen.widthOf(sheet.label, pt) / 2 + LABEL.clear, y: lineHeight(pt) / 2 };
    for (const along of LABEL.along) {
      for (const across of LABEL.across) {
        const at = off(towards * across + by.across, along + by.along);
        // Where it would lie on the drawing, which is pushed away with its sheet.
        const own = off(towards * across, along);
        const [kx, ky] = [SCALE * plan.scale.x, SCALE * plan.scale.y];
        const middle = point(join.at.x + (own.x - right) / kx, join.at.y + (own.y - down) / ky);
        const box = boxAbout(at, half);
        if (!boxInside(box, place) || taken.some((other) => boxesMeet(other, box))) continue;
        const on = boxAbout(middle, { x: half.x / kx, y: half.y / ky });
        if (inkCrosses(ink, on)) continue;
        pen.words(sheet.label, point(at.x, at.y + capitalsOfPt(pt) / 2), { pt, colour: INK.label, align: 'middle' });
        return;
      }
    }
  }
}
