import type { Mm } from '../length';
import { type Point, point } from '../plane';
import { onPaper } from './ink-grid';
import { lineHeight, ptOfCapitals, type WidthOf } from './print-type';
import type { OpenRoom, WantedLine, WantedOnce } from './wanted-words';
import { type PlacedWord, SMALLER, waysOf, wordAt, wordMoved } from './word-shape';

/** From one tried place to the next, on the paper. */
const STEP: Mm = 4;
/** Where in a line's height its baseline lies. */
const BASELINE = 0.76;

/**
 * Words that a piece says once, as large and as many as there is room for: about their place, else in the room that is
 * nearest to it.
 */
export function placedOnce(
  wanted: WantedOnce,
  rooms: readonly OpenRoom[],
  widthOf: WidthOf,
  least: number,
): { readonly room: OpenRoom; readonly words: readonly PlacedWord[] } | undefined {
  const tries = rooms
    .map((room) => {
      const to = onPaper(wanted.at, room.scale);
      return { room, ...placesIn(room, to, wanted.belongs) };
    })
    .sort((a, b) => a.away - b.away);
  for (const { lines, factor } of waysToSay(wanted)) {
    for (const { room, nearestFirst } of tries) {
      const block = blockOf(lines, factor, wanted.turn, room, widthOf, least);
      for (const at of nearestFirst()) {
        const isFree = block.every(({ covers }) =>
          room.isFree({ ...covers, middle: point(covers.middle.x + at.x, covers.middle.y + at.y) }),
        );
        if (isFree) return { room, words: block.map((word) => wordMoved(word, at, room.scale)) };
      }
    }
  }
  return undefined;
}

/** How the lines are tried: all of them ever smaller, then ever fewer of the smallest. */
function* waysToSay({
  lines,
}: WantedOnce): Generator<{ readonly lines: readonly WantedLine[]; readonly factor: number }> {
  for (const factor of SMALLER) yield { lines, factor };
  for (let count = lines.length - 1; count >= 1; count -= 1) yield { lines: lines.slice(0, count), factor: 0 };
}

/** Lines below each other, about the origin of the paper. */
function blockOf(
  lines: readonly WantedLine[],
  factor: number,
  turn: number,
  { scale }: OpenRoom,
  widthOf: WidthOf,
  least: number,
): readonly PlacedWord[] {
  const { up } = waysOf(turn);
  const set = lines.map(({ text, size }) => {
    const pt = Math.max(least, ptOfCapitals(size * factor * Math.min(scale.x, scale.y)));
    return { text, pt, height: lineHeight(pt) };
  });
  let top = -set.reduce((sum, { height }) => sum + height, 0) / 2;
  return set.map(({ text, pt, height }) => {
    const down = top + height * BASELINE;
    top += height;
    return wordAt(text, point(-up.x * down, -up.y * down), pt, turn, scale, widthOf);
  });
}

/**
 * Places all over a room at which words would be understood, in millimetres of the paper, and how far the nearest place
 * is away from one that may lie outside.
 *
 * They are kept in rings a step wide, each looked through and sorted when it is first come to: a large sheet has tens of
 * thousands of places, most of them off a small piece, and one of the first is free as a rule.
 */
function placesIn(
  { box, scale }: OpenRoom,
  to: Point,
  belongs: WantedOnce['belongs'],
): { readonly away: Mm; readonly nearestFirst: () => Iterable<Point> } {
  const { left, top, right, bottom } = box;
  const start = point(Math.min(Math.max(to.x, left), right), Math.min(Math.max(to.y, top), bottom));
  const away = (p: Point) => Math.hypot(p.x - to.x, p.y - to.y);
  const rings: Point[][] = [[start]];
  for (let x = start.x - Math.floor((start.x - left) / STEP) * STEP; x <= right; x += STEP)
    for (let y = start.y - Math.floor((start.y - top) / STEP) * STEP; y <= bottom; y += STEP) {
      const at = point(x, y);
      // The nearest comes first, wherever it lies.
      const ring = 1 + Math.floor(away(at) / STEP);
      if (rings[ring]) rings[ring].push(at);
      else rings[ring] = [at];
    }
  const seen = { x: 1 / scale.x, y: 1 / scale.y };
  const fit: (readonly Point[])[] = [];
  function* nearestFirst(): Generator<Point> {
    for (const [i, ring = []] of rings.entries()) {
      fit[i] ??= ring.filter((at) => belongs(onPaper(at, seen))).sort((a, b) => away(a) - away(b));
      yield* fit[i];
    }
  }
  return { away: away(start), nearestFirst };
}
