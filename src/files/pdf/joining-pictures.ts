import { INK, type LineStyle, type PieceDrawing } from '../../drawing';
import type { Mm } from '../../length';
import { boxHolds, flattenCurves, type Point, point } from '../../plane';
import { joinLine, type Sheet, type SheetPlan } from '../../sheets';
import type { PagePicture } from '../pen/passage';
import type { PageMap, Pen } from '../pen/pen';
import { drawArrow } from './arrow';
import { boxPath, drawPaper, drawWhole, type Picture, paperBox, same } from './laid-paper';
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
const LABEL_PT = 14;
/** From the join to the sheets' labels, and how far off the mark along it, on their paper. */
const LABEL_AWAY = { across: 24, along: -21 } as const;
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
  return [drawCutting, drawLaying, drawTaping].map((draw) => ({
    ratio: size.height / size.width,
    widest: size.width,
    draw: (pen, place) => {
      pen.within(place, () => {
        pen.fill(boxPath(place), same, TABLE);
        draw(pen, joinPicture({ plan, drawings, place, scale: SCALE }, join));
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
  drawPaper(pen, picture, second, pushed(0, 0), []);
  drawLabel(pen, picture, second);
  const paper = paperBox(plan, second, []);
  const line = joinLine(second, side);
  const strip = side === 'left' ? { ...paper, right: line ?? paper.right } : { ...paper, bottom: line ?? paper.bottom };
  pen.fill(boxPath(strip), pushed(0, 0), CUT_OFF);
  const { left, right, top, bottom } = picture.place;
  const reach = (side === 'left' ? bottom - top : right - left) / 2 / SCALE;
  pen.line(off(0, -reach), off(0, reach), CUT);
  drawScissors(pen, off(0, reach - SCISSORS.fromRim / SCALE), side === 'left' ? 90 : 0, SCISSORS.long);
}

/** The second sheet, cut, on its way to the first one's line. */
function drawLaying(pen: Pen, picture: JoinPicture): void {
  drawBoth(pen, picture, COMING);
  const aside = ARROW_ASIDE / SCALE;
  drawArrow(pen, picture.off(COMING.across, COMING.along + aside), picture.off(0, aside));
}

/** Both sheets where they belong, with tape across the join. */
function drawTaping(pen: Pen, picture: JoinPicture): void {
  drawBoth(pen, picture, { across: 0, along: 0 });
  for (const at of TAPE.at) {
    const from = picture.off(-TAPE.long / 2, at - TAPE.wide / 2);
    const to = picture.off(TAPE.long / 2, at + TAPE.wide / 2);
    const tape = { left: from.x, right: to.x, top: from.y, bottom: to.y };
    pen.fill(boxPath(tape), same, TAPE.fill);
    pen.frame(tape, EDGE);
  }
}

function drawBoth(
  pen: Pen,
  picture: JoinPicture,
  { across, along }: { readonly across: Mm; readonly along: Mm },
): void {
  const { plan, join, pushed } = picture;
  const butted = plan.overlap === 0;
  drawPaper(pen, picture, join.first, pushed(0, 0), butted ? [join.side === 'left' ? 'right' : 'bottom'] : []);
  drawLabel(pen, picture, join.first);
  drawPaper(pen, picture, join.second, pushed(across, along), [join.side]);
  drawLabel(pen, picture, join.second, { across, along });
}

/** A sheet's label beside its half of the mark. */
function drawLabel(pen: Pen, picture: JoinPicture, sheet: Sheet, by = { across: 0, along: 0 }): void {
  const across = sheet === picture.join.second ? LABEL_AWAY.across : -LABEL_AWAY.across;
  drawWhole(
    pen,
    picture,
    sheet.label,
    picture.off(across + by.across, LABEL_AWAY.along + by.along),
    LABEL_PT,
    INK.label,
  );
}
