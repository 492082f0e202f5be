import * as v from 'valibot';
import { KIND_NAMES, type PieceKind } from '../edges';
import { LEAST_SCALE, WIDEST_CORRECTION } from '../sheets';

/** No drawing is larger, millimetres either way; it also keeps figures that can't be meant out of the search for sheets. */
const FARTHEST = 20_000;
/** More sheets, marks, lines or words are on no pattern. */
const MOST = 5000;
const MOST_POINTS = 20_000;

const code = 'lastPrint';
const between = (lowest: number, highest: number) =>
  v.pipe(v.number(code), v.finite(code), v.minValue(lowest, code), v.maxValue(highest, code));
const list = <const Item extends v.GenericSchema>(item: Item, most = MOST) =>
  v.pipe(v.array(item, code), v.maxLength(most, code));
const text = v.pipe(v.string(code), v.maxLength(400, code));
const group = <const Entries extends v.ObjectEntries>(entries: Entries) => v.strictObject(entries, code);

/** A day that there is, as `2026-11-30`. */
function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
}

const coordinate = between(-FARTHEST, FARTHEST);
const length = between(0, FARTHEST);
const place = v.pipe(v.number(code), v.integer(code), v.minValue(-99, code), v.maxValue(99, code));
const point = group({ x: coordinate, y: coordinate });
const scale = between(LEAST_SCALE * (1 - WIDEST_CORRECTION), 1 + WIDEST_CORRECTION);

const box = group({ left: coordinate, top: coordinate, right: coordinate, bottom: coordinate });
const part = {
  row: place,
  column: place,
  marks: list(
    group({
      number: between(1, MOST),
      at: point,
      size: between(0, 1),
      towards: v.picklist(['left', 'right', 'up', 'down'], code),
    }),
  ),
};
const turn = between(-360, 360);

const print = {
  on: v.pipe(v.string(code), v.check(isDay, code)),
  paper: group({ name: text, width: length, height: length }),
  margin: length,
  overlap: length,
  scale: group({ x: scale, y: scale }),
  corner: point,
  shifts: v.optional(list(group({ row: place, by: coordinate }))),
  places: list(
    group({
      piece: group({
        kind: v.picklist(Object.keys(KIND_NAMES) as PieceKind[], code),
        side: v.optional(v.picklist(['left', 'right'], code)),
      }),
      turn,
      shift: point,
    }),
  ),
  sheets: list(
    group({
      ...part,
      tips: v.optional(list(group({ ...part, window: box, place: group({ turn, shift: point }) }))),
    }),
  ),
  lines: list(group({ stroke: text, points: list(coordinate, MOST_POINTS) })),
  words: list(group({ text, at: point })),
  /** Body and choices of that day, to tell what has changed since. */
  project: v.looseObject({}, code),
};

/**
 * The pattern as it was last printed, and the print before. It is for programs alone: what is wrong anywhere in it is
 * wrong with all of it, and then nothing is known of any print; one fault says enough.
 */
export const lastPrint = v.config(group({ ...print, before: v.optional(group(print)) }), { abortEarly: true });
