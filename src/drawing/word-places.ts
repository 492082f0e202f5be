import type { PieceText } from '../edges';
import type { Mm } from '../length';
import { type Box, boxesMeet, boxGrown, type Point, point, pointsBounds } from '../plane';
import { type Ink, inkCrosses } from './ink';
import { ASCENT, DESCENT, mmOfPt, ptOfCapitals, type WidthOf } from './print-type';

/** A piece's word at a place of its own: whole within its room, off lines and other words. */
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

/** White between a word and the rim of its room, on the paper. */
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

/** Millimetres of paper for a millimetre of drawing. */
type Scale = { readonly x: number; readonly y: number };

/** Where words may stand. */
export interface WordRoom {
  /** On the drawing. */
  readonly box: Box;
  readonly scale: Scale;
  /** What is drawn there. */
  readonly ink: Ink;
  /** What is covered already. */
  readonly taken: readonly Box[];
}

/**
 * Words moved where they must: into their room, off the lines and what else is there, and smaller where that helps; a
 * word for which there is no such place within reach stays where it was.
 */
export function placeWords(
  texts: readonly PieceText[],
  { box, scale, ink, taken }: WordRoom,
  widthOf: WidthOf,
): readonly PlacedWord[] {
  const clear = boxGrown(box, -CLEAR / Math.max(scale.x, scale.y));
  const covered = [...taken];
  return texts.map((text) => {
    const blocked = ({ parts }: PlacedWord) =>
      parts.some((part) => {
        const wide = boxGrown(part, AIR);
        return covered.some((other) => boxesMeet(other, wide)) || inkCrosses(ink, wide);
      });
    const word = placed(text, clear, scale, widthOf, blocked);
    covered.push(...word.parts);
    return word;
  });
}

function placed(
  text: PieceText,
  room: Box,
  scale: Scale,
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
function fitted(word: PlacedWord, room: Box, scale: Scale, widthOf: WidthOf): PlacedWord {
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

function wordAt(text: string, at: Point, pt: number, turn: number, scale: Scale, widthOf: WidthOf): PlacedWord {
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
