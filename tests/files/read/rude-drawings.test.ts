import { describe, expect, test } from 'vitest';
import { readBlocks } from '../../../src/files/read/blocks';
import { writeBlocksSvg } from '../../../src/files/svg/blocks';
import { loadPathReader } from '../../../src/plane';
import { draft, exampleProject } from '../../../src/project';
import { printProblem } from '../../../src/words';

/** Whatever is read, nobody waits for it longer than this, ms: far more than it takes here, for a slow machine. */
const PATIENCE = 10_000;

const own = draft(exampleProject);
if (!own.ok) throw new Error('refused');
const SVG = writeBlocksSvg(own.value);
const PLAIN = await readBlocks(SVG);

const told = async (text: string): Promise<readonly string[]> => {
  const result = await readBlocks(text);
  return result.ok ? [] : result.problems.map((one) => printProblem(one, 'cm'));
};
const replaced = (from: string | RegExp, to: string) => {
  const text = SVG.replace(from, to);
  expect(text).not.toBe(SVG);
  return text;
};
/** As the plain drawing, to a hundredth of a millimetre. */
const expectPlain = async (text: string) => {
  const rounded = (value: unknown) =>
    JSON.parse(JSON.stringify(value), (_, one) => (typeof one === 'number' ? Math.round(one * 100) / 100 + 0 : one));
  expect(await told(text)).toEqual([]);
  expect(rounded(await readBlocks(text))).toEqual(rounded(PLAIN));
};
const svg = (inner: string, attributes = 'width="800mm" viewBox="0 0 800 1200"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inner}</svg>`;

describe('what moves or hides a line', () => {
  test.each([
    [
      'a style',
      (text: string) => text.replace('<path id="front-hem"', '<path style="transform: scale(2)" id="front-hem"'),
    ],
    [
      'a style of a group',
      (text: string) => text.replace('<g id="front"', '<g style="fill:none;rotate:5deg" id="front"'),
    ],
    [
      'a pivot',
      (text: string) => text.replace('<g id="front"', '<g transform="rotate(9)" transform-origin="50% 50%" id="front"'),
    ],
    [
      'a style sheet',
      (text: string) => text.replace('<g id="front"', '<style>.a,#front{transform:scale(2)}</style><g id="front"'),
    ],
    [
      'a rule that may hold',
      (text: string) => text.replace('<g id="front"', '<style>svg > g:first-child{zoom:2}</style><g id="front"'),
    ],
    [
      'a rule that hides if it holds',
      (text: string) => text.replace('<g id="front"', '<style>g #front{display:none}</style><g id="front"'),
    ],
    [
      'a path drawn by its style',
      (text: string) => text.replace('<path id="front-hem"', '<path style="d:path(\'M0 0\')" id="front-hem"'),
    ],
    [
      'a drawing of unknown size',
      (text: string) =>
        text.replace('<g id="front"', '<svg viewBox="0 0 9 9"><g id="front"').replace('</svg>', '</svg></svg>'),
    ],
    ['a reference', (text: string) => text.replace('<g id="front"', '<use id="front-hem" href="#x"/><g id="front"')],
  ])('is told and not passed over: %s', async (_, change) => {
    const text = change(SVG);
    expect(text).not.toBe(SVG);
    expect((await told(text)).join('\n')).toMatch(/isn’t read|isn’t written in plain numbers/);
  });

  test.each([
    ['a class that hides', '<style>/* { */ .st0{fill:none} .off { DISPLAY : none !important }</style>', 'class="off"'],
    ['a name that hides', '<style><![CDATA[path#front-hem{visibility:hidden}]]></style>', ''],
    ['a style that hides', ' ', 'style="stroke:red; display :none"'],
  ])('is followed where it hides by %s', async (_, sheet, attribute) => {
    const text = replaced('<g id="front"', `${sheet}<g id="front"`).replace(
      '<path id="front-hem"',
      `<path ${attribute} id="front-hem"`,
    );
    expect(await told(text)).toEqual(['front-hem: missing: must be drawn, as a line of that name.']);
  });

  test('is no fault where it does nothing', async () => {
    const sheet = '<style>.a{transform:none;fill:#000} .gone{display:none} text{transform:scale(3)}</style>';
    await expectPlain(
      replaced('<g id="front"', `${sheet}<g style="transform:none;display:inline" class="a" id="front"`),
    );
  });

  test('is followed where drawings lie within the drawing', async () => {
    const [, left, top, wide, high] = /viewBox="([-\d.]+) ([-\d.]+) ([\d.]+) ([\d.]+)"/.exec(SVG)?.map(Number) ?? [];
    const inner = `<svg x="10" y="2em" width="${wide}" height="${2 * (high ?? 0)}" viewBox="${left} ${top} ${wide} ${high}">`;
    const text = SVG.replace(/(<svg[^>]*>)/, `$1${inner.replace('2em', '2mm')}`).replace('</svg>', '</svg></svg>');
    await expectPlain(text);
    expect((await told(text.replace('y="2mm"', 'y="2em"'))).join()).toMatch(/isn’t written in plain numbers/);
    const half = text.replace(
      `width="${wide}" height="${2 * (high ?? 0)}"`,
      `width="${(wide ?? 0) / 2}" height="${high}"`,
    );
    const small = await readBlocks(half);
    if (!small.ok || !PLAIN.ok) throw new Error('refused');
    expect(small.value.front.hipLevel).toBeCloseTo(PLAIN.value.front.hipLevel / 2, 3);
  });

  test('is followed where the drawing fills its frame otherwise', async () => {
    const frame = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(SVG);
    const twice = `width="${2 * Number(frame?.[1])}mm" height="${frame?.[2]}mm"`;
    await expectPlain(replaced(frame?.[0] ?? '', twice));
    const hip = async (ratio: string) => {
      const read = await readBlocks(replaced(frame?.[0] ?? '', `${twice} preserveAspectRatio="${ratio}"`));
      return read.ok ? read.value.front.hipLevel : Number.NaN;
    };
    const plain = await hip('xMinYMax meet');
    expect(await hip('xMidYMid slice')).toBeCloseTo(2 * plain, 3);
    expect(await hip('none')).toBeCloseTo(plain, 3);
  });
});

const read = await loadPathReader();

describe('path data as minifiers write it', () => {
  const PLACE = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const ends = (data: string) => read(data, PLACE)?.map((run) => run.at(-1)?.[3]);

  test('has the flags of its arcs packed into the figures', () => {
    expect(read('M0 0a1 1 0 01.5.5', PLACE)).toEqual(read('M0,0 a 1,1 0 0 1 0.5,0.5', PLACE));
    expect(ends('M0 0a1 1 0 11-.5.5 1 1 0 00.5.5z')?.[0]).toEqual({ x: 0, y: 0 });
    expect(ends('M10 10A5 5 0 0120 10')?.[0]?.x).toBeCloseTo(20, 9);
  });

  test('leaves out all that can be left out', () => {
    expect(ends('m1-.5.5.5-1e1.5')?.[0]?.x).toBeCloseTo(-8.5, 9);
    expect(ends('M0 0H3V4ZL1 1M9 9h1')).toEqual([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 10, y: 9 },
    ]);
  });

  test.each([
    'M',
    'M0',
    'MNaN NaN',
    'M0 0L1e999 0',
    'M0 0a1 1 0 2 1 1 1',
    'L0 0',
    'M0 0..',
    'M0 0 C1 1',
    'M 0 0 R 1 1 2 2',
  ])('that can not be read is none: %s', (data) => expect(read(data, PLACE)).toBeUndefined());

  test.each(['M0 0', 'M0 0Z', 'M1 1L1 1', 'M0 0M5 5m0 0z'])('that draws nothing has no run: %s', (data) =>
    expect(read(data, PLACE)).toEqual([]),
  );

  test('is told to be missing where a line of it draws nothing', async () => {
    const text = replaced(/(<path id="front-hem"[^>]* d=")[^"]*/, '$1M0 0L0 0');
    expect(await told(text)).toEqual(['front-hem: missing: must be drawn, as a line of that name.']);
  });
});

describe('drawings that were made to be slow', () => {
  const many = (count: number, one: string) => svg(one.repeat(count));
  test.each([
    ['lines of other names', many(19_000, '<path d="M0 0L1 1"/>'), /no line of a block/],
    ['elements', many(500_000, '<g/>'), /more than 60000 elements/],
    ['groups in groups', svg('<g id="front-hem">'.repeat(200_000)), /nested more than 200 levels/],
    ['lines of a block', many(3000, '<path id="front-hem" d="M0 0L1 1"/>'), /more than 2000 lines/],
    ['pieces of an edge', many(1900, '<path id="front-hem" d="M0 0L1 1"/>'), /front-hem: 1900: has 1900 curves/],
    ['runs of a path', svg(`<path id="front-hem" d="${'M0 0h9'.repeat(10_000)}"/>`), /has 10000 curves/],
    ['a path', svg(`<path id="front-hem" d="M0 0${'h1v1'.repeat(1_000_000)}"/>`), /can’t be read as a path/],
    ['a transform', svg(`<g transform="${'scale(1)'.repeat(500_000)}"/>`), /can’t be read as a transform/],
    ['a style', svg(`<g style="${'a:b;'.repeat(1_000_000)}"/>`), /style of more than 10000 letters/],
    [
      'a style sheet',
      svg(`<style>${'/*'.repeat(2_000_000)}</style><path id="front-hem" d="M0 0h1"/>`),
      /style sheet of more than 200 kB/,
    ],
    ['rules', svg(`<style>${'.a{display:none}'.repeat(10_000)}</style>`), /more than 200 rules/],
    [
      'a name',
      svg(`<g id="${'front '.repeat(600_000)}">${'<path d="M0 0"/>'.repeat(19_000)}</g>`),
      /no line of a block/,
    ],
    [
      'attributes',
      svg(`<g ${Array.from({ length: 200_000 }, (_, i) => `a${i}=""`).join(' ')}/>`),
      /more than 300 attributes/,
    ],
    ['entities', `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${svg('<g id="&b;"/>')}`, /is no SVG drawing/],
    ['white space', svg('', `width="${' '.repeat(2_000_000)}x!"`), /has no true size/],
    ['no markup', '<'.repeat(5_000_000), /is no SVG drawing/],
  ])(
    'are refused at once: %s',
    async (_, text, sentence) => {
      expect((await told(text)).join('\n')).toMatch(sentence);
    },
    PATIENCE,
  );
});

test('a line of another namespace, which only calls itself a path, is none', async () => {
  await expectPlain(replaced('<g id="front"', '<x:path xmlns:x="urn:x" id="front-hem" d="M0 0L9 9"/><g id="front"'));
});

test.each(['1e999mm', '0mm', '-5mm', '21000mm', '5px', '100%', '.mm', 'NaNmm'])(
  'a width that tells no size is refused: %s',
  async (width) => expect((await told(svg('', `width="${width}"`))).join()).toMatch(/no true size|wider than any/),
);
