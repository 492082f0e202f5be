import { describe, expect, it } from 'vitest';
import { type Leg, legFlaw, legGrown } from '../../src/leg';
import { curveMap, pathLength, pathReverse } from '../../src/plane';
import { draft, exampleProject } from '../../src/project';

const example = (() => {
  const result = draft(exampleProject);
  if (!result.ok) throw new Error('refused');
  return result.value.leg;
})();
const withFront = (front: Partial<Leg['front']>): Leg => ({ ...example, front: { ...example.front, ...front } });

describe('a leg that can not be cut', () => {
  it('is told from one that can', () => {
    expect(legFlaw(example, false)).toBeUndefined();
  });

  it('where a line runs off without end, or is nowhere', () => {
    for (const x of [Number.NaN, Number.POSITIVE_INFINITY, 1e6])
      expect(
        legFlaw(
          withFront({
            crotchPoint: { x, y: 0 },
            crotch: example.front.crotch.map(([a, b, c]) => [a, b, c, { x, y: 0 }]),
          }),
          false,
        ),
      ).toBe('endless');
  });

  it('where an inseam turns back', () => {
    expect(legFlaw(withFront({ inseam: pathReverse(example.front.inseam) }), false)).toBe('turningBack');
  });

  it('where lines cross', () => {
    const over = example.front.inseam.map((curve) =>
      curveMap(curve, ({ x, y }) => ({ x: x - (y > 700 ? 700 : 0), y })),
    );
    expect(legFlaw(withFront({ inseam: over }), true)).toBe('crossing');
  });

  it('where inseams differ by more than a tenth of a pencil line, but for blocks that were brought along', () => {
    const longer = example.back.inseam.map((curve) =>
      curveMap(curve, ({ x, y }) => ({ x, y: y + (y > 900 ? 0.2 : 0) })),
    );
    const leg: Leg = {
      ...example,
      back: { ...example.back, inseam: longer },
      hem: [[example.hem[0]?.[0], example.hem[0]?.[1], example.hem[0]?.[2], longer.at(-1)?.[3]] as never],
    };
    expect(legFlaw(leg, false)).toBe('unequal');
    expect(legFlaw(leg, true)).toBeUndefined();
  });
});

describe('a leg cut larger', () => {
  it('stays as it is where nothing shrinks', () => {
    expect(legGrown(example, { lengthwise: 1, crosswise: 1 })).toBe(example);
  });

  it('has its levels and its widths where the cloth has grown to', () => {
    const grown = legGrown(example, { lengthwise: 1.05, crosswise: 1.02 });
    for (const level of ['hipLevel', 'crotchLevel', 'kneeLevel'] as const)
      expect(grown[level], level).toBeCloseTo(1.05 * (example[level] ?? Number.NaN), 9);
    for (const part of ['front', 'back'] as const) {
      const [{ hipPoint: to }, { hipPoint: from }] = [grown[part], example[part]];
      expect([to.x, to.y]).toEqual([expect.closeTo(1.02 * from.x, 9), expect.closeTo(1.05 * from.y, 9)]);
    }
  });

  it('keeps its inseams equal and its crotch corners, whatever shrinks', () => {
    for (const [lengthwise, crosswise] of [
      [1.4, 1],
      [1, 1.4],
      [1.05, 1.02],
    ] as const) {
      const grown = legGrown(example, { lengthwise, crosswise });
      expect(pathLength(grown.back.inseam)).toBeCloseTo(pathLength(grown.front.inseam), 5);
      expect(legFlaw(grown, false)).toBeUndefined();
      expect(grown.front.crotchPoint.x).toBeCloseTo(example.front.crotchPoint.x * crosswise, 9);
    }
  });
});
