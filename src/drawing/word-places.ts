import type { Mm } from '../length';
import { boxesMeet, boxGrown, boxInside } from '../plane';
import { placedAlong, type Walk, walkOf } from './along-lines';
import { boxOnPaper } from './ink-grid';
import { placedOnce } from './once-on-piece';
import type { WidthOf } from './print-type';
import { type TiltedBox, tiltedBounds, tiltedGrown, tiltedMeet, tiltedOf } from './tilted-box';
import type { OpenRoom, Wanted, WordRoom, WordSetting } from './wanted-words';
import { LEAST_PT, type PlacedWord } from './word-shape';

/** White between a word and the rim of its room, on the paper. */
const CLEAR: Mm = 2;
/** Between a word and the rim of the next line or mark, on the paper. */
const AIR: Mm = 0.45;
/** Half of the widest printed line. */
const PRINTED_HALF: Mm = 0.25;

/**
 * Places for words, off every line, mark and other word: what a piece says once where it belongs, in any of the rooms;
 * what a line says beside it, once in each room in which it is seen. What finds no room in one is left out there.
 *
 * @param wanted most needed first, for it has the first choice
 * @param rooms parts of one drawing on the same paper, each straight or in a quarter turn: their scales differ by which side is which
 * @returns the words of each room
 */
export function placeWords(
  wanted: Wanted,
  rooms: readonly WordRoom[],
  widthOf: WidthOf,
  { every = Number.POSITIVE_INFINITY, least = LEAST_PT, halfLine = PRINTED_HALF }: WordSetting = {},
): readonly (readonly PlacedWord[])[] {
  const placed: PlacedWord[][] = rooms.map(() => []);
  const open = rooms.map((room, i) => openRoom(room, placed[i] as PlacedWord[], halfLine));
  const put = (room: OpenRoom, words: readonly PlacedWord[]) => placed[open.indexOf(room)]?.push(...words);
  for (const one of wanted.once) {
    const found = placedOnce(one, open, widthOf, least);
    if (found) put(found.room, found.words);
  }
  for (const line of wanted.along) {
    const walksAt = new Map<number, readonly Walk[]>();
    for (const room of open) {
      const walks = walksAt.get(room.scale.x) ?? line.runs.map((run) => walkOf(run, room.scale));
      walksAt.set(room.scale.x, walks);
      const words = placedAlong(line, walks, room, widthOf, { every, least, halfLine });
      put(room, words);
      if (line.once && words.length > 0) break;
    }
  }
  return placed;
}

function openRoom({ box, scale, crosses, taken }: WordRoom, words: readonly PlacedWord[], halfLine: Mm): OpenRoom {
  const paper = boxOnPaper(box, scale);
  const clear = boxGrown(paper, -CLEAR);
  const marks = taken.map((one) => boxOnPaper(one, scale)).filter((one) => boxesMeet(one, paper));
  const tilted = marks.map(tiltedOf);
  const isFree = (covers: TiltedBox) => {
    if (!boxInside(tiltedBounds(covers), clear)) return false;
    const wide = tiltedGrown(covers, AIR + halfLine);
    const bounds = tiltedBounds(wide);
    if (marks.some((mark, i) => boxesMeet(mark, bounds) && tiltedMeet(tilted[i] as TiltedBox, wide))) return false;
    return !words.some((word) => tiltedMeet(word.covers, wide)) && !crosses(wide);
  };
  return { box: clear, scale, isFree };
}
