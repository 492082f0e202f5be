import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Pixels per inch: ten to the millimetre. */
const DPI = 254;
export const PIXELS_PER_MM = DPI / 25.4;

/** One page as Poppler draws it: red, green, blue, row by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** A word that Poppler found, its box in millimetres on the page. */
export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** How long a printer prints a millimetre across the page as it lies, and down it. */
export interface Printer {
  readonly x: number;
  readonly y: number;
}

/** A PDF laid down for the outside tools, to be closed after use. */
export interface OpenPdf {
  readonly pages: number;
  /** A page as it comes out of a printer that prints its sides by these factors too long, 1 if left out. */
  readonly picture: (page: number, printer?: Printer) => Picture;
  readonly words: (page: number) => readonly Word[];
  /** All words in reading order; a form feed ends a page. */
  readonly text: () => string;
  readonly info: () => string;
  /** What qpdf says of the file; throws where it finds an error or a warning. */
  readonly check: () => string;
  /** The file with its streams as plain text, as qpdf writes it. */
  readonly plain: () => string;
  readonly close: () => void;
}

/** Opens PDF bytes with Poppler and qpdf. */
export function openPdf(bytes: Uint8Array): OpenPdf {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  const file = join(folder, 'it.pdf');
  writeFileSync(file, bytes);
  const run = (tool: string, ...args: string[]) => execFileSync(tool, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  const info = run('pdfinfo', file);
  return {
    pages: Number(/^Pages:\s+(\d+)/m.exec(info)?.[1]),
    info: () => info,
    text: () => run('pdftotext', file, '-'),
    check: () => run('qpdf', '--check', file),
    plain: () => run('qpdf', '--qdf', '--object-streams=disable', file, '-'),
    words: (page) => wordsOf(run('pdftotext', '-f', `${page}`, '-l', `${page}`, '-bbox', file, '-')),
    picture: (page, { x, y } = { x: 1, y: 1 }) => {
      const out = join(folder, 'page');
      run(
        'pdftoppm',
        '-rx',
        `${DPI * x}`,
        '-ry',
        `${DPI * y}`,
        '-f',
        `${page}`,
        '-l',
        `${page}`,
        '-singlefile',
        file,
        out,
      );
      return pictureOf(readFileSync(`${out}.ppm`));
    },
    close: () => rmSync(folder, { recursive: true }),
  };
}

const WORD = /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g;
const MM_PER_PT = 25.4 / 72;

function wordsOf(html: string): readonly Word[] {
  return [...html.matchAll(WORD)].map(([, left, top, right, bottom, text]) => ({
    text: text ?? '',
    left: Number(left) * MM_PER_PT,
    top: Number(top) * MM_PER_PT,
    right: Number(right) * MM_PER_PT,
    bottom: Number(bottom) * MM_PER_PT,
  }));
}

/** Poppler's plain picture (netpbm P6): it needs no unpacking, which for thirty pages is most of the time. */
function pictureOf(file: Buffer): Picture {
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('not a picture');
  return { width: Number(head[1]), height: Number(head[2]), data: file.subarray(head[0].length) };
}
