import DxfParser, { type ITextEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { cutCurves, HEM_FINISHES, type Piece, WAIST_FINISHES } from '../../../src/edges';
import { flattenCurves, outlineArea, type Point, pathLength } from '../../../src/plane';
import { draftWith } from '../drafts';
import { ezdxfIsHere, parsedLines, parsedPoints, type ReadDxf, type ReadLine, readWithEzdxf } from '../read-dxf';
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
  // Every finish of the waist and of the hem.
  ...WAIST_FINISHES.map((waist, i) => {
    const hem = HEM_FINISHES[i % HEM_FINISHES.length] as (typeof HEM_FINISHES)[number];
    const cloth = { kind: 'knit', stretch: 0.5 } as const;
    return draftWith({ name: `${waist}, ${hem}`, cloth, waist: { finish: waist }, hem: { finish: hem } });
  }),
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

/** From a point to the nearest stretch of a closed line. */
const awayFrom = ([x, y]: readonly [number, number], { points }: ReadLine): number =>
  Math.min(
    ...points.map(([ax, ay], i) => {
      const [bx, by] = points[(i + 1) % points.length] as readonly [number, number];
      const [dx, dy] = [bx - ax, by - ay];
      const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(ax + t * dx - x, ay + t * dy - y);
    }),
  );

/** A notch's line is straight across the allowance, where the cut line may lean or bend, mm. */
const NEAR_TICK = 0.5;

/** A point for each notch, two for a double one, on the cut line and at the end of the notch's line. */
function expectNotches({ lines, points }: Pick<ReadDxf, 'lines' | 'points'>, pieces: readonly Piece[]): void {
  const notches = pieces.flatMap((piece) => piece.notches);
  expect(points).toHaveLength(notches.reduce((sum, { count }) => sum + count, 0));
  const cut = lines.filter(({ layer }) => layer === '1');
  const ends = lines.filter(({ layer }) => layer === '4').map((line) => line.points.at(-1) ?? [0, 0]);
  for (const { layer, at } of points) {
    expect(layer).toBe('4');
    expect(Math.min(...cut.map((line) => awayFrom(at, line)))).toBeLessThan(0.05);
    expect(Math.min(...ends.map(([x, y]) => Math.hypot(x - at[0], y - at[1])))).toBeLessThan(NEAR_TICK);
  }
}

describe.each(files)('$draft.project.name as DXF $kind', ({ draft, kind, text }) => {
  const lines = parsedLines(text);

  test('a reader from the registry finds the pieces’ closed cut lines, of the same length and area', () => {
    expectCutLines(lines, draft.pieces);
  });

  test('has each notch as a point on the cut line, beside its line', () => {
    expectNotches({ lines, points: parsedPoints(text) }, draft.pieces);
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
    // A buttonhole has a bar at each end.
    const bars = 2 * quarters.filter(({ kind }) => kind === 'opening').length;
    expect(on('4')).toHaveLength(notches.reduce((sum, { count }) => sum + count, 0) + quarters.length + bars);
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

test('ezdxf reads every file without a fault, and finds the same cut lines, notches and words', () => {
  if (!ezdxfIsHere()) return;
  const read = readWithEzdxf(files.map(({ text }) => text));
  for (const [i, { draft, kind }] of files.entries()) {
    const found = read[i];
    if (!found) throw new Error('not read');
    expect(found.faults).toBe(0);
    expect([found.version, found.units]).toEqual(kind === '2007' ? ['AC1021', 4] : ['AC1009', 0]);
    expectCutLines(found.lines, draft.pieces);
    expectNotches(found, draft.pieces);
    const words = draft.pieces.flatMap((piece) => piece.texts);
    expect(found.texts.map(({ height }) => height)).toEqual(words.map(({ size }) => expect.closeTo(size, 3)));
    expect(found.texts.every(({ layer }) => layer === '15')).toBe(true);
    if (kind === '2007')
      expect(found.texts.map(({ text }) => text)).toEqual(
        words.map(({ text }) => text.replace('\n', ' ').replace('%%', '% %')),
      );
  }
});
