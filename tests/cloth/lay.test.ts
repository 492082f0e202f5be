import { describe, expect, test } from 'vitest';
import { type ClothChoices, clothPlan, clothWidths, type Lay, placedPoint } from '../../src/cloth';
import { clothOf, type Draft, draft, exampleProject, type Project, shoppingOf } from '../../src/project';

function drafted(change: Partial<Project> = {}): Draft {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error('the example was refused');
  return result.value;
}

const whole = drafted();

function layOf(d: Draft, change: Partial<ClothChoices> = {}): Lay {
  const { answer } = clothPlan(d.pieces, { ...d.project.cloth, ...change });
  if (!answer.fits) throw new Error('does not fit');
  return answer.lay;
}

describe('the lay of two legs', () => {
  test('end for end is never longer than one way', () => {
    for (const width of [900, 1150, 1400, 1500, 1700]) {
      const [free, oneWay] = [false, true].map((way) => layOf(whole, { width, layout: 'single', oneWay: way }));
      expect(free?.lengthNeeded).toBeLessThanOrEqual((oneWay?.lengthNeeded ?? 0) + 1e-6);
      expect(oneWay?.placements.every(({ turn }) => turn === 0)).toBe(true);
    }
  });

  test('folded crosswise counts both layers, and both legs come of one cut', () => {
    const lay = layOf(whole, { layout: 'foldedCrosswise' });
    expect(lay.placements).toHaveLength(1);
    expect(lay.placements[0]?.copies).toEqual([1, 2]);
    expect(lay.lengthNeeded).toBeCloseTo(2 * lay.table.length, 9);
  });

  test('the best layout takes a fold where it costs less than 5 cm, else the shortest', () => {
    const wide = layOf(whole, { width: 1900, layout: 'best' });
    expect(wide.layout).toBe('foldedLengthwise');
    const usual = layOf(whole, { width: 1500, layout: 'best' });
    expect(usual.layout).toBe('single');
    expect(usual.lengthNeeded).toBeLessThan(layOf(whole, { width: 1500, layout: 'foldedCrosswise' }).lengthNeeded - 50);
  });
});

describe('a repeat', () => {
  const hems = (lay: Lay) => lay.placements.map(({ at }) => at.y);

  test('the same way up, both hems lie on the same place of the check, and one repeat more is bought', () => {
    const repeat = 170;
    const lay = layOf(whole, { layout: 'single', oneWay: true, repeat });
    const [a = 0, b = 0] = hems(lay);
    const steps = (b - a) / repeat;
    expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
    const plain = layOf(whole, { layout: 'single', oneWay: true });
    expect(lay.toBuy).toBeGreaterThan(plain.toBuy + repeat - 1e-6);
    // And the lay without a repeat is no multiple of it by chance.
    const [c = 0, d = 0] = hems(plain);
    expect(Math.abs((d - c) / repeat - Math.round((d - c) / repeat))).toBeGreaterThan(1e-3);
  });

  test('end for end, both side lines lie on the same place of the stripe', () => {
    const repeatAcross = 110;
    const lay = layOf(whole, { width: 1120, layout: 'single', repeatAcross });
    const [a, b] = lay.placements;
    if (!a || !b) throw new Error('two legs');
    const shift = (b.at.x - a.at.x) / repeatAcross;
    expect(a.turn).not.toBe(b.turn);
    expect(Math.abs(shift - Math.round(shift))).toBeLessThan(1e-6);
    expect(lay.lengthNeeded).toBeGreaterThanOrEqual(
      layOf(whole, { width: 1120, layout: 'single' }).lengthNeeded - 1e-6,
    );
  });
});

describe('washing', () => {
  test('before cutting: the width after it counts, the length before it is bought', () => {
    const lay = layOf(whole, { shrinkLength: 0.05, shrinkWidth: 0.04, width: 1500 });
    expect(lay.clothWidth).toBeCloseTo(1440, 9);
    expect(lay.toBuy).toBeCloseTo((lay.lengthNeeded + 50) / 0.95, 9);
  });

  test('not before cutting: the pieces are larger, the cloth is taken as it is', () => {
    const cloth = { ...exampleProject.cloth, washFirst: false, shrinkLength: 0.05, shrinkWidth: 0.04 };
    const lay = layOf(drafted({ cloth }));
    expect(lay.clothWidth).toBe(1500);
    expect(lay.toBuy).toBeCloseTo(lay.lengthNeeded + 50, 9);
  });
});

describe('a width that is too narrow', () => {
  test('says what is too wide, and what would fit', () => {
    const { answer } = clothPlan(whole.pieces, { ...whole.project.cloth, layout: 'foldedLengthwise' });
    if (answer.fits) throw new Error('the leg is wider than half of the cloth');
    expect(answer.widest.piece.kind).toBe('leg');
    // The other two layouts, and a wider cloth.
    expect(answer.instead).toHaveLength(3);
    const wider = clothPlan(whole.pieces, {
      ...whole.project.cloth,
      layout: 'foldedLengthwise',
      width: answer.widthWanted + 0.01,
    });
    expect(wider.answer.fits).toBe(true);
  });

  test('and is told so beside the others', () => {
    const rows = clothWidths(whole.pieces, { ...whole.project.cloth, width: 700 }, 'cm');
    expect(rows.map(({ width }) => width)).toEqual([700, 900, 1120, 1150, 1400, 1500]);
    expect(rows.map(({ answer }) => answer.fits)).toEqual([false, true, true, true, true, true]);
    expect(rows.filter(({ own }) => own)).toHaveLength(1);
  });
});

describe('what is cut once', () => {
  const pocket = { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const;
  const d = drafted({ pocket, waist: { ...exampleProject.waist, finish: 'separateCasing' } });

  test('is cut through the upper layer, or with its middle on the fold', () => {
    const lay = layOf(d, { layout: 'foldedLengthwise', width: 2000 });
    const layers = lay.placements.map(({ piece, layer }) => `${piece.kind}: ${layer}`);
    expect(layers).toContain('leg: both');
    for (const one of ['casing', 'pocket'])
      expect(layers.some((said) => said === `${one}: upper` || said === `${one}: fold`)).toBe(true);
  });

  test('two pockets come of one cut', () => {
    const two = drafted({ pocket: { ...pocket, count: 2 } });
    const own = layOf(two, { layout: 'foldedCrosswise' }).placements.filter(({ piece }) => piece.kind === 'pocket');
    expect(own.map(({ copies }) => copies)).toEqual([[1, 2]]);
  });
});

test('a band whose stretch goes round it is turned so that its grain lies along the cloth', () => {
  const cloth = { ...exampleProject.cloth, kind: 'knit', stretch: 0.4, width: 2200 } as const;
  const d = drafted({ cloth, waist: { ...exampleProject.waist, finish: 'knitBand' } });
  for (const layout of ['single', 'foldedLengthwise', 'foldedCrosswise'] as const) {
    const band = layOf(d, { layout }).placements.find(({ piece }) => piece.kind === 'waistBand');
    const { grainline } = d.pieces.find(({ kind }) => kind === 'waistBand') ?? {};
    if (!band || !grainline) throw new Error('a band');
    const [upper, lower] = grainline.map((p) => placedPoint(p, band));
    expect(lower?.x).toBeCloseTo(upper?.x ?? Number.NaN, 6);
  }
});

describe('the shopping list', () => {
  const ids = (change: Partial<Project>) => shoppingOf(drafted(change)).map(({ id }) => id);

  test('holds what the choices need, and no more', () => {
    expect(ids({})).toEqual(['cloth', 'waist-elastic', 'thread', 'needle', 'loop', 'tools']);
    const waist = { ...exampleProject.waist, finish: 'elasticAndDrawstring' } as const;
    const hem = { ...exampleProject.hem, finish: 'ribCuff' } as const;
    expect(ids({ waist, hem })).toEqual([
      'cloth',
      'rib-cloth',
      'waist-elastic',
      'waist-cord',
      'openings',
      'thread',
      'needle',
      'loop',
      'tools',
    ]);
  });

  test('a child’s nightwear wants a label', () => {
    const body = {
      ...exampleProject.body,
      ageYears: 6,
      height: 1160,
      waistGirth: 540,
      hipGirth: 620,
      bodyRise: 190,
      insideLeg: 510,
      hipDepth: 140,
    };
    const { crotchLength: _, ...child } = body;
    expect(ids({ body: child })).toContain('nightwear-label');
  });
});

test('a draft is laid once', () => {
  expect(clothOf(whole)).toBe(clothOf(whole));
});
