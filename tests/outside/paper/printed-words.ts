import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Place } from './pixels';
import type { Word } from './render';

/** Pixels to the millimetre of a page that is drawn without its words: finer than the thinnest line. */
const PIXELS = 5;
/** Paper is lighter than this; the palest line is darker, where it covers half of a pixel. */
const PAPER = 238;
const MM_PER_PT = 25.4 / 72;

/** A line of words as the file sets it: an oblong as high as the font’s lines are. */
export interface SetLine {
  readonly middle: Place;
  /** The direction of its length, length 1. */
  readonly way: Place;
  readonly half: { readonly along: number; readonly across: number };
  readonly pt: number;
}

/** A page whose words are known by their boxes, and whose ink is all that isn’t words. */
export interface WordedPage {
  readonly lines: readonly SetLine[];
  /** As Poppler finds them. */
  readonly words: readonly Word[];
  /** Whether anything but words is drawn in a box, a hair within its rim. */
  readonly isInked: (line: SetLine) => boolean;
}

/**
 * Reads where a PDF sets its words from the file itself, opened up by qpdf: place, slant and size of every line, and the
 * widths of its letters from the font that is in it. Then it is drawn once more by Poppler with all words taken out.
 */
export function wordedPages(bytes: Uint8Array): readonly WordedPage[] {
  const folder = mkdtempSync(join(tmpdir(), 'words-'));
  const at = (name: string) => join(folder, name);
  try {
    writeFileSync(at('it.pdf'), bytes);
    const run = (tool: string, ...args: string[]) => execFileSync(tool, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
    run('qpdf', '--qdf', '--object-streams=disable', at('it.pdf'), at('open.pdf'));
    const open = readFileSync(at('open.pdf'), 'latin1');
    // As long as before, so that all that is told of places in the file stays true.
    const bare = open.replace(/<[0-9a-f]*> Tj/g, (words) => '<> Tj'.padEnd(words.length));
    writeFileSync(at('bare.pdf'), bare, 'latin1');
    run('pdftoppm', '-gray', '-r', `${PIXELS * 25.4}`, at('bare.pdf'), at('page'));
    const pictures = readdirSync(folder)
      .filter((name) => name.endsWith('.pgm'))
      .sort();
    const boxes = run('pdftotext', '-bbox', at('it.pdf'), '-').split('<page ').slice(1);
    const font = fontOf(open);
    return open
      .split(/%% Contents for page \d+\n/)
      .slice(1)
      .map((content, i) => {
        const picture = grayOf(readFileSync(at(pictures[i] as string)));
        const height = Number(/height="([\d.]+)"/.exec(boxes[i] as string)?.[1]) * MM_PER_PT;
        return {
          lines: linesOf(content.slice(0, content.indexOf('endstream')), font, height),
          words: wordsOf(boxes[i] as string),
          isInked: (line) => isInked(picture, line),
        };
      });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

interface Font {
  readonly widths: ReadonlyMap<number, number>;
  readonly ascent: number;
  readonly descent: number;
}

/** The one font of our files, as it describes itself; thousandths of its size. */
function fontOf(open: string): Font {
  const number = (key: string) => Number(new RegExp(`/${key} (-?[\\d.]+)`).exec(open)?.[1]);
  const table = /\/W \[([\s\S]*?)\n {2}\]/.exec(open)?.[1] ?? '';
  const widths = new Map<number, number>();
  for (const [, first, list] of table.matchAll(/(\d+)\s+\[([^\]]*)\]/g))
    for (const [i, width] of (list ?? '').trim().split(/\s+/).entries()) widths.set(Number(first) + i, Number(width));
  return { widths, ascent: number('Ascent'), descent: -number('Descent') };
}

function linesOf(content: string, { widths, ascent, descent }: Font, height: number): readonly SetLine[] {
  return [...content.matchAll(/BT\n([\s\S]*?)ET\n/g)].flatMap(([, block = '']): readonly SetLine[] => {
    const pt = Number(/ ([\d.]+) Tf/.exec(block)?.[1]);
    const turned = /([-\d.]+) ([-\d.]+) [-\d.]+ [-\d.]+ ([-\d.]+) ([-\d.]+) Tm/.exec(block)?.slice(1).map(Number);
    const level = /^([-\d.]+) ([-\d.]+) Td/m.exec(block)?.slice(1).map(Number);
    const [a = 1, b = 0, x = 0, y = 0] = turned ?? [1, 0, ...(level ?? [])];
    const glyphs = /<([0-9a-f]+)> Tj/.exec(block)?.[1]?.match(/.{4}/g) ?? [];
    if (glyphs.length === 0) return [];
    const width = glyphs.reduce((sum, glyph) => sum + (widths.get(Number.parseInt(glyph, 16)) ?? 0), 0);
    const em = pt * MM_PER_PT;
    // Up in the file, down here.
    const way = { x: a, y: -b };
    const up = { x: way.y, y: -way.x };
    const half = { along: (width / 2000) * em, across: ((ascent + descent) / 2000) * em };
    const rise = ((ascent - descent) / 2000) * em;
    const start = { x: x * MM_PER_PT, y: height - y * MM_PER_PT };
    return [
      {
        middle: {
          x: start.x + way.x * half.along + up.x * rise,
          y: start.y + way.y * half.along + up.y * rise,
        },
        way,
        half,
        pt,
      },
    ];
  });
}

const wordsOf = (page: string): readonly Word[] =>
  [...page.matchAll(/xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g)].map(
    ([, left, top, right, bottom, text = '']) => {
      const mm = (value?: string) => Number(value) * MM_PER_PT;
      return { text, left: mm(left), top: mm(top), right: mm(right), bottom: mm(bottom) };
    },
  );

/** A picture of grey alone. */
interface Gray {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

function grayOf(file: Buffer): Gray {
  const [head = '', width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 60).toString('latin1')) ?? [];
  return { width: Number(width), height: Number(height), data: file.subarray(head.length) };
}

/** A pixel is looked at if its middle lies this far within the box: then none of it lies outside. */
const WITHIN = 0.75 / PIXELS;

function isInked({ width, height, data }: Gray, { middle, way, half }: SetLine): boolean {
  const reach = {
    x: half.along * Math.abs(way.x) + half.across * Math.abs(way.y),
    y: half.along * Math.abs(way.y) + half.across * Math.abs(way.x),
  };
  const first = (value: number) => Math.max(0, Math.floor(value * PIXELS));
  for (let row = first(middle.y - reach.y); row <= Math.min(height - 1, (middle.y + reach.y) * PIXELS); row += 1) {
    for (
      let column = first(middle.x - reach.x);
      column <= Math.min(width - 1, (middle.x + reach.x) * PIXELS);
      column += 1
    ) {
      if ((data[row * width + column] as number) >= PAPER) continue;
      const [x, y] = [(column + 0.5) / PIXELS - middle.x, (row + 0.5) / PIXELS - middle.y];
      if (
        Math.abs(x * way.x + y * way.y) < half.along - WITHIN &&
        Math.abs(y * way.x - x * way.y) < half.across - WITHIN
      )
        return true;
    }
  }
  return false;
}

/** Whether two lines of words share more than a hair: they don't where a line along a side of one lies between them. */
export function linesMeet(a: SetLine, b: SetLine): boolean {
  const apart = { x: b.middle.x - a.middle.x, y: b.middle.y - a.middle.y };
  return [a.way, b.way].every(({ x, y }) =>
    [
      { x, y },
      { x: -y, y: x },
    ].every((axis) => {
      const reach = (line: SetLine) =>
        line.half.along * Math.abs(line.way.x * axis.x + line.way.y * axis.y) +
        line.half.across * Math.abs(line.way.x * axis.y - line.way.y * axis.x);
      return Math.abs(apart.x * axis.x + apart.y * axis.y) < reach(a) + reach(b) - 2 * WITHIN;
    }),
  );
}
