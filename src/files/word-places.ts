import type { PieceText } from '../edges';
import { type Point, point } from '../plane';
import {
  type Box,
  boxesMeet,
  boxGrown,
  boxHolds,
  type Ink,
  inkCrosses,
  MARK,
  type PieceDrawing,
  type Sheet,
  type SheetPlan,
} from '../sheets';
import { ASCENT, DESCENT, mmOfPt, ptOfCapitals, type WidthOf } from './print-type';

/** A piece's word on one sheet, whole: never cut by a sheet's edge, never under a neighbour. */
export interface PlacedWord {
  readonly text: string;
  /** The middle of the baseline, on the drawing. */
  readonly at: Point;
  readonly pt: number;
  readonly turn: number;
  readonly box: Box;
}

/** White between a word and a sheet's edge or a join, on the paper. */
const CLEAR = 2;
/** Between a word and the next line or mark, on the drawing. */
const AIR = 0.6;
/** Words are not printed smaller: capitals of 1.6 mm can just be read. */
const LEAST_CAPITALS = 1.6;
const STEP = 2;

/** What stays in sight of a sheet once its neighbours lie on its overlaps. */
export const sheetCell = ({ window, joins }: Sheet): Box => ({
  ...window,
  right: joins.right ?? window.right,
  bottom: joins.bottom ?? window.bottom,
});

/** What a sheet's own marks and their numbers cover, on the drawing. */
export function markBoxes({ marks }: Sheet, { scale }: SheetPlan): readonly Box[] {
  const reach = MARK.depth + MARK.numberRoom;
  return marks.map(({ at, towards }) => {
    const across = towards === 'left' || towards === 'right';
    const x = (across ? reach : MARK.halfBase) / scale.x;
    const y = (across ? MARK.halfBase : reach) / scale.y;
    return { left: at.x - x, right: at.x + x, top: at.y - y, bottom: at.y + y };
  });
}

/**
 * The pieces' words that belong to one sheet, moved where they must: into what stays in sight of it, off its marks and
 * off the lines; a word for which there is no such place within reach stays where it was.
 *
 * @param ink what is drawn in the sheet's window
 */
export function placeWords(
  drawings: readonly PieceDrawing[],
  plan: SheetPlan,
  sheet: Sheet,
  ink: Ink,
  widthOf: WidthOf,
): readonly PlacedWord[] {
  const owner = (text: PieceText) => plan.sheets.find((other) => boxHolds(sheetCell(other), text.at));
  const room = boxGrown(sheetCell(sheet), -CLEAR / Math.max(plan.scale.x, plan.scale.y));
  const taken = [...markBoxes(sheet, plan)];
  const words: PlacedWord[] = [];
  for (const text of drawings.flatMap((drawing) => drawing.texts)) {
    if (owner(text) !== sheet) continue;
    const blocked = (box: Box) => {
      const wide = boxGrown(box, AIR);
      return taken.some((other) => boxesMeet(other, wide)) || inkCrosses(ink, wide);
    };
    const word = placed(text, room, plan, widthOf, blocked);
    words.push(word);
    taken.push(word.box);
  }
  return words;
}

function placed(
  text: PieceText,
  room: Box,
  { scale }: SheetPlan,
  widthOf: WidthOf,
  blocked: (box: Box) => boolean,
): PlacedWord {
  const size = Math.max(text.size * Math.min(scale.x, scale.y), LEAST_CAPITALS);
  const natural = wordAt(text.text, text.at, ptOfCapitals(size), text.turn, scale, widthOf);
  const fit = Math.min(
    1,
    (room.right - room.left) / (natural.box.right - natural.box.left),
    (room.bottom - room.top) / (natural.box.bottom - natural.box.top),
  );
  const base = fit < 1 ? wordAt(text.text, text.at, natural.pt * fit, text.turn, scale, widthOf) : natural;
  const into = point(
    Math.max(0, room.left - base.box.left) + Math.min(0, room.right - base.box.right),
    Math.max(0, room.top - base.box.top) + Math.min(0, room.bottom - base.box.bottom),
  );
  const start = movedWord(base, into);
  if (!blocked(start.box)) return start;
  for (const way of spiral()) {
    const other = movedWord(start, point((way.x * STEP) / scale.x, (way.y * STEP) / scale.y));
    const inside =
      other.box.left >= room.left &&
      other.box.right <= room.right &&
      other.box.top >= room.top &&
      other.box.bottom <= room.bottom;
    if (inside && !blocked(other.box)) return other;
  }
  return start;
}

/** Steps away from a place, near ones first, out to 15 in each direction. */
function spiral(): readonly Point[] {
  const steps: Point[] = [];
  for (let x = -15; x <= 15; x += 1) for (let y = -15; y <= 15; y += 1) steps.push(point(x, y));
  return steps.sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
}

function wordAt(
  text: string,
  at: Point,
  pt: number,
  turn: number,
  scale: SheetPlan['scale'],
  widthOf: WidthOf,
): PlacedWord {
  const angle = (turn * Math.PI) / 180;
  const half = widthOf(text, pt) / 2;
  const em = mmOfPt(pt);
  const corners = [-half, half].flatMap((along) =>
    [ASCENT * em, -DESCENT * em].map((up) =>
      point(
        at.x + (along * Math.cos(angle) + up * Math.sin(angle)) / scale.x,
        at.y + (along * Math.sin(angle) - up * Math.cos(angle)) / scale.y,
      ),
    ),
  );
  const xs = corners.map((c) => c.x);
  const ys = corners.map((c) => c.y);
  const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  return { text, at, pt, turn, box };
}

const movedWord = (word: PlacedWord, by: Point): PlacedWord => ({
  ...word,
  at: point(word.at.x + by.x, word.at.y + by.y),
  box: {
    left: word.box.left + by.x,
    right: word.box.right + by.x,
    top: word.box.top + by.y,
    bottom: word.box.bottom + by.y,
  },
});
