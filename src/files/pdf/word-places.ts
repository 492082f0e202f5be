import {
  ASCENT,
  DESCENT,
  type Ink,
  inkCrosses,
  mmOfPt,
  type PieceDrawing,
  ptOfCapitals,
  type WidthOf,
} from '../../drawing';
import type { PieceText } from '../../edges';
import type { Mm } from '../../length';
import { type Box, boxesMeet, boxGrown, boxHolds, type Point, point, pointsBounds } from '../../plane';
import { MARK, type Sheet, type SheetPlan } from '../../sheets';

/** A piece's word on one sheet, whole: never cut by a sheet's edge, never under a neighbour. */
export interface PlacedWord {
  readonly text: string;
  /** The middle of the baseline, on the drawing. */
  readonly at: Point;
  readonly pt: number;
  readonly turn: number;
  readonly box: Box;
  /** What it really covers: a slanting word fills little of its box. */
  readonly parts: readonly Box[];
}

/** White between a word and a sheet's edge or a join, on the paper. */
const CLEAR = 2;
/** Between a word and the next line or mark, on the drawing. */
const AIR = 0.6;
/** Words are not printed smaller: capitals of 1.6 mm can just be read. */
const LEAST_CAPITALS = 1.6;
const STEP = 2;
/** Sizes tried where a word finds no free place at its own: better small and clear than large and across a line. */
const SMALLER = [1, 0.8, 0.6, 0.45] as const;
/** Steps away from a word's own place, near ones first: up to 35 each way along the word, 15 across it. */
const STEPS: readonly Point[] = Array.from({ length: 71 * 31 }, (_, i) =>
  point((i % 71) - 35, Math.floor(i / 71) - 15),
).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));

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
 * off the lines, and smaller where that helps; a word for which there is no such place within reach stays where it was.
 *
 * @param ink what is drawn in the sheet's window
 * @param marked what the sheet's marks and their numbers cover
 */
export function placeWords(
  drawings: readonly PieceDrawing[],
  plan: SheetPlan,
  sheet: Sheet,
  ink: Ink,
  marked: readonly Box[],
  widthOf: WidthOf,
): readonly PlacedWord[] {
  const owner = (text: PieceText) => plan.sheets.find((other) => boxHolds(sheetCell(other), text.at));
  const room = boxGrown(sheetCell(sheet), -CLEAR / Math.max(plan.scale.x, plan.scale.y));
  const taken = [...marked];
  const words: PlacedWord[] = [];
  for (const text of drawings.flatMap((drawing) => drawing.texts)) {
    if (owner(text) !== sheet) continue;
    const blocked = ({ parts }: PlacedWord) =>
      parts.some((part) => {
        const wide = boxGrown(part, AIR);
        return taken.some((other) => boxesMeet(other, wide)) || inkCrosses(ink, wide);
      });
    const word = placed(text, room, plan, widthOf, blocked);
    words.push(word);
    taken.push(...word.parts);
  }
  return words;
}

function placed(
  text: PieceText,
  room: Box,
  { scale }: SheetPlan,
  widthOf: WidthOf,
  blocked: (word: PlacedWord) => boolean,
): PlacedWord {
  const largest = ptOfCapitals(Math.max(text.size * Math.min(scale.x, scale.y), LEAST_CAPITALS));
  const words = SMALLER.map((factor) => {
    const pt = Math.min(largest, Math.max(largest * factor, ptOfCapitals(LEAST_CAPITALS)));
    return fitted(wordAt(text.text, text.at, pt, text.turn, scale, widthOf), room, scale, widthOf);
  });
  const angle = (text.turn * Math.PI) / 180;
  // Steps go along the word and across it: one that stands beside a slanting line slides along that line.
  const steps = STEPS.map(({ x, y }) =>
    point(
      ((x * Math.cos(angle) - y * Math.sin(angle)) * STEP) / scale.x,
      ((x * Math.sin(angle) + y * Math.cos(angle)) * STEP) / scale.y,
    ),
  );
  for (const word of words) {
    const starts = [...(text.turn % 90 === 0 ? [] : [word]), movedInto(word, room)];
    for (const start of starts) {
      for (const step of steps) {
        const tried = movedWord(start, step);
        if (boxInside(tried.box, room) && !blocked(tried)) return tried;
      }
    }
  }
  return movedInto(words[0] as PlacedWord, room);
}

/** The word, made smaller where the room is too small for it. */
function fitted(word: PlacedWord, room: Box, scale: SheetPlan['scale'], widthOf: WidthOf): PlacedWord {
  const fit = Math.min(
    (room.right - room.left) / (word.box.right - word.box.left),
    (room.bottom - room.top) / (word.box.bottom - word.box.top),
  );
  return fit < 1 ? wordAt(word.text, word.at, word.pt * fit, word.turn, scale, widthOf) : word;
}

const movedInto = (word: PlacedWord, room: Box): PlacedWord =>
  movedWord(
    word,
    point(
      Math.max(0, room.left - word.box.left) + Math.min(0, room.right - word.box.right),
      Math.max(0, room.top - word.box.top) + Math.min(0, room.bottom - word.box.bottom),
    ),
  );

/** A hair of room for rounding: a word that fills its room exactly is inside it. */
export const boxInside = (box: Box, room: Box): boolean =>
  box.left >= room.left - 1e-6 &&
  box.right <= room.right + 1e-6 &&
  box.top >= room.top - 1e-6 &&
  box.bottom <= room.bottom + 1e-6;

function wordAt(
  text: string,
  at: Point,
  pt: number,
  turn: number,
  scale: SheetPlan['scale'],
  widthOf: WidthOf,
): PlacedWord {
  const angle = (turn * Math.PI) / 180;
  const width = widthOf(text, pt);
  const em = mmOfPt(pt);
  const between = (from: Mm, to: Mm): Box => {
    const corners = [from, to].flatMap((along) =>
      [ASCENT * em, -DESCENT * em].map((up) =>
        point(
          at.x + (along * Math.cos(angle) + up * Math.sin(angle)) / scale.x,
          at.y + (along * Math.sin(angle) - up * Math.cos(angle)) / scale.y,
        ),
      ),
    );
    return pointsBounds(corners);
  };
  const count = turn % 90 === 0 ? 1 : Math.ceil(width / em);
  const parts = Array.from({ length: count }, (_, i) =>
    between((i / count - 0.5) * width, ((i + 1) / count - 0.5) * width),
  );
  return { text, at, pt, turn, box: between(-width / 2, width / 2), parts };
}

const movedWord = (word: PlacedWord, by: Point): PlacedWord => ({
  ...word,
  at: point(word.at.x + by.x, word.at.y + by.y),
  box: movedBox(word.box, by),
  parts: word.parts.map((part) => movedBox(part, by)),
});

const movedBox = ({ left, top, right, bottom }: Box, by: Point): Box => ({
  left: left + by.x,
  right: right + by.x,
  top: top + by.y,
  bottom: bottom + by.y,
});
