import DxfParser, { type ITextEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { cutCurves, type Piece } from '../../../src/edges';
import { flattenCurves, outlineArea, type Point, pathLength } from '../../../src/plane';
import { draftWith } from '../drafts';
import { ezdxfIsHere, parsedLines, type ReadLine, readWithEzdxf } from '../read-dxf';
import { writeDxf } from '../written';

// The layers' numbers: ASTM D6673 and ANSI/AAMA-292, as quoted by others; conformity is not claimed.
const drafts = [
  draftWith({ name: 'Ünï\n¾ × 2%%u', body: { label: '1⅜ “A”' } }),
  draftWith({
    waist: { finish: 'separateCasing' },
    hem: { finish: 'contrastBand' },
    pocket: { width: 150, height: 165, facing: 30, part: 'back', count: 2 },
  }),
  draftWith({ body: { hipGirth: 620, waistGirth: 560, bodyRise: 190, insideLeg: 430, hipDepth: 140 }, units: 'inch' }),
];
const files = await Promise.all(
  drafts.flatMap((draft) =>
    (['2007', 'R12'] as const).map(async (kind) => ({ draft, kind, text: await writeDxf(draft, kind) })),
  ),
);

/** The cut lines must be the pieces' own, closed, within 0.05 mm of length and 0.01 % of area. */
function expectCutLines(lines: readonly ReadLine[], pieces: readonly Piece[]): void {
  const cut = lines.filter(({ layer }) => layer === '1');
  expect(cut).toHaveLength(pieces.length);
  for (const [i, piece] of pieces.entries()) {
    const { closed, length, area } = cut[i] as ReadLine;
    const curves = cutCurves(piece);
    expect(closed).toBe(true);
    expect(Math.abs(length - pathLength(curves))).toBeLessThan(0.05);
    expect(Math.abs(area / Math.abs(outlineArea(curves)) - 1)).toBeLessThan(1e-4);
  }
}

describe.each(files)('$draft.project.name as DXF $kind', ({ draft, kind, text }) => {
  const lines = parsedLines(text);

  test('a reader from the registry finds the pieces’ closed cut lines, of the same length and area', () => {
    expectCutLines(lines, draft.pieces);
  });

  test('everything lies at positive places, the waist above the hem: y is up', () => {
    const points = lines.flatMap((line) => line.points);
    expect(Math.min(...points.map(([x]) => x))).toBeGreaterThanOrEqual(0);
    expect(Math.min(...points.map(([, y]) => y))).toBeGreaterThanOrEqual(0);
    const leg = draft.pieces[0] as Piece;
    const own = flattenCurves(cutCurves(leg), 0.01);
    const cut = lines.find(({ layer }) => layer === '1')?.points ?? [];
    const highest = [...own].sort((a, b) => a.y - b.y)[0] as Point;
    const top = [...cut].sort((a, b) => b[1] - a[1])[0] as readonly [number, number];
    // Not mirrored: the highest point stands as far from the left as on the drawing.
    expect(top[0] - Math.min(...cut.map(([x]) => x))).toBeCloseTo(highest.x - Math.min(...own.map(({ x }) => x)), 1);
  });

  test('each meaning has its layer', () => {
    const on = (layer: string) => lines.filter((line) => line.layer === layer);
    expect(new Set(lines.map(({ layer }) => layer))).toEqual(new Set(['1', '4', '7', '8', '14']));
    expect(on('7')).toHaveLength(draft.pieces.length);
    const notches = draft.pieces.flatMap((piece) => piece.notches);
    const quarters = draft.pieces.flatMap(({ lines: own }) =>
      own.filter((line) => line.kind === 'quarter' || line.kind === 'opening'),
    );
    expect(on('4')).toHaveLength(notches.reduce((sum, { count }) => sum + count, 0) + quarters.length);
    const sewn = draft.pieces.flatMap(({ stitchLine, cutLine }) =>
      stitchLine.filter((edge) => cutLine.some((cut) => cut.name === edge.name && cut.allowance > 0)),
    );
    const stitched = draft.pieces.flatMap((piece) => piece.lines.filter((line) => line.kind === 'stitching'));
    const wanted = [...sewn, ...stitched].reduce((sum, { curves }) => sum + pathLength(curves), 0);
    expect(on('14').reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(wanted, 1);
  });

  test('says that it is in millimetres, where its version can', () => {
    const header = new DxfParser().parseSync(text)?.header ?? {};
    expect(header.$INSUNITS).toBe(kind === '2007' ? 4 : undefined);
    expect(header.$ACADVER).toBe(kind === '2007' ? 'AC1021' : 'AC1009');
  });

  test('is the same text every time, and names no one else', async () => {
    expect(await writeDxf(draft, kind)).toBe(text);
    expect(text).not.toMatch(/@|jabiri/i);
  });
});

test('R12 keeps to plain letters: fractions are written out', () => {
  const [, old] = files;
  expect(old?.text).toMatch(/^[\x20-\x7e\r\n]*$/);
  const words = new DxfParser().parseSync(old?.text ?? '')?.entities.filter(({ type }) => type === 'TEXT') ?? [];
  expect(words.map((word) => (word as ITextEntity).text)).toEqual(
    expect.arrayContaining(['Uni 3/4 x 2% %u', '1 3/8 "A"']),
  );
});

test('ezdxf reads every file without a fault, and finds the same cut lines and words', () => {
  if (!ezdxfIsHere()) return;
  const read = readWithEzdxf(files.map(({ text }) => text));
  for (const [i, { draft, kind }] of files.entries()) {
    const found = read[i];
    if (!found) throw new Error('not read');
    expect(found.faults).toBe(0);
    expect([found.version, found.units]).toEqual(kind === '2007' ? ['AC1021', 4] : ['AC1009', 0]);
    expectCutLines(found.lines, draft.pieces);
    const words = draft.pieces.flatMap((piece) => piece.texts);
    expect(found.texts.map(({ height }) => height)).toEqual(words.map(({ size }) => expect.closeTo(size, 3)));
    expect(found.texts.every(({ layer }) => layer === '15')).toBe(true);
    if (kind === '2007')
      expect(found.texts.map(({ text }) => text)).toEqual(
        words.map(({ text }) => text.replace('\n', ' ').replace('%%', '% %')),
      );
  }
});
