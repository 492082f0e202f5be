import { describe, expect, it } from 'vitest';
import { type Leg, legOfSide, NO_DIFFERENCES, overSide, riseAt, type SideDifferences } from '../../src/leg';
import { curvePoint, distance, pathEnd, pathLength, pathStart } from '../../src/plane';
import { exampleProject } from '../../src/project';
import { legFitted } from '../../src/project/fitted-leg';
import { checkedProject } from '../../src/project/schema';

const fitted = legFitted(checkedProject(exampleProject).project);
const { leg } = fitted;
const side = (more: Partial<SideDifferences>): Leg =>
  legOfSide(leg, fitted.joined, fitted.choices, { ...NO_DIFFERENCES, ...more });
const thigh = ({ front, back }: Leg) => front.crotchPoint.x - back.crotchPoint.x;
const centres = ({ front, back }: Leg) =>
  [front, back].flatMap((half) => [distance(half.waistPoint, half.curveEnd), pathLength(half.crotch)]);

describe('a leg of one side', () => {
  it('is the leg of both where that side has nothing more', () => {
    const same = side({});
    expect(same.front).toBe(leg.front);
    expect(same.back).toBe(leg.back);
    expect(same.waistEdge).toEqual(leg.waistEdge);
  });

  it('with a fuller hip is spread, half in front and half behind', () => {
    const wide = side({ fullerHip: 24 });
    expect(wide.front.waistPoint.x - leg.front.waistPoint.x).toBeCloseTo(12, 9);
    expect(wide.back.waistPoint.x - leg.back.waistPoint.x).toBeCloseTo(-12, 9);
    expect(thigh(wide) - thigh(leg)).toBeCloseTo(24, 6);
    expect(wide.waistEdge.map((curve) => curve[0].y)).toEqual(leg.waistEdge.map((curve) => curve[0].y));
  });

  it('with a fuller seat is wider behind, and its front is where it was', () => {
    const wide = side({ fullerSeat: 18 });
    expect(wide.front.waistPoint).toEqual(leg.front.waistPoint);
    expect(wide.front.crotchPoint).toEqual(leg.front.crotchPoint);
    expect(wide.back.crotchPoint.x - leg.back.crotchPoint.x).toBeCloseTo(-18, 6);
  });

  it('with a higher hip has its waist edge higher over the side alone', () => {
    const high = side({ higherHip: 15 });
    expect(high.front).toBe(leg.front);
    expect(high.back).toBe(leg.back);
    const [toSide] = high.waistEdge;
    const [a, b] = [pathStart(leg.waistEdge), pathEnd(leg.waistEdge)];
    const straightAt = a.y + ((0 - a.x) / (b.x - a.x)) * (b.y - a.y);
    expect(toSide?.[3].x).toBe(0);
    expect((toSide?.[3].y ?? 0) - straightAt).toBeCloseTo(-15, 9);
    expect([pathStart(high.waistEdge), pathEnd(high.waistEdge)]).toEqual([a, b]);
  });

  it('with a longer leg has both inseams longer, and the same widths', () => {
    const long = side({ longerLeg: 14 });
    for (const part of ['front', 'back'] as const) {
      expect(pathLength(long[part].inseam) - pathLength(leg[part].inseam)).toBeCloseTo(14, 4);
      expect(pathEnd(long[part].inseam).x).toBeCloseTo(pathEnd(leg[part].inseam).x, 9);
      expect(long[part].crotchPoint).toEqual(leg[part].crotchPoint);
    }
    const knee = (long.kneeLevel ?? 0) - (leg.kneeLevel ?? 0);
    expect(knee).toBeGreaterThan(5);
    expect(knee).toBeLessThan(9);
  });

  it('can be sewn to any other leg of the same body, whatever differs', () => {
    const all = side({ fullerHip: 40, fullerSeat: 30, higherHip: 20, longerLeg: 30 });
    centres(all).forEach((length, i) => {
      expect(length).toBeCloseTo(centres(leg)[i] ?? 0, 4);
    });
    expect(pathLength(all.front.inseam)).toBeCloseTo(pathLength(all.back.inseam), 3);
  });
});

describe('an edge raised over the side', () => {
  const line = [
    { x: -260, y: -30 },
    { x: 240, y: 8 },
  ] as const;

  it('is just as high as it says at every place', () => {
    for (const curve of overSide(line, 20))
      for (const t of [0, 0.2, 0.5, 0.9, 1]) {
        const p = curvePoint(curve, t);
        const straight = -30 + ((p.x + 260) / 500) * 38;
        expect(straight - p.y).toBeCloseTo(riseAt(line, 20, p.x), 9);
      }
  });

  it('is highest in its middle where it ends at the side line or doesn’t reach over it', () => {
    for (const [from, to] of [
      [0, 100],
      [-100, 0],
      [20, 120],
    ] as const) {
      const line = [
        { x: from, y: 0 },
        { x: to, y: 0 },
      ] as const;
      expect(riseAt(line, 10, (from + to) / 2), `${from} to ${to}`).toBe(10);
      expect([riseAt(line, 10, from), riseAt(line, 10, to)], `${from} to ${to}`).toEqual([0, 0]);
    }
  });

  it('stays straight where nothing is higher, whichever way it runs', () => {
    expect(overSide(line, 0)).toHaveLength(1);
    const [back, front] = line;
    const there = overSide(line, 20).flat().toReversed();
    overSide([front, back], 20)
      .flat()
      .forEach((p, i) => {
        expect(distance(p, there[i] ?? { x: 0, y: 0 })).toBeLessThan(1e-9);
      });
  });
});
