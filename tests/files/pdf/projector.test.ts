import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { drawingInk, inkBounds, placedDrawings, uprightPlaces } from '../../../src/drawing';
import type { Piece } from '../../../src/edges';
import { carriedOut, makeFiles } from '../../../src/files';
import { curveMap } from '../../../src/plane';
import type { Draft } from '../../../src/project';
import { openPdf } from '../../outside/paper/render';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const MM_PER_PT = 25.4 / 72;
const folder = mkdtempSync(join(tmpdir(), 'projector-'));
afterAll(() => rmSync(folder, { recursive: true }));

async function projected(draft: Draft): Promise<Uint8Array> {
  const [file] = await carriedOut(
    makeFiles([{ name: 'p', draft }], ['projector'], { font: printFont(), date: new Date(0) }),
  );
  return file?.content as Uint8Array;
}

/** The first page as Poppler draws it, a pixel a point: grey, row by row. */
function seen(bytes: Uint8Array) {
  const path = join(folder, 'it');
  writeFileSync(path, bytes);
  execFileSync('pdftoppm', ['-r', '72', '-gray', '-f', '1', '-l', '1', '-singlefile', path, path]);
  const file = readFileSync(`${path}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('not a picture');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const grey = file.subarray(head[0].length);
  const column = (x: number) => Array.from({ length: height }, (_, y) => grey[y * width + x] as number);
  return { width, height, grey, column };
}

const short = draftWith({ leg: { length: 'short' }, body: { label: 'B' } });

describe('the projector file', () => {
  const wanted = inkBounds(drawingInk(placedDrawings(short.pieces, uprightPlaces(short.pieces))));
  const work = projected(short);

  test('is one sound page, as large as the pieces and their line, without a margin', async () => {
    const pdf = openPdf(await work);
    try {
      expect(pdf.check()).toMatch(/No syntax or stream encoding errors/);
      expect(pdf.pages).toBe(1);
      const [, width, height] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(pdf.info()) ?? [];
      const line = short.project.projector.line;
      expect(Number(width) * MM_PER_PT).toBeCloseTo(wanted.right - wanted.left + line, 1);
      expect(Number(height) * MM_PER_PT).toBeCloseTo(wanted.bottom - wanted.top + line, 1);
      expect(pdf.words(1).map(({ text }) => text)).toEqual(expect.arrayContaining(['square', 'front', 'back']));
    } finally {
      pdf.close();
    }
  });

  test('shows light lines on a dark ground, over a grid of exactly 5 cm', async () => {
    const { width, height, grey, column } = seen(await work);
    expect(grey.filter((value) => value === 0).length).toBeGreaterThan(0.8 * width * height);
    // The outermost line touches both sides of the page: no margin.
    for (const side of [0, width - 2]) expect(Math.max(...column(side), ...column(side + 1))).toBeGreaterThan(200);
    const lines = Array.from({ length: width - 4 }, (_, i) => i + 2).filter(
      (x) => column(x).filter((value) => value > 8).length > 0.9 * height,
    );
    const squares = Math.floor(((wanted.right - wanted.left) * 72) / 25.4 / ((50 * 72) / 25.4));
    const middles = lines.filter((x) => !lines.includes(x - 1));
    expect(middles.length).toBe(squares);
    for (const [i, x] of middles.entries()) expect(Math.abs(x + 1 - (i + 1) * (50 / MM_PER_PT))).toBeLessThan(2);
  });

  test('turns to dark lines on white, and to two inches, where that is chosen', async () => {
    const projector = { line: 3, ground: 'light' } as const;
    const light = draftWith({ leg: { length: 'short' }, units: 'inch', projector });
    const bytes = await projected(light);
    const { width, height, grey } = seen(bytes);
    expect(grey.filter((value) => value === 255).length).toBeGreaterThan(0.8 * width * height);
    const pdf = openPdf(bytes);
    expect(pdf.text()).toMatch(/1 square = 2 in/);
    pdf.close();
  });

  test('gives a page to each piece where all together are longer than a page can be', async () => {
    const [leg] = short.pieces as [Piece];
    const many = { ...short, pieces: Array.from({ length: 14 }, () => leg) };
    const pdf = openPdf(await projected(many));
    expect(pdf.pages).toBe(14);
    expect(pdf.text()).toMatch(/page 14 of 14/);
    pdf.close();
  });

  test('refuses a piece that alone is longer than a page can be, with a sentence', async () => {
    const [leg] = short.pieces as [Piece];
    const giant = {
      ...leg,
      cutLine: leg.cutLine.map((edge) => ({
        ...edge,
        curves: edge.curves.map((curve) => curveMap(curve, ({ x, y }) => ({ x: 12 * x, y: 12 * y }))),
      })),
    };
    await expect(projected({ ...short, pieces: [giant] })).rejects.toThrow(/projector.*508 cm at most/);
  });
});
