import { describe, expect, it } from 'vitest';
import { LEAST_BACK_RAISE } from '../../src/block';
import { printPhrase } from '../../src/length';
import { pathEndWay, turnBetween } from '../../src/plane';
import { type Draft, draft } from '../../src/project';
import { childMedians } from '../outside/children';
import { projectFor } from '../outside/survey';

const shortRise = { label: 'a', waistGirth: 800, hipGirth: 980, bodyRise: 175, hipDepth: 95, insideLeg: 780 };
const lowered = (body: object, by: number, leg: object = {}) =>
  draft(projectFor(body, { leg: { ...leg, raiseWaist: -by } }));

function drafted(body: object, by = 0, leg: object = {}): Draft {
  const result = lowered(body, by, leg);
  if (!result.ok) throw new Error(result.problems.map((p) => printPhrase(p.phrase, 'cm')).join());
  return result.value;
}

/** The sentence with which lowering is refused. */
function refusalOf(body: object, by: number): string {
  const result = lowered(body, by);
  if (result.ok) throw new Error('not refused');
  expect(result.problems.map((p) => p.field)).toEqual(['leg.raiseWaist']);
  return result.problems.map((p) => printPhrase(p.phrase, 'cm')).join(' ');
}

describe('a waist edge lowered on a short rise', () => {
  it('is refused where it would sink into the crotch curve, in one sentence that says where and how far it may go', () => {
    expect(refusalOf(shortRise, 110)).toMatch(
      /^lowered by 11 cm the waist edge would come nearer than 1 cm to the hip line at centre (front|back), or to the crotch curve below it; on these blocks it can be lowered by [\d.]+ cm at most\.$/,
    );
  });

  it('may go as low as the sentence says, and stays 10 mm above the hip line there', () => {
    const most = 10 * Number(/by ([\d.]+) cm at most/.exec(refusalOf(shortRise, 110))?.[1]);
    refusalOf(shortRise, most + 1);
    const { front, back } = drafted(shortRise, most - 0.6).leg;
    const room = Math.min(
      ...[front, back].map((half) => Math.min(half.hipPoint.y, half.curveEnd.y) - half.waistPoint.y),
    );
    expect(room).toBeGreaterThan(9.9);
    expect(room).toBeLessThan(12);
  });

  it('may always stay where the block has it', () => {
    const shortest = { ...shortRise, bodyRise: 130, hipDepth: 60 };
    expect(drafted(shortest).leg.crotchLevel).toBeGreaterThan(130);
    expect(refusalOf(shortest, 60)).toMatch(/lowered by 6 cm .* (it can’t be lowered|at most)\.$/);
  });

  it('is no matter on an ordinary rise', () => {
    const ordinary = { ...shortRise, bodyRise: 270, hipDepth: 200 };
    expect(drafted(ordinary, 60).leg.back.waistPoint.y - drafted(ordinary).leg.back.waistPoint.y).toBeGreaterThan(59);
  });
});

describe('a waist edge squared on a small child', () => {
  const [two] = childMedians;
  const child = {
    label: 'two years',
    ageYears: 2,
    height: two?.stature,
    waistGirth: 380,
    hipGirth: 470,
    bodyRise: 130,
    hipDepth: 95,
    insideLeg: 340,
  };
  const d = drafted(child, 0, { straighten: 0 });
  const edge = pathEndWay(d.leg.waistEdge);
  const off = (half: Draft['leg']['back']) => {
    const { waistPoint, hipPoint } = half;
    const way = { x: hipPoint.x - waistPoint.x, y: hipPoint.y - waistPoint.y };
    return Math.abs(Math.abs((turnBetween(edge, way) * 180) / Math.PI) - 90);
  };

  it('keeps centre back 15 mm above the level of the side, which turning it alone would not', () => {
    expect(d.leg.waistTurned).toBeGreaterThan(0.5);
    expect(d.leg.waistLifted).toBeGreaterThan(0.5);
    expect(-d.leg.back.waistPoint.y).toBeCloseTo(LEAST_BACK_RAISE, 6);
    expect(d.checks.find((c) => c.id === 'back-raise')?.verdict).toBe('good');
  });

  it('stays within 6° of square to both centre lines', () => {
    expect(off(d.leg.back)).toBeLessThanOrEqual(6);
    expect(off(d.leg.front)).toBeLessThanOrEqual(6);
  });

  it('keeps the raise where the whole waist is lowered too', () => {
    const low = drafted(child, 10, { straighten: 0 });
    expect(low.leg.waistLifted).toBeCloseTo(d.leg.waistLifted, 1);
  });

  it('is told in the working, with both amounts', () => {
    const step = d.working.find(({ id }) => id === 'leg.waist-edge');
    expect(printPhrase(step?.sentence ?? [], 'cm')).toMatch(
      /turned by [\d.]+° about its middle.*, and lifted by [\d.]+ mm, so that centre back stays 1.5 cm above/,
    );
  });
});
