import { type Stretch, wordShifts } from '../../drawing';
import type { Mm, Units } from '../../length';
import { type Box, segmentWithin } from '../../plane';
import { printPhrase } from '../../words';
import type { PictureItem, PictureLine, PicturePanel, StepPicture } from './picture';

/** A word of a picture as it is printed, millimetres of the pattern. */
export interface PlacedPictureWord {
  readonly text: string;
  /** Where its baseline begins. */
  readonly left: Mm;
  readonly baseline: Mm;
  readonly size: Mm;
  /** What it covers. */
  readonly box: Box;
}

/** How a picture's words are set. */
export interface PictureSetting {
  readonly units: Units;
  /** In the measure of the picture: no word is smaller, however small the picture is shown. */
  readonly least: Mm;
  /** Of a text at a size. */
  readonly width: (text: string, size: Mm) => Mm;
  /** Where words may lie: the picture, or more round it. */
  readonly room: Box;
}

/** Letters as large as those for which the steps of {@link wordShifts} are made, in its pixels. */
const LETTER = 11;
/** Of the font size: how far letters reach above and below their line. */
const [ABOVE, BELOW] = [0.74, 0.22];
/** A word belongs on its side of these. */
const PARTING: readonly PictureLine[] = ['edge'];

/**
 * A picture's words where they lie on no line and on no other word, however large they are set in it: each at its own place,
 * or as near to that as there is room. A word that has none is left out, as it is on the screen.
 */
export function placedWords(
  { panels }: StepPicture,
  { units, least, width, room }: PictureSetting,
): readonly PlacedPictureWord[] {
  const standing = panels
    .flatMap(({ items }) => items)
    .flatMap((item) => (item.kind === 'word' ? [wordOf(item, least, width, units, room)] : []));
  const [first] = standing;
  if (!first) return [];
  const scale = LETTER / first.size;
  const shifts = wordShifts(
    standing.map(({ box }) => ({ box: scaled(box, scale), inside: false })),
    { lines: panels.flatMap((panel) => stretchesOf(panel, scale)), taken: [], room: scaled(room, scale) },
  );
  return standing.flatMap((word, i) => {
    const by = shifts[i];
    return by ? [moved(word, by.x / scale, by.y / scale)] : [];
  });
}

type Word = Extract<PictureItem, { kind: 'word' }>;

/** A word at its own place, but within the room. */
function wordOf(
  { at, text: phrase, align, size: own }: Word,
  least: Mm,
  width: PictureSetting['width'],
  units: Units,
  room: Box,
): PlacedPictureWord {
  const text = printPhrase(phrase, units);
  const size = Math.max(least, own);
  const reach = width(text, size);
  const wanted = at.x - (align === 'left' ? 0 : align === 'middle' ? reach / 2 : reach);
  const left = Math.max(room.left, Math.min(wanted, room.right - reach));
  const baseline = Math.max(room.top + ABOVE * size, Math.min(at.y, room.bottom - BELOW * size));
  const box = { left, right: left + reach, top: baseline - ABOVE * size, bottom: baseline + BELOW * size };
  return { text, left, baseline, size, box };
}

const moved = ({ text, left, baseline, size, box }: PlacedPictureWord, x: Mm, y: Mm): PlacedPictureWord => ({
  text,
  left: left + x,
  baseline: baseline + y,
  size,
  box: { left: box.left + x, right: box.right + x, top: box.top + y, bottom: box.bottom + y },
});

/** What is seen of a panel's lines. */
const stretchesOf = ({ window, items }: PicturePanel, scale: number): readonly Stretch[] =>
  items.flatMap((item) => {
    if (item.kind === 'word' || item.kind === 'area') return [];
    const parts = item.kind === 'line' && PARTING.includes(item.line);
    return item.points.slice(1).flatMap((b, i): readonly Stretch[] => {
      const seen = segmentWithin(window, item.points[i] ?? b, b);
      if (!seen) return [];
      const [from, to] = seen.map(({ x, y }) => ({ x: scale * x, y: scale * y })) as [typeof b, typeof b];
      return [{ a: from, b: to, parts }];
    });
  });

const scaled = ({ left, right, top, bottom }: Box, scale: number): Box => ({
  left: scale * left,
  right: scale * right,
  top: scale * top,
  bottom: scale * bottom,
});
