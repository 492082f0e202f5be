import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { blockFromReading, blocksTaken, outlineScaled, outlinesOf, readingOf, widestGap } from '../../../src/trace';
import { drawingOf, edgesOff, edgesWrong, takenOf } from './drawn-blocks';
import { dxfOfLines, explodedLines, FORTY_PIECES, NAMELESS } from './written-drawings';

const fixture = (name: string) => readFileSync(new URL(`../fixtures/${name}`, import.meta.url), 'utf8');

describe('drawings that other programs wrote', () => {
  test.each(['inkscape.svg', 'librecad.dxf', 'ezdxf-bulges.dxf', 'ezdxf-rational.dxf', 'ezdxf-inches.dxf'])(
    'come in with every edge within 0.05 mm: %s',
    async (name) => {
      const { pair } = await takenOf(fixture(name));
      expect(edgesWrong(pair)).toEqual([]);
    },
  );

  test('that tell no unit are refused by themselves, and come in once it is told', async () => {
    const drawing = await drawingOf(fixture('inkscape.dxf'));
    expect(drawing.unit).toBeUndefined();
    const refused = blocksTaken(drawing);
    expect(refused.ok ? [] : refused.problems.map(({ phrase }) => phrase.template)).toEqual([
      expect.stringMatching(/in which unit/),
    ]);
    const taken = blocksTaken({ ...drawing, unit: 1, words: [{ text: 'front', at: { x: 180, y: -500 } }] });
    if (!taken.ok) throw new Error('refused');
    expect(edgesWrong(taken.value.pair)).toEqual([]);
  });

  test('an edge that is off by a tenth of a millimetre is told', async () => {
    const { pair } = await takenOf(NAMELESS.replaceAll('-94.401 969.36', '-94.301 969.36'));
    expect(edgesWrong(pair)).toEqual([expect.stringMatching(/^back hem is off by 0\.1/)]);
  });
});

describe('the same blocks', () => {
  const svgWith = (transform: string, attributes = '') =>
    NAMELESS.replace(/<g fill/g, `<g transform="${transform}" fill`).replace(/<svg /, `<svg ${attributes}`);

  test.each(['rotate(90)', 'rotate(-37)', 'scale(-1 1)', 'rotate(140) scale(1 -1)'])(
    'turned or mirrored by %s',
    async (transform) => expect(edgesWrong((await takenOf(svgWith(transform))).pair)).toEqual([]),
  );

  test('in points', async () => {
    const inPoints = NAMELESS.replace(/width="([\d.]+)mm" height="([\d.]+)mm"/, (_, w: string, h: string) => {
      const points = (mm: string) => ((Number(mm) * 72) / 25.4).toFixed(6);
      return `width="${points(w)}pt" height="${points(h)}pt"`;
    });
    expect(inPoints).toMatch(/pt"/);
    expect(edgesWrong((await takenOf(inPoints)).pair)).toEqual([]);
  });

  test('cut into lines of two points, in inches', async () => {
    const { pair, told } = await takenOf(dxfOfLines(explodedLines(4), 1, 25.4));
    // Where a centre line ends that runs smoothly into its curve, lines of 4 mm tell to within one of them.
    const { 'front centre': a, 'front crotch': b, 'back centre': c, 'back crotch': d, ...others } = edgesOff(pair);
    expect(Math.max(...[a, b, c, d].map((off) => Math.abs(off ?? 9)))).toBeLessThan(4);
    expect(Math.max(...Object.values(others).map(Math.abs))).toBeLessThan(0.05);
    expect(told.map(({ template }) => template).join()).toMatch(/front has no plain hip line/);
    expect(pair.front.edges.inseam.length).toBeLessThan(20);
  });

  test('with forty other pieces beside them are found, and not taken by themselves', async () => {
    const drawing = await drawingOf(dxfOfLines(explodedLines(4), 4, 1, FORTY_PIECES));
    const refused = blocksTaken(drawing);
    expect(refused.ok ? [] : refused.problems.map(({ value }) => value)).toEqual([42]);
    const outlines = outlinesOf(drawing, widestGap(drawing));
    expect(outlines).toHaveLength(42);
    const [back, front] = outlines.map((outline) => readingOf(outlineScaled(outline, 1)));
    if (!back || !front) throw new Error('no outlines');
    const pair = { front: blockFromReading('front', front), back: blockFromReading('back', back) };
    const {
      'front centre': _,
      'front crotch': __,
      'back centre': ___,
      'back crotch': ____,
      ...others
    } = edgesOff(pair);
    expect(Math.max(...Object.values(others).map(Math.abs))).toBeLessThan(0.05);
  });
});

describe('what is not plain', () => {
  const problems = async (text: string): Promise<readonly string[]> => {
    const taken = blocksTaken(await drawingOf(text));
    return taken.ok ? [] : taken.problems.map(({ field, phrase }) => `${field} ${phrase.template}`);
  };
  const without = (...styles: readonly RegExp[]) =>
    styles.reduce((text, style) => text.replace(style, ''), NAMELESS.replace(/<path [^>]*dasharray[^>]*>/g, ''));

  test('a block without a grainline is asked for one', async () => {
    const told = await problems(
      without(/<path [^>]*stroke-width="0.3"[^>]*>/g, /<path [^>]*stroke-width="0.25"[^>]*>/g),
    );
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/^front has no grainline/);
  });

  test('one outline is too few, three are too many', async () => {
    const [, first = ''] = /(<g fill[\s\S]*?<\/g>\s*<\/g>)/.exec(NAMELESS) ?? [];
    expect(first.length).toBeGreaterThan(100);
    expect((await problems(NAMELESS.replace(first, ''))).join()).toMatch(/closed outlines, where a front and a back/);
    const third = NAMELESS.replace('</svg>', `<g transform="translate(2000)">${first}</g></svg>`);
    expect((await problems(third)).join()).toMatch(/closed outlines, where a front and a back/);
  });

  test('an outline that is not closed is none; a gap of a pencil line is closed', async () => {
    const open = (by: number) => NAMELESS.replace('M-339.787 969.36', `M${-339.787 + by} 969.36`);
    expect((await problems(open(3))).join()).toMatch(/closed outlines/);
    const { told } = await takenOf(open(0.3));
    expect(told.map(({ template }) => template).join()).toMatch(/Gaps of up to/);
  });

  test('blocks of thirty metres are none', async () => {
    expect((await problems(dxfOfLines(explodedLines(20), 1, 1))).join()).toMatch(/is its unit the one/);
  });

  test('a page round both blocks is no outline', async () => {
    const framed = NAMELESS.replace('</svg>', '<rect x="-444" y="-57" width="809" height="1045"/></svg>');
    expect(await problems(framed)).toEqual([]);
  });
});
