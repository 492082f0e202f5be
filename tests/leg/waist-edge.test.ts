import { describe, expect, it } from 'vitest';
import { type BlockOptions, blocksCorrected, draftBlocks, LEAST_BACK_RAISE } from '../../src/block';
import { prepareBody } from '../../src/body';
import { centresOf, joinBlocks } from '../../src/leg';
import type { SquaredCentres } from '../../src/leg/centres';
import { refuseSunkenWaist } from '../../src/leg/lowest-waist';
import { distance, outlineEdge, pathStart, turnBetween } from '../../src/plane';
import { type Draft, draft } from '../../src/project';
import { type Phrase, printPhrase, Refusal, UNSAID } from '../../src/words';
import { projectFor } from '../outside/survey';

const exampleBlocks: BlockOptions = {
  hipEase: 50.8,
  waistEase: 25,
  riseEase: 'auto',
  crotchEase: 'auto',
  balance: 10,
};
const shortRise = { label: 'a', waistGirth: 800, hipGirth: 980, bodyRise: 175, hipDepth: 95, insideLeg: 780 };
const lowered = (body: object, by: number, leg: object = {}) =>
  draft(projectFor(body, { leg: { ...leg, raiseWaist: -by } }));

function drafted(body: object, by = 0, leg: object = {}): Draft {
  const result = lowered(body, by, leg);
  if (!result.ok) throw new Error(result.problems.map((p) => printPhrase(p.phrase, 'cm')).join());
  return result.value;
}

/** The lengths of a sentence, unrounded. */
const lengthsIn = ({ values }: Phrase): readonly number[] =>
  values.flatMap((value) => {
    if (typeof value === 'string') return [];
    if ('mm' in value) return [value.mm];
    return 'template' in value ? lengthsIn(value) : [];
  });

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

  it('may go down until 10 mm of centre line are left above the hip line, measured along it', () => {
    // Over a belly centre front, which is the shorter, leans out.
    const belly = prepareBody({ ...shortRise, waistGirth: 1200 });
    const joined = joinBlocks(draftBlocks(belly, exampleBlocks).blocks);
    const hip = joined.front.hipLevel;
    let lowest = Number.NaN;
    try {
      refuseSunkenWaist(joined, 0, -110);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      lowest = lengthsIn(error.problems[0]?.phrase ?? UNSAID).at(-1) ?? Number.NaN;
    }
    const { front, back } = centresOf(joined, 0, -lowest);
    expect(front.way.y).toBeLessThan(0.995);
    const left = [front, back].map(({ waistPoint, curveEnd, way }) =>
      Math.min((hip - waistPoint.y) / way.y, distance(waistPoint, curveEnd)),
    );
    expect(Math.min(...left)).toBeCloseTo(10, 4);
    expect(left[0]).toBeLessThan(left[1] ?? 0);
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

describe('a waist edge that tilts too far', () => {
  const child = { ageYears: 2, waistGirth: 380, hipGirth: 470, bodyRise: 130, hipDepth: 95, insideLeg: 340 };
  const { blocks } = draftBlocks(prepareBody({ label: 'two years', ...child }), exampleBlocks);
  /** The blocks with centre front lower and centre back higher than a drafting would have them. */
  const tilted = (frontDown: number, backUp: number) => {
    const corrected = blocksCorrected(blocks, { frontUp: -frontDown, frontOut: 0, backOut: 0, backUp });
    return joinBlocks(corrected);
  };
  const off = ({ front, back }: SquaredCentres, half: 'front' | 'back') => {
    const edge = { x: front.waistPoint.x - back.waistPoint.x, y: front.waistPoint.y - back.waistPoint.y };
    return Math.abs(Math.abs((turnBetween(edge, { front, back }[half].way) * 180) / Math.PI) - 90);
  };

  it('is turned about centre front until it stands within 6° of square to both centre lines', () => {
    const joined = tilted(0, 30);
    const as = centresOf(joined, 0, 0);
    expect(as.turned).toBeGreaterThan(0.5);
    expect(as.lifted).toBe(0);
    expect(as.front.waistPoint).toEqual(pathStart(outlineEdge(joined.front.edges, 'centre').curves));
    expect(off(as, 'front')).toBeLessThanOrEqual(6);
    expect(off(as, 'back')).toBeLessThanOrEqual(6);
  });

  it('keeps centre back 15 mm above the level of the side, where turning alone would not', () => {
    const as = centresOf(tilted(40, 0), 0, 0);
    expect(as.turned).toBeGreaterThan(0.5);
    expect(as.lifted).toBeGreaterThan(0.5);
    expect(-as.back.waistPoint.y).toBeCloseTo(LEAST_BACK_RAISE, 6);
    expect(off(as, 'front')).toBeLessThanOrEqual(6);
    expect(off(as, 'back')).toBeLessThanOrEqual(6);
    expect(centresOf(tilted(40, 0), 0, -10).lifted).toBeCloseTo(as.lifted, 0);
    // A waist that was lowered as a whole lowers what centre back keeps, by as much as its own line slopes.
    const low = centresOf(tilted(40, 0), 0, -10);
    expect(-low.back.waistPoint.y).toBeCloseTo(LEAST_BACK_RAISE - 10 * low.back.way.y, 6);
  });
});
