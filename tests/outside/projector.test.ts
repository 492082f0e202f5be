import { describe, expect, test } from 'vitest';
import { carriedOut, makeFiles } from '../../src/files';
import { projectorTest } from '../../src/sheets';
import { draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { openPdf } from './paper/render';

type Pair = readonly [number, number];
const MM_PER_PT = 25.4 / 72;
const apart = (a: Pair, b: Pair) => Math.hypot(b[0] - a[0], b[1] - a[1]);
const options = { font: printFont(), date: new Date('2026-11-24T12:00:00Z') };

/** A projector that is 4 % too wide, 3 % too low and opens the corner A by 1.8°. */
const thrown = ([x, y]: Pair): Pair => [1.04 * x - 0.97 * y * Math.sin(0.0314), 0.97 * y * Math.cos(0.0314)];
/** A tape on the table is read to a millimetre. */
const read = (length: number) => Math.round(length);
/** What is left then, on a metre. */
const TRUE_AGAIN = 1.5;

/** The straight strokes of a width on each page, as qpdf uncompresses them: in millimetres, down from the top. */
function strokes(bytes: Uint8Array, width: number): readonly (readonly (readonly [Pair, Pair])[])[] {
  const pdf = openPdf(bytes);
  const plain = pdf.plain();
  pdf.close();
  return plain
    .split(/\nstream\n/)
    .slice(1)
    .map((part) => part.split('\nendstream')[0] as string)
    .filter((content) => / re\n| l\n/.test(content))
    .map((content) => {
      const found: (readonly [Pair, Pair])[] = [];
      let wide = 0;
      let from: Pair = [0, 0];
      let path: (readonly [Pair, Pair])[] = [];
      for (const line of content.split('\n')) {
        const parts = line.trim().split(' ');
        const [x = 0, y = 0] = parts.map(Number);
        if (parts.at(-1) === 'w') wide = x * MM_PER_PT;
        if (parts.at(-1) === 'm') from = [x * MM_PER_PT, -y * MM_PER_PT];
        if (parts.at(-1) === 'l') {
          const to: Pair = [x * MM_PER_PT, -y * MM_PER_PT];
          path.push([from, to]);
          from = to;
        }
        if (parts.at(-1) === 'S' && Math.abs(wide - width) < 0.01) found.push(...path);
        if (/^[SfBn]$/.test(parts.at(-1) ?? '')) path = [];
      }
      return found;
    });
}

async function made(kind: 'projector' | 'projector-test', projector: object): Promise<Uint8Array> {
  const draft = draftWith({ leg: { length: 'short' }, projector });
  const [file] = await carriedOut(makeFiles([{ name: 'p', draft }], [kind], options));
  return file?.content as Uint8Array;
}

const { across, down, diagonal } = projectorTest('large', 'cm');
const LINE = 1.5;
/** In the order in which they are drawn. */
const NOMINAL = [across, across, down, down, diagonal, diagonal];

describe('a projector that is corrected by its own test', () => {
  const measured = (async () => {
    const [lines = []] = strokes(await made('projector-test', {}), LINE);
    const lengths = lines.map(([from, to]) => apart(thrown(from), thrown(to)));
    const [ab = 0, , ad = 0, , ac = 0, bd = 0] = lengths.map(read);
    return {
      lines,
      typed: { across: across / ab, down: down / ad, diagonalAC: diagonal / ac, diagonalBD: diagonal / bd },
    };
  })();

  test('shows four lines of known length and their opposites, in the file', async () => {
    const { lines } = await measured;
    expect(lines.map(([from, to]) => apart(from, to))).toEqual(NOMINAL.map((length) => expect.closeTo(length, 2)));
  });

  test('is told to be so on the test’s second page, whose lines are true on the table', async () => {
    const { typed } = await measured;
    const bytes = await made('projector-test', typed);
    const [, second = []] = strokes(bytes, LINE);
    expect(second).toHaveLength(NOMINAL.length);
    for (const [i, [from, to]] of second.entries())
      expect(Math.abs(apart(thrown(from), thrown(to)) / (NOMINAL[i] ?? 0) - 1) * 1000).toBeLessThan(TRUE_AGAIN);
    const pdf = openPdf(bytes);
    const text = pdf.text().replace(/\s+/g, ' ');
    pdf.close();
    expect(text).toMatch(
      /Corrected for one projector: × 0\.96\d* across, × 1\.03\d* down, 1\.8° off the square; the four lengths miss each other by less than 0\.1 cm\./,
    );
    expect(text).toMatch(/The projector is off by 3\.\d %/);
  });

  test('throws the pattern’s grid as true squares of 5 cm, and says how it was corrected', async () => {
    const { typed } = await measured;
    const bytes = await made('projector', typed);
    const [lines = []] = strokes(bytes, LINE / 2);
    const seen = lines.map(([from, to]) => [thrown(from), thrown(to)] as const);
    const way = ([from, to]: (typeof seen)[number]) => Math.atan2(to[1] - from[1], to[0] - from[0]);
    const level = seen.filter((line) => Math.abs(Math.sin(way(line))) < 0.5);
    const upright = seen.filter((line) => Math.abs(Math.sin(way(line))) > 0.5);
    expect(Math.min(level.length, upright.length)).toBeGreaterThan(5);
    const corner = Math.abs(way(upright[0] as never) - way(level[0] as never)) * (180 / Math.PI);
    expect(Math.abs(corner - 90)).toBeLessThan(0.1);
    const steps = (group: typeof seen) =>
      group.slice(1).map(([from], i) => {
        const before = group[i] as (typeof seen)[number];
        const angle = way(before);
        return Math.abs((from[0] - before[0][0]) * Math.sin(angle) - (from[1] - before[0][1]) * Math.cos(angle));
      });
    for (const step of [...steps(level), ...steps(upright)]) expect(Math.abs(step - 50)).toBeLessThan(0.1);
    const pdf = openPdf(bytes);
    expect(pdf.text().replace(/\s+/g, ' ')).toMatch(/1 square = 5 cm .*Corrected for one projector/);
    pdf.close();
  });

  test('is refused where the diagonals can’t belong to the sides', async () => {
    const wrong = { across: 1, down: 1, diagonalAC: 0.97, diagonalBD: 1 };
    for (const kind of ['projector', 'projector-test'] as const)
      await expect(made(kind, wrong)).rejects.toThrow(/these diagonals can’t belong to these sides/);
  });
});
