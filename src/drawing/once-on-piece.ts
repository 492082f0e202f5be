import type { Mm } from '../length';
import { type Box, boxShared, type Point, point } from '../plane';
import { boxOnPaper, onPaper } from './ink-grid';
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
 * They are found in rings a step wide, each when it is first come to: a large sheet has tens of thousands of places, most
 * of them off a small piece, and one of the first is free as a rule.
 */
function placesIn(
  { box, scale }: OpenRoom,
  to: Point,
  belongs: WantedOnce['belongs'],
): { readonly away: Mm; readonly nearestFirst: () => Iterable<Point> } {
  const start = nearestIn(box, to);
  const away = (p: Point) => Math.hypot(p.x - to.x, p.y - to.y);
  const asked = boxShared(box, boxOnPaper(belongs.within, scale));
  const seen = { x: 1 / scale.x, y: 1 / scale.y };
  const fit: (readonly Point[])[] = [];
  function* nearestFirst(): Generator<Point> {
    if (!asked) return;
    const { left, top, right, bottom } = asked;
    const columns = stepsThrough(start.x, left, right);
    const rows = stepsThrough(start.y, top, bottom);
    const ringAt = (ring: number): readonly Point[] =>
      columns(to.x, 0, ring * STEP).flatMap((x) => {
        const reach = (radius: Mm): Mm => Math.sqrt(Math.max(0, radius ** 2 - (x - to.x) ** 2));
        return rows(to.y, reach((ring - 1) * STEP), reach(ring * STEP))
          .map((y) => point(x, y))
          .filter((at) => Math.floor(away(at) / STEP) === ring - 1);
      });
    const fits = (at: Point) => belongs.at(onPaper(at, seen));
    // The nearest comes first, wherever it lies.
    if (fits(start)) yield start;
    const first = 1 + Math.floor(away(nearestIn(asked, to)) / STEP);
    const farthest = Math.hypot(Math.max(to.x - left, right - to.x), Math.max(to.y - top, bottom - to.y));
    for (let ring = first; (ring - 1) * STEP <= farthest; ring += 1) {
      fit[ring] ??= ringAt(ring)
        .filter(fits)
        .sort((a, b) => away(a) - away(b));
      yield* fit[ring] ?? [];
    }
  }
  return { away: away(start), nearestFirst };
}

const nearestIn = ({ left, top, right, bottom }: Box, { x, y }: Point): Point =>
  point(Math.min(Math.max(x, left), right), Math.min(Math.max(y, top), bottom));

/**
 * The places on the way through a stretch, in steps from one on both ways.
 *
 * @returns those about so far from a place, or a step more or less, from the lowest up
 */
function stepsThrough(start: Mm, low: Mm, high: Mm) {
  const between = (from: Mm, to: Mm): readonly Mm[] => {
    const first = Math.max(Math.ceil((low - start) / STEP), Math.floor((from - start) / STEP));
    const last = Math.min(Math.floor((high - start) / STEP), Math.ceil((to - start) / STEP));
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => start + (first + i) * STEP);
  };
  return (place: Mm, least: Mm, most: Mm): readonly Mm[] =>
    least < 2 * STEP
      ? between(place - most, place + most)
      : [...between(place - most, place - least), ...between(place + least, place + most)];
}
