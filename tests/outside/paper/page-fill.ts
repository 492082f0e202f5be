import { execFileSync } from 'node:child_process';
import { constants, inflateSync } from 'node:zlib';
import type { Word } from './render';

/** Pixels per inch: enough to find the lowest ink to half a millimetre and more. */
const DPI = 30;
const MM_PER_PIXEL = 25.4 / DPI;
/** Paler than this is paper. */
const INK = 245;

/**
 * How far down the ink of each page reaches, of the height between its margins, as Poppler draws the pages. The line at
 * the foot, which every page has, is not counted.
 *
 * @param margin at the top and the foot, millimetres
 * @param foot height of the foot's line, above the lower margin
 */
export function pageFills(bytes: Uint8Array, margin: number, foot: number): readonly number[] {
  const pages = execFileSync('pdftoppm', ['-r', `${DPI}`, '-gray', '-'], {
    input: bytes,
    maxBuffer: 1 << 28,
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  const fills: number[] = [];
  let at = 0;
  while (at < pages.length) {
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pages.subarray(at, at + 64).toString('latin1'));
    if (!head) throw new Error('not a picture');
    const [width, height] = [Number(head[1]), Number(head[2])];
    const start = at + head[0].length;
    const printable = height * MM_PER_PIXEL - 2 * margin;
    let row = Math.floor((height * MM_PER_PIXEL - margin - foot) / MM_PER_PIXEL) - 1;
    const inked = (y: number) =>
      pages.subarray(start + y * width, start + (y + 1) * width).some((pixel) => pixel < INK);
    while (row > 0 && !inked(row)) row -= 1;
    fills.push(((row + 1) * MM_PER_PIXEL - margin) / printable);
    at = start + width * height;
  }
  return fills;
}

/** The sizes of type that a PDF's pages are set in, read from its unpacked pages, in points. */
export function typeSizes(bytes: Uint8Array): readonly number[] {
  const file = Buffer.from(bytes);
  const streams = [...file.toString('latin1').matchAll(/\bstream\r?\n/g)].map(
    ({ index, 0: head }) => index + head.length,
  );
  const pages = streams.map((from) => {
    try {
      return inflateSync(file.subarray(from), { finishFlush: constants.Z_SYNC_FLUSH }).toString('latin1');
    } catch {
      return '';
    }
  });
  return [
    ...new Set(pages.flatMap((page) => [...page.matchAll(/^\/F\d+ ([\d.]+) Tf/gm)].map(([, size]) => Number(size)))),
  ];
}

/** A word's letters without the white above and below them, in parts of its box. */
const LETTERS = { above: 0.25, below: 0.2 };

/** Pairs of words that lie on each other. */
export function wordsOnWords(words: readonly Word[]): readonly string[] {
  const boxes = words.map((word) => {
    const height = word.bottom - word.top;
    return { ...word, top: word.top + LETTERS.above * height, bottom: word.bottom - LETTERS.below * height };
  });
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  );
}
