import { describe, expect, it } from 'vitest';
import { draftBlocks } from '../../src/block';
import { prepareBody } from '../../src/body';
import {
  centresOf,
  finishedInseam,
  joinBlocks,
  type LegChoices,
  leastStraightening,
  legFrom,
  spreadLeg,
} from '../../src/leg';
import {
  type Curve,
  curveMap,
  distance,
  outlineEdge,
  type Point,
  pathEnd,
  pathEndWay,
  pathLength,
  pathStart,
  turned,
} from '../../src/plane';
import { Refusal } from '../../src/words';

const body = prepareBody({ label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 });
const { blocks } = draftBlocks(body, {
  hipEase: 50.8,
  waistEase: 25,
  riseEase: 'auto',
  crotchEase: 'auto',
  balance: 10,
});
const joined = joinBlocks(blocks);
const ANKLE = finishedInseam('ankle', body, blocks.riseEase);
const choices = (some: Partial<LegChoices> = {}): LegChoices => ({
  spread: 0,
  straighten: 0,
  straightenAutomatic: false,
  raiseWaist: 0,
  lowerCrotch: 0,
  inseam: ANKLE,
  ankleInseam: ANKLE,
  shape: 'pyjama',
  hemBody: body,
  kneesOut: 0,
  ...some,
});
const legOf = (some: Partial<LegChoices> = {}) => legFrom(spreadLeg(joined, some.spread ?? 0), choices(some));
const hemOf = (leg: ReturnType<typeof legOf>) => distance(pathStart(leg.hem), pathEnd(leg.hem));

/** The same curves, but for the last figure of the arithmetic. */
function expectSame(curves: readonly Curve[], wanted: readonly Curve[]): void {
  const apart = curves.flatMap((curve, i) => curve.map((p, j) => distance(p, wanted[i]?.[j as 0] ?? p)));
  expect(curves).toHaveLength(wanted.length);
  expect(Math.max(...apart)).toBeLessThan(1e-9);
}

describe('joining', () => {
  it('lets the side lines touch at the hip, and reports the gaps above and below', () => {
    expect(joined.gapAtHip).toBe(0);
    expect(joined.gapAtWaist).toBeGreaterThan(20);
    expect(joined.gapAtKnee).toBeGreaterThan(80);
  });

  it('turns a tilted block upright and aligns the hip levels before it slides', () => {
    const tilt = (p: Point): Point => turned({ x: p.x + 300, y: p.y - 70 }, { x: 40, y: 90 }, 0.3);
    const moved = {
      ...blocks.back,
      edges: blocks.back.edges.map((edge) => ({
        name: edge.name,
        curves: edge.curves.map((curve) => curveMap(curve, tilt)),
      })),
      grainline: [tilt(blocks.back.grainline[0]), tilt(blocks.back.grainline[1])] as const,
    };
    // Turning about the grainline's upper end leaves the levels where that end was put.
    const shift = moved.grainline[0].y - blocks.back.grainline[0].y;
    const again = joinBlocks({
      front: blocks.front,
      back: {
        ...moved,
        hipLevel: blocks.back.hipLevel + shift,
        crotchLevel: blocks.back.crotchLevel + shift,
        kneeLevel: blocks.back.kneeLevel + shift,
      },
    });
    const crotch = (j: typeof joined) => pathStart(outlineEdge(j.back.edges, 'inseam').curves);
    expect(crotch(again).x).toBeCloseTo(crotch(joined).x, 6);
    expect(crotch(again).y).toBeCloseTo(crotch(joined).y, 6);
    expect(again.hipDifference).toBeCloseTo(shift, 9);
  });

  it('moves blocks apart where a side line bulges past the hip', () => {
    const bulge = (p: Point): Point => (p.x < 90 && p.y > 400 && p.y < 650 ? { x: p.x - 220, y: p.y } : p);
    const front = {
      ...blocks.front,
      edges: blocks.front.edges.map((edge) =>
        edge.name === 'side' ? { name: edge.name, curves: edge.curves.map((c) => curveMap(c, bulge)) } : edge,
      ),
    };
    expect(joinBlocks({ front, back: blocks.back }).gapAtHip).toBeGreaterThan(0);
  });

  it('moves the darts with their block', () => {
    const narrow = draftBlocks(
      { ...body, waistGirth: 620 },
      {
        hipEase: 50.8,
        waistEase: 25,
        riseEase: 'auto',
        crotchEase: 'auto',
        balance: 10,
      },
    ).blocks;
    const [before, after] = [joinBlocks(narrow).front.darts, spreadLeg(joinBlocks(narrow), 30).front.darts];
    expect(before.length).toBeGreaterThan(0);
    for (const [i, { left, right, tip }] of before.entries()) {
      const moved = [left, right, tip].map(({ x, y }) => ({ x: x + 15, y }));
      expect([after[i]?.left, after[i]?.right, after[i]?.tip]).toEqual(moved);
    }
  });

  it('spreads by s: the leg grows by s, parallel to the grain', () => {
    const wide = spreadLeg(joined, 25.4);
    const x = (j: typeof joined, part: 'front' | 'back') => pathStart(outlineEdge(j[part].edges, 'inseam').curves);
    expect(x(wide, 'front').x - x(joined, 'front').x).toBeCloseTo(12.7, 9);
    expect(x(wide, 'back').x - x(joined, 'back').x).toBeCloseTo(-12.7, 9);
    expect(x(wide, 'front').y).toBe(x(joined, 'front').y);
  });
});

describe('straightening', () => {
  it('turns the centre lines about the crotch curves’ upper ends, all the way to upright', () => {
    const [leaning, half, upright] = [0, 0.5, 1].map((t) => centresOf(joined, t, 0)) as [
      ReturnType<typeof centresOf>,
      ReturnType<typeof centresOf>,
      ReturnType<typeof centresOf>,
    ];
    for (const part of ['front', 'back'] as const) {
      expect(half[part].curveEnd).toEqual(leaning[part].curveEnd);
      expect(half[part].lean).toBeCloseTo(leaning[part].lean / 2, 9);
      expect(upright[part].lean).toBeCloseTo(0, 9);
      expect(upright[part].way.x).toBeCloseTo(0, 9);
    }
  });

  it('keeps the crotch end and changes the crotch length by 2 mm at most, all the way to upright', () => {
    const [before, after] = [legOf(), legOf({ straighten: 1 })];
    expect(after.front.crotchPoint).toEqual(before.front.crotchPoint);
    expect(after.back.crotchPoint).toEqual(before.back.crotchPoint);
    expect(Math.abs(after.crotchChange)).toBeLessThanOrEqual(2.01);
  });

  it('finds the least that passes, and says when nothing does', () => {
    const opening = (t: number) => 900 + 100 * t;
    expect(leastStraightening(opening, 930)).toEqual({ straighten: expect.closeTo(0.3, 6), passes: true });
    expect(opening(leastStraightening(opening, 930).straighten)).toBeGreaterThanOrEqual(930);
    expect(leastStraightening(opening, 800)).toEqual({ straighten: 0, passes: true });
    expect(leastStraightening(opening, 1001)).toEqual({ straighten: 1, passes: false });
  });

  it('keeps the waist edge within 6° of square to both centre lines', () => {
    for (const t of [0, 0.3, 1]) {
      const { front, back } = centresOf(joined, t, 0);
      const slope =
        (Math.atan2(front.waistPoint.y - back.waistPoint.y, front.waistPoint.x - back.waistPoint.x) * 180) / Math.PI;
      expect(Math.abs(back.lean - slope)).toBeLessThanOrEqual(6);
      expect(Math.abs(front.lean + slope)).toBeLessThanOrEqual(6);
    }
  });
});

describe('a back that leans far', () => {
  it('is drawn rounder when it is straightened, so that the crotch grows by 2 mm and no more', () => {
    // As another hand may have drawn it: 20° off the grain, where a drafted one leans 8° at most.
    const { back } = joined;
    const curveEnd = pathEnd(outlineEdge(back.edges, 'centre').curves);
    const lean = (p: Point) => turned(p, curveEnd, (4 * Math.PI) / 180);
    const edges = back.edges.map(({ name, curves }) => ({
      name,
      curves: curves.map((curve): Curve => {
        if (name === 'centre') return curveMap(curve, lean);
        return name === 'crotch' ? [curve[0], lean(curve[1]), curve[2], curve[3]] : curve;
      }),
    }));
    const leaning = { ...joined, back: { ...back, edges } };
    const at = (straighten: number) => legFrom(leaning, choices({ straighten }));
    expect(at(0).crotchChange).toBe(0);
    expect(at(1).crotchChange).toBeCloseTo(2, 6);
  });
});

describe('length and shape', () => {
  // Shares of the inside leg: practice. Ankle: inside leg − rise ease − 0.08 × inside leg.
  it.each(['full', 'ankle', 'midCalf', 'belowKnee', 'knee', 'midThigh', 'short', { inseam: 640 }] as const)(
    'cuts both inseams of %j equally long and leaves the crotch alone',
    (length) => {
      const inseam = finishedInseam(length, body, blocks.riseEase);
      for (const shape of ['pyjama', 'block', 'straight'] as const) {
        const [leg, ankle] = [legOf({ inseam, shape }), legOf({ shape })];
        expect(pathLength(leg.front.inseam)).toBeCloseTo(inseam, 3);
        expect(pathLength(leg.back.inseam)).toBeCloseTo(inseam, 3);
        expectSame(leg.front.crotch, ankle.front.crotch);
        expectSame(leg.back.crotch, ankle.back.crotch);
      }
    },
  );

  it('meets the hem within 6° of square, at every length', () => {
    for (const name of ['full', 'ankle', 'midCalf', 'belowKnee', 'knee', 'midThigh', 'short'] as const) {
      const leg = legOf({ inseam: finishedInseam(name, body, blocks.riseEase) });
      const hem = { x: pathEnd(leg.hem).x - pathStart(leg.hem).x, y: pathEnd(leg.hem).y - pathStart(leg.hem).y };
      for (const half of [leg.front, leg.back]) {
        const way = pathEndWay(half.inseam);
        const angle = (Math.acos((way.x * hem.x + way.y * hem.y) / Math.hypot(hem.x, hem.y)) * 180) / Math.PI;
        expect(Math.abs(angle - 90), `${name} ${half.part}`).toBeLessThanOrEqual(6);
      }
    }
  });

  it('narrows a pyjama leg to a hem over foot and knee, whatever the spread', () => {
    for (const spread of [0, 25.4, 60]) {
      // 0.45 of the foot, half the knee and 130 mm (practice, tried on the survey).
      expect(hemOf(legOf({ spread }))).toBeCloseTo(0.45 * body.footEntryGirth + 0.5 * body.kneeGirth + 130, 3);
    }
  });

  it('lets a named length end where it ends, however low the crotch, and keeps an inseam in figures', () => {
    const named = (lowerCrotch: number) =>
      legOf({ lowerCrotch, inseam: finishedInseam('ankle', body, blocks.riseEase, lowerCrotch) });
    const [leg, low] = [named(0), named(40)];
    expect(pathLength(leg.front.inseam) - pathLength(low.front.inseam)).toBeCloseTo(40, 6);
    expect(Math.abs(pathEnd(low.front.inseam).y - pathEnd(leg.front.inseam).y)).toBeLessThan(2);
    expect(hemOf(low)).toBeCloseTo(hemOf(leg), 3);
    expect(finishedInseam({ inseam: 640 }, body, blocks.riseEase, 40)).toBe(640);
  });

  it('hangs a full length 25 mm off the floor', () => {
    expect(finishedInseam('full', body, blocks.riseEase)).toBe(body.insideLeg - blocks.riseEase - 25);
  });

  it('flares to both sides alike, and straight', () => {
    const flare = legOf({ shape: { hemGirth: 800 } });
    const out = [
      pathEnd(flare.front.inseam).x - flare.front.crotchPoint.x,
      flare.back.crotchPoint.x - pathEnd(flare.back.inseam).x,
    ] as const;
    expect(out[0]).toBeGreaterThan(20);
    expect(out[0]).toBeCloseTo(out[1], 1);
  });

  it.each([
    [400, ANKLE],
    [560, ANKLE],
    [600, 417],
  ])('reaches a hem girth of %f at an inseam of %f', (hemGirth, inseam) => {
    expect(hemOf(legOf({ shape: { hemGirth }, inseam }))).toBeCloseTo(hemGirth, 2);
  });

  it('has a knee line where it reaches below the knee, and none where it ends above', () => {
    expect(legOf().kneeLevel).toBe(joined.front.kneeLevel);
    expect(legOf({ inseam: 150 }).kneeLevel).toBeUndefined();
  });

  it('keeps the blocks’ own inseams apart by no more than they were, however low the crotch', () => {
    for (const lowerCrotch of [0, 20, 60]) {
      const { front, back, backCrotchDrop } = legOf({ shape: 'block', lowerCrotch });
      expect(back.crotchPoint.y - front.crotchPoint.y).toBeCloseTo(backCrotchDrop, 9);
      expect(pathLength(back.inseam)).toBeCloseTo(pathLength(front.inseam), 4);
    }
  });

  it('says which hems a short leg can have', () => {
    expect(() => legOf({ shape: { hemGirth: 200 }, inseam: 106 })).toThrow(Refusal);
    expect(() => legOf({ shape: { hemGirth: 200 }, inseam: 106 })).toThrow(/leg\.shape\.hemGirth/);
  });
});
