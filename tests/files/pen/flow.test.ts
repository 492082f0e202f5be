import { describe, expect, test } from 'vitest';
import { type Flow, flowBalanced, flowStrips } from '../../../src/files/pen/flow';
import { gridColumns, gridSpan, pageGrid } from '../../../src/files/pen/page-grid';
import { passageStrips } from '../../../src/files/pen/passage-strips';
import type { Strip } from '../../../src/files/pen/strip';
import { TYPE } from '../../../src/files/pen/type-scale';

/** Every letter as wide as the font size in tenths of a millimetre. */
const widthOf = (text: string, pt: number) => ([...text].length * pt) / 10;
const strip = (height: number, more: Partial<Strip> = {}): Strip => ({ above: 0, height, draw: () => {}, ...more });
const column = (left: number, bottom = 100) => ({ left, right: left + 40, top: 0, bottom });
const places = ({ laid }: Flow) => laid.map(({ left, top }) => [left, top]);

describe('filling columns', () => {
  test('the white above a strip is dropped where it begins a column', () => {
    const flow = flowStrips(
      [strip(60, { above: 5 }), strip(30, { above: 5 }), strip(30, { above: 5 })],
      [column(0), column(50)],
      0,
    );
    expect(places(flow)).toEqual([
      [0, 0],
      [0, 65],
      [50, 0],
    ]);
    expect(flow.bottom).toBe(95);
  });

  test('a heading goes with what it heads, and what finds no room comes back', () => {
    const flow = flowStrips([strip(80), strip(10, { stays: true }), strip(20)], [column(0)], 0);
    expect(flow.laid.length).toBe(1);
    expect(flow.left.map(({ height }) => height)).toEqual([10, 20]);
  });

  test('a group waits for the next page where this one is full enough, and is parted where it is not', () => {
    const group = [strip(20, { groups: 3 }), strip(20), strip(20)];
    expect(flowStrips([strip(70), ...group], [column(0)], 66).laid.length).toBe(1);
    expect(flowStrips([strip(50), ...group], [column(0)], 66).laid.length).toBe(3);
  });

  test('what is higher than a page is set all the same, once', () => {
    const flow = flowStrips([strip(300), strip(10)], [column(0)], 66);
    expect(flow.laid.length).toBe(1);
    expect(flow.left.length).toBe(1);
    // Lower down on a page it waits for the next one.
    expect(flowStrips([strip(300), strip(10)], [column(0)], 66, false).laid).toEqual([]);
  });

  test('columns end at one height where they can', () => {
    const strips = Array.from({ length: 9 }, () => strip(10));
    const flow = flowBalanced(strips, (lower) => [column(0, lower), column(50, lower)], {
      top: 0,
      bottom: 100,
      least: 66,
      step: 1,
    });
    expect(flow.bottom).toBe(50);
    expect(flow.left).toEqual([]);
  });
});

describe('laying passages', () => {
  test('a caution is one strip, a list one for each line, and the first line of an item never stands alone', () => {
    const [list, caution] = [
      passageStrips([{ kind: 'list', sign: '•', items: ['a few words that take three lines here'] }], 14, widthOf),
      passageStrips([{ kind: 'caution', label: 'Care:', text: 'a few words that take lines' }], 14, widthOf),
    ];
    expect(caution.length).toBe(1);
    expect(list.length).toBeGreaterThan(2);
    expect([list[0]?.stays, list.at(-2)?.stays, list.at(-1)?.stays]).toEqual([true, true, false]);
  });

  test('words beside a picture take the whole width once they are past it', () => {
    const widths: number[] = [];
    const measured = (text: string, pt: number) => {
      widths.push(widthOf(text, pt));
      return widthOf(text, pt);
    };
    const strips = passageStrips(
      [
        {
          kind: 'beside',
          share: 0.4,
          picture: { ratio: 0.2, draw: () => {} },
          passages: [
            { kind: 'list', sign: '•', items: ['one two three four five', 'one two three four five six seven'] },
          ],
        },
      ],
      40,
      measured,
    );
    // The first item and the picture are one strip; the second needs no more than its two lines.
    expect(strips.length).toBe(3);
    expect(Math.max(...widths)).toBeLessThanOrEqual(40);
  });
});

test('the columns of the grid fill the page between its margins, a gutter between two, on either paper', () => {
  for (const [inches, lying] of [
    [false, false],
    [true, false],
    [true, true],
  ] as const) {
    const grid = pageGrid(inches, lying);
    const [first, second, third] = gridColumns(grid, 3, 0, 10);
    expect(first?.left).toBeCloseTo(grid.margin, 9);
    expect((second?.left ?? 0) - (first?.right ?? 0)).toBeCloseTo(grid.gutter, 9);
    expect(third?.right).toBeCloseTo(grid.width - grid.margin, 9);
    expect(gridSpan(grid, 0, 12).right).toBeCloseTo(grid.width - grid.margin, 9);
  }
});

test('no size of type is under 8 pt', () => {
  expect(Math.min(...Object.values(TYPE).map(({ pt }) => pt))).toBeGreaterThanOrEqual(8);
});
