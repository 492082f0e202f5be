import { describe, expect, test } from 'vitest';
import { readDrawing } from '../../../src/files/read/drawing';
import { curvesBounds, pathEnd, pathLength, pathStart } from '../../../src/plane';
import type { Drawing } from '../../../src/trace';
import { printProblem } from '../../../src/words';

/** Whatever is read, nobody waits for it longer than this, ms: far more than it takes here, for a slow machine. */
const PATIENCE = 20_000;

const pairs = (...codes: readonly (string | number)[]) => codes.join('\n');
const dxf = (entities: string, { units = 4, blocks = '', tables = '' } = {}) =>
  pairs(
    ...[0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, units, 0, 'ENDSEC'],
    ...(tables ? [0, 'SECTION', 2, 'TABLES', tables, 0, 'ENDSEC'] : []),
    ...[0, 'SECTION', 2, 'BLOCKS', ...(blocks ? [blocks] : []), 0, 'ENDSEC'],
    ...[0, 'SECTION', 2, 'ENTITIES', ...(entities ? [entities] : []), 0, 'ENDSEC', 0, 'EOF\n'],
  );
const LINE = pairs(0, 'LINE', 8, 'Seam', 10, 1, 20, 2, 11, 4, 21, 6);

async function drawn(text: string): Promise<Drawing> {
  const read = await readDrawing(text);
  if (!read.ok) throw new Error(read.problems.map((one) => printProblem(one, 'cm')).join('\n'));
  if (!('drawing' in read.value)) throw new Error('has names');
  return read.value.drawing;
}
const told = async (text: string): Promise<string> => {
  const read = await readDrawing(text);
  return read.ok ? '' : read.problems.map((one) => printProblem(one, 'cm')).join('\n');
};
const onlyRun = async (entities: string, more = {}) => {
  const { runs, unread } = await drawn(dxf(entities, more));
  expect([runs.length, unread]).toEqual([1, 0]);
  return runs[0]?.curves ?? [];
};

describe('a DXF drawing', () => {
  test.each([
    [1, 25.4],
    [4, 1],
    [5, 10],
    [0, undefined],
    [99, undefined],
  ])('tells its unit by its header: %s', async (units, unit) =>
    expect((await drawn(dxf(LINE, { units }))).unit).toBe(unit),
  );

  test('has y up, and here y runs down; its layers are names', async () => {
    const { runs } = await drawn(dxf(LINE));
    expect(runs[0]?.names).toEqual(['Seam']);
    expect(pathStart(runs[0]?.curves ?? [])).toEqual({ x: 1, y: -2 });
    expect(pathEnd(runs[0]?.curves ?? [])).toEqual({ x: 4, y: -6 });
  });

  test('has arcs, circles and ellipses as long as they are', async () => {
    const arc = await onlyRun(pairs(0, 'ARC', 10, 0, 20, 0, 40, 300, 50, 350, 51, 80));
    expect(pathLength(arc)).toBeCloseTo((300 * Math.PI) / 2, 3);
    expect(pathLength(await onlyRun(pairs(0, 'CIRCLE', 10, 5, 20, 5, 40, 100)))).toBeCloseTo(200 * Math.PI, 2);
    const ellipse = await onlyRun(pairs(0, 'ELLIPSE', 10, 0, 20, 0, 11, 0, 21, 200, 40, 0.5));
    const { left, right, top, bottom } = curvesBounds(ellipse);
    expect([right - left, bottom - top].map((one) => Math.round(one * 1000) / 1000)).toEqual([200, 400]);
    // Ramanujan’s second approximation, right to a millionth here.
    const h = (1 / 3) ** 2;
    expect(pathLength(ellipse)).toBeCloseTo(Math.PI * 300 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h))), 2);
  });

  test('has polylines with bulges, also where they all but don’t bulge', async () => {
    const closed = [0, 'LWPOLYLINE', 90, 2, 70, 1, 10, 0, 20, 0, 42, 1, 10, 200, 20, 0, 42, 1];
    expect(pathLength(await onlyRun(pairs(...closed)))).toBeCloseTo(200 * Math.PI, 2);
    const nearly = await onlyRun(pairs(0, 'LWPOLYLINE', 90, 2, 10, 0, 20, 0, 42, 4e-15, 10, 20, 20, 0));
    expect(pathEnd(nearly).x).toBe(20);
    expect(pathLength(nearly)).toBe(20);
    const old = pairs(
      ...[0, 'POLYLINE', 70, 0, 0, 'VERTEX', 10, 0, 20, 0, 42, 1, 0, 'VERTEX', 10, 50, 20, 50, 70, 16],
      ...[0, 'VERTEX', 10, 100, 20, 0, 0, 'SEQEND'],
    );
    expect(pathLength(await onlyRun(old))).toBeCloseTo(50 * Math.PI, 3);
  });

  test('has splines: a quarter of a circle with weights, and one of the fifth degree', async () => {
    const half = Math.SQRT1_2;
    const quarter = await onlyRun(
      pairs(
        ...[0, 'SPLINE', 71, 2, 40, 0, 40, 0, 40, 0, 40, 1, 40, 1, 40, 1, 41, 1, 41, half, 41, 1],
        ...[10, 100, 20, 0, 10, 100, 20, 100, 10, 0, 20, 100],
      ),
    );
    expect(pathLength(quarter)).toBeCloseTo(50 * Math.PI, 3);
    // A straight line of degree five, with its points where they belong, is as long as it is straight.
    const knots = [0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1].flatMap((knot) => [40, knot]);
    const points = [0, 1, 2, 3, 4, 5].flatMap((i) => [10, 30 * i, 20, 40 * i]);
    expect(pathLength(await onlyRun(pairs(0, 'SPLINE', 71, 5, ...knots, ...points)))).toBeCloseTo(250, 6);
  });

  test('has blocks inserted, scaled, turned, mirrored and in rows', async () => {
    const blocks = pairs(0, 'BLOCK', 2, 'B', 10, 1, 20, 2, LINE, 0, 'ENDBLK');
    const insert = (...codes: readonly (string | number)[]) =>
      pairs(0, 'INSERT', 8, '0', 2, 'B', 10, 10, 20, 0, ...codes);
    const ends = async (entities: string) =>
      (await drawn(dxf(entities, { blocks }))).runs.map(({ curves }) => {
        const { x, y } = pathEnd(curves);
        return [x, y].map((one) => Math.round(one * 1e6) / 1e6 + 0);
      });
    expect(await ends(insert())).toEqual([[13, -4]]);
    expect(await ends(insert(41, 2, 42, 2))).toEqual([[16, -8]]);
    expect(await ends(insert(50, 90))).toEqual([[6, -3]]);
    expect(await ends(insert(41, -1))).toEqual([[7, -4]]);
    expect(await ends(insert(230, -1))).toEqual([[-13, -4]]);
    expect(await ends(insert(70, 2, 71, 2, 44, 100, 45, 50))).toEqual([
      [13, -4],
      [113, -4],
      [13, -54],
      [113, -54],
    ]);
    const { runs } = await drawn(dxf(insert(), { blocks }));
    expect(runs[0]?.names).toEqual(['Seam', 'B']);
  });

  test('leaves out layers that are off or frozen, and counts what lies aslant', async () => {
    const layer = (name: string, colour: number, flags: number) => [0, 'LAYER', 2, name, 62, colour, 70, flags];
    const tables = pairs(...layer('Off', -3, 0), ...layer('Frozen', 3, 1), ...layer('Seam', 3, 0));
    const off = LINE.replace('Seam', 'Off');
    expect((await drawn(dxf(pairs(LINE, off, LINE.replace('Seam', 'Frozen')), { tables }))).runs).toHaveLength(1);
    const aslant = pairs(0, 'CIRCLE', 10, 0, 20, 0, 40, 5, 210, 0.7, 230, 0.7);
    const lost = pairs(0, 'LINE', 10, 'NaN', 20, 0, 11, 1, 21, 1);
    expect((await drawn(dxf(pairs(LINE, aslant, lost)))).unread).toBe(2);
  });

  test('has its notes in plain words', async () => {
    const note = pairs(0, 'MTEXT', 10, 3, 20, 4, 1, '{\\fSans|b0;\\H2.5x;Front}\\Pcut 2');
    const { words } = await drawn(dxf(pairs(LINE, note)));
    expect(words).toEqual([{ text: 'Front cut 2', at: { x: 3, y: -4 } }]);
  });
});

describe('a drawing that was made to do harm', () => {
  const nested = Array.from({ length: 20 }, (_, i) =>
    pairs(
      0,
      'BLOCK',
      2,
      `B${i}`,
      10,
      0,
      20,
      0,
      ...Array(9).fill(pairs(0, 'INSERT', 2, `B${i + 1}`)),
      LINE,
      0,
      'ENDBLK',
    ),
  ).join('\n');
  const itself = pairs(0, 'BLOCK', 2, 'B0', 10, 0, 20, 0, LINE, 0, 'INSERT', 2, 'B0', 0, 'ENDBLK');
  const first = pairs(0, 'INSERT', 2, 'B0');
  test.each([
    ['blocks in themselves', dxf(first, { blocks: itself }), /inserted in each other more than 16 deep/],
    ['blocks in blocks', dxf(first, { blocks: nested }), /inserts more than 20000 parts|more than 16 deep/],
    ['rows of blocks', dxf(pairs(first, 70, 30_000, 71, 30_000), { blocks: itself }), /inserts more than 20000/],
    ['a hundred thousand lines', dxf(Array(100_001).fill(LINE).join('\n')), /more than 100000 curves/],
    ['a line of a million points', dxf(pairs(0, 'LWPOLYLINE', '10\n1\n20\n1\n'.repeat(1_000_000).trim())), /points/],
    ['codes that are none', dxf(LINE).replace('\n10\n', '\nten\n'), /a group code isn’t a number/],
    ['nothing but a section', pairs(0, 'SECTION', 2, 'ENTITIES', 0, 'EOF'), /has no line that can be read/],
    ['nothing finite', dxf(pairs(0, 'LINE', 10, '1e999', 20, 0, 11, 1, 21, 1)), /has no line that can be read/],
    ['another kind of file', 'PK\x03\x04\0\0', /is no SVG drawing that can be read/],
  ])(
    'is refused in one sentence: %s',
    async (_, text, sentence) => {
      const said = await told(text);
      expect(said).toMatch(sentence);
      expect(said.split('\n')).toHaveLength(1);
    },
    PATIENCE,
  );

  test('is read without what it would run or fetch', async () => {
    const { runs, unread } = await drawn(
      '<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="http://www.w3.org/1999/xlink" width="90mm" viewBox="0 0 90 90"><script>globalThis.harmed = true</script><image x:href="http://example.com/a.png"/><use href="http://example.com/b.svg#p"/><path onload="globalThis.harmed = true" d="M0 0L90 0"/></svg>',
    );
    expect([runs.length, unread]).toEqual([1, 1]);
    expect(globalThis).not.toHaveProperty('harmed');
  });
});

describe('an SVG drawing', () => {
  const svg = (inner: string, size = 'width="90mm" viewBox="0 0 90 90"') =>
    `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${inner}</svg>`;

  test('tells no unit where its size is in pixels or not told', async () => {
    expect((await drawn(svg('<path d="M0 0L9 0"/>'))).unit).toBe(1);
    expect((await drawn(svg('<path d="M0 0L9 0"/>', 'width="90" viewBox="0 0 9 9"'))).unit).toBeUndefined();
  });

  test('has rectangles, circles and ellipses, its words and its layers', async () => {
    const { runs, words } = await drawn(
      svg(
        '<g id="Layer 1"><rect x="1" y="2" width="30" height="40"/><circle cx="5" cy="5" r="4"/><ellipse rx="3" ry="2"/></g><g transform="translate(10 0)"><text x="1" y="2"><tspan>Back</tspan></text></g>',
      ),
    );
    expect(runs.map(({ curves }) => Math.round(pathLength(curves) * 10) / 10)).toEqual([140, 25.1, 15.9]);
    expect(runs[0]?.names).toEqual(['Layer 1']);
    expect(words).toEqual([{ text: 'Back', at: { x: 11, y: 2 } }]);
  });
});
