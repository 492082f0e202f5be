import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block';
import { blocksOnTheWay, joinBlocks, legCurves, legOnTheWay, spreadOnTheWay } from '../../src/leg';
import { type Curve, curveMap, distance, outlineCurves, type Point, turned } from '../../src/plane';
import { draft, exampleProject } from '../../src/project';

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can not be drafted');
const { blocks, joined, legChoices, leg, measures } = result.value;

const points = (curves: readonly Curve[]): readonly Point[] => curves.flat();
const farthest = (a: readonly Curve[], b: readonly Curve[]): number => {
  expect(points(a).length).toBe(points(b).length);
  return Math.max(...points(a).map((p, i) => Math.hypot(p.x - (points(b)[i]?.x ?? 0), p.y - (points(b)[i]?.y ?? 0))));
};
const outline = (block: Block) => outlineCurves(block.edges);
const width = (way: ReturnType<typeof blocksOnTheWay>, name: string) =>
  way.gaps.find((gap) => gap.name === name)?.width ?? Number.NaN;
const tilt = ({ grainline: [a, b] }: Block) => Math.atan2(b.x - a.x, b.y - a.y);

/** The back as if it had been traced askew: 4° off, and 11 mm lower. */
const askew = (block: Block): Block => {
  const move = (p: Point) => {
    const q = turned(p, { x: 0, y: 0 }, (4 * Math.PI) / 180);
    return { x: q.x, y: q.y + 11 };
  };
  return {
    ...block,
    edges: block.edges.map((edge) => ({ ...edge, curves: edge.curves.map((curve) => curveMap(curve, move)) })),
    grainline: [move(block.grainline[0]), move(block.grainline[1])],
    hipLevel: block.hipLevel + 11,
  };
};

describe('the join on its way', () => {
  it('starts where the blocks stand apart and ends where the drafting joins them', () => {
    const start = blocksOnTheWay(blocks, 90, 0);
    expect(outline(start.front)[0]?.[0].x).toBeCloseTo((outline(blocks.front)[0]?.[0].x ?? 0) + 45, 9);
    const end = blocksOnTheWay(blocks, 90, 1);
    const together = joinBlocks(blocks);
    expect(farthest(outline(end.front), outline(together.front))).toBeLessThan(1e-9);
    expect(farthest(outline(end.back), outline(together.back))).toBeLessThan(1e-9);
    expect(width(end, 'waist')).toBeCloseTo(measures.gapAtWaist, 9);
    expect(width(end, 'knee')).toBeCloseTo(measures.gapAtKnee, 9);
    expect(width(end, 'hem')).toBeCloseTo(measures.gapAtHem, 9);
    expect(width(end, 'hip')).toBeCloseTo(0, 9);
  });

  it('closes every gap by the same amount all the way', () => {
    const ways = [0, 0.25, 0.5, 0.75, 1].map((way) => blocksOnTheWay(blocks, 90, way));
    for (const name of ['waist', 'hip', 'knee', 'hem']) {
      const widths = ways.map((way) => width(way, name));
      for (let i = 1; i < widths.length; i += 1) {
        expect((widths[i - 1] ?? Number.NaN) - (widths[i] ?? Number.NaN), name).toBeCloseTo(90 / 4, 6);
      }
    }
  });

  it('keeps the grainlines parallel once a tilted one was turned upright', () => {
    const traced = { front: blocks.front, back: askew(blocks.back) };
    expect(Math.abs(tilt(blocksOnTheWay(traced, 90, 0).back))).toBeGreaterThan(0.06);
    for (const way of [0.3, 0.6, 1]) {
      const { front, back } = blocksOnTheWay(traced, 90, way);
      expect(tilt(back)).toBeCloseTo(tilt(front), 9);
    }
    const end = blocksOnTheWay(traced, 90, 1);
    expect(farthest(outline(end.back), outline(joinBlocks(traced).back))).toBeLessThan(1e-9);
    expect(end.back.hipLevel).toBeCloseTo(end.front.hipLevel, 9);
  });
});

describe('the spread on its way', () => {
  it('opens from touching to what was chosen', () => {
    expect(width(spreadOnTheWay(joined, legChoices.spread, 0), 'hip')).toBeCloseTo(0, 9);
    expect(width(spreadOnTheWay(joined, legChoices.spread, 0.5), 'hip')).toBeCloseTo(legChoices.spread / 2, 9);
    const end = spreadOnTheWay(joined, legChoices.spread, 1);
    expect(farthest(outline(end.front), outline(joined.front))).toBeLessThan(1e-9);
  });
});

describe('the leg on its way', () => {
  it('straightens from as the blocks lean to what was chosen, and ends as the drafted leg', () => {
    const lean = (way: number) => legOnTheWay(joined, legChoices, way).leg.back.lean;
    expect(lean(0)).toBeGreaterThan(lean(0.5));
    expect(lean(0.5)).toBeGreaterThan(lean(1));
    expect(lean(1)).toBeCloseTo(measures.leanBack, 9);
    const end = legOnTheWay(joined, legChoices, 2);
    expect(end.shaped).toBe(1);
    expect(farthest(legCurves(end.leg), legCurves(leg))).toBeLessThan(1e-9);
  });

  it('raises the waist and lowers the crotch by their share of the way', () => {
    const chosen = { ...legChoices, raiseWaist: 30, lowerCrotch: 20, straighten: 0, straightenAutomatic: false };
    const at = (way: number) => legOnTheWay(joined, chosen, way).leg;
    const up = (way: number) => distance(at(way).front.waistPoint, at(way).front.curveEnd);
    expect(up(0.4) - up(0)).toBeCloseTo(12, 9);
    expect(at(0.4).front.crotchPoint.y - at(0).front.crotchPoint.y).toBeCloseTo(8, 6);
  });
});
