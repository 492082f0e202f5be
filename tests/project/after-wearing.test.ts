import { describe, expect, it } from 'vitest';
import { type Corrections, NO_CORRECTIONS } from '../../src/block';
import type { EdgeName } from '../../src/edges';
import {
  curvePoint,
  distance,
  edgeLength,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
  pathLength,
} from '../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project, workingOf } from '../../src/project';
import { pieceName } from '../names';

const drafted = (change: Partial<Project>): Draft => {
  const result = draft({ ...exampleProject, ...change });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const worn = (seen: Partial<Corrections>, change: Partial<Project> = {}): Draft =>
  drafted({ ...change, fit: { ...NO_CORRECTIONS, ...seen } });
const plain = drafted({});

// Amounts and directions: practice.
describe('after wearing', () => {
  it('nothing seen changes nothing', () => {
    expect(worn({}).pieces).toEqual(plain.pieces);
  });

  it.each([
    ['flatSeat', 10],
    ['fullSeat', 10],
    ['fullThigh', 10],
    ['swayBack', 10],
    ['prominentAbdomen', 15],
    ['sittingPull', 15],
    ['seated', 40],
    ['knockKnees', 8],
  ] as const)('%s keeps inseams equal and outlines simple, and says what it did with both lines', (seen, amount) => {
    for (const shape of ['pyjama', 'block', 'straight'] as const) {
      const d = worn({ [seen]: amount }, { leg: { ...exampleProject.leg, shape } });
      expect(Math.abs(d.measures.inseamFront - d.measures.inseamBack)).toBeLessThan(0.1);
      expect(outlineCrossings(outlineCurves(d.pieces[0]?.cutLine ?? []))).toEqual([]);
      expect(d.pieces).not.toEqual(drafted({ leg: { ...exampleProject.leg, shape } }).pieces);
      const steps = workingOf(d).filter((step) => step.id.startsWith('check.worn.'));
      expect(steps.map((step) => step.id)).toEqual([`check.worn.${seen}`]);
      expect(steps[0]?.lines.some((line) => line.name.endsWith('before'))).toBe(true);
    }
  });

  // At the usual spread, at which it is found how far the waist edge may tilt.
  const leg = { ...exampleProject.leg, spread: 25.4 };

  /** How far each point moved: waist points up, crotch points out, against the leg without the correction. */
  function movedBy(seen: Partial<Corrections>, change: Partial<Project> = {}) {
    const [before, after] = [drafted({ leg, ...change }).leg, worn(seen, { leg, ...change }).leg];
    const up = (part: 'front' | 'back') => before[part].waistPoint.y - after[part].waistPoint.y;
    return {
      frontUp: up('front'),
      backUp: up('back'),
      frontOut: after.front.crotchPoint.x - before.front.crotchPoint.x,
      backOut: before.back.crotchPoint.x - after.back.crotchPoint.x,
      crotchLine: after.crotchLevel - before.crotchLevel,
      hem: pathLength(after.hem) - pathLength(before.hem),
      inseam: pathLength(after.front.inseam) - pathLength(before.front.inseam),
      frontCrotch: pathLength(after.front.crotch) - pathLength(before.front.crotch),
    };
  }
  const STILL = { frontUp: 0, backUp: 0, frontOut: 0, backOut: 0, crotchLine: 0, hem: 0, inseam: 0, frontCrotch: 0 };

  /** Within half a millimetre, at a measured crotch length and without one: a correction is never fitted away. */
  function expectMoved(seen: Partial<Corrections>, wanted: Partial<typeof STILL>): void {
    const { crotchLength: _, ...unmeasured } = exampleProject.body;
    for (const body of [exampleProject.body, unmeasured]) {
      const found = movedBy(seen, { body });
      for (const [what, by] of Object.entries({ ...STILL, ...wanted }))
        expect(Math.abs(found[what as keyof typeof STILL] - by), what).toBeLessThan(0.5);
    }
  }

  it('a flat seat takes its amount off the back extension and off the back rise', () => {
    expectMoved({ flatSeat: 10 }, { backUp: -10, backOut: -10 });
  });

  it('a full seat gives its amount to both, centre front and front extension stay', () => {
    const { backUp, backOut, ...rest } = movedBy({ fullSeat: 10 });
    expect(backUp + backOut).toBeCloseTo(20, 0);
    expect(backUp).toBeGreaterThan(1.5);
    for (const by of Object.values(rest)) expect(Math.abs(by)).toBeLessThan(0.5);
  });

  it('full thighs get both extensions, and the crotch length follows although it was measured', () => {
    const { hem, frontCrotch, ...rest } = movedBy({ fullThigh: 10 });
    expect(Math.abs(hem)).toBeLessThan(0.5);
    expect(frontCrotch).toBeGreaterThan(5);
    expect(rest).toEqual({
      ...Object.fromEntries(Object.keys(rest).map((what) => [what, expect.closeTo(0, 1)])),
      frontOut: expect.closeTo(10, 1),
      backOut: expect.closeTo(10, 1),
    });
    const d = worn({ fullThigh: 10 });
    expect(d.measures.crotchLengthFinished).toBeGreaterThan(plain.measures.crotchLengthFinished + 8);
    expect(Math.abs(d.measures.crotchFit)).toBeLessThan(2);
  });

  it('a hollow back moves the centre back waist only, a prominent abdomen the centre front waist only', () => {
    expectMoved({ swayBack: 10 }, { backUp: -10 });
    expectMoved({ prominentAbdomen: 15 }, { frontUp: 15 });
  });

  it('a pull when sitting raises centre back as far as the waist edge may tilt, and gives the rest to the back extension', () => {
    for (const amount of [2, 15, 40]) {
      const { backUp, backOut, ...rest } = movedBy({ sittingPull: amount });
      expect(backUp + backOut).toBeCloseTo(amount, 0);
      expect(backUp).toBeGreaterThan(1.5);
      // A back extension 4 cm longer turns the front inseam's start by a hair.
      for (const by of Object.values(rest)) expect(Math.abs(by)).toBeLessThan(amount > 20 ? 0.7 : 0.5);
      expect(worn({ sittingPull: amount }, { leg }).leg.waistTurned).toBe(0);
    }
  });

  it('what is worn sitting is lower in front, higher behind, and longer; the crotch line and the front extension stay', () => {
    const { frontUp, backUp, backOut, inseam, ...rest } = movedBy({ seated: 40 });
    expect(frontUp).toBeLessThan(-2);
    expect(backUp + backOut).toBeCloseTo(20, 0);
    expect(inseam).toBeCloseTo(20, 3);
    // Carried on below the ankle, the hem narrows by a few millimetres.
    for (const [what, by] of Object.entries(rest)) expect(Math.abs(by), what).toBeLessThan(what === 'hem' ? 5 : 0.5);
    expect(worn({ seated: 40 }, { leg }).leg.waistTurned).toBe(0);
    expect(movedBy({ seated: 40 }, { leg: { ...leg, length: { inseam: 640 } } }).inseam).toBeCloseTo(0, 3);
  });

  it('what lowers the waist edge’s tilt leaves more of it for sitting', () => {
    const alone = movedBy({ sittingPull: 40 }).backUp;
    const both = movedBy({ sittingPull: 40, prominentAbdomen: 15 });
    expect(both.backUp - alone).toBeCloseTo(15, 0);
  });

  it('knees that touch move both inseams outwards at the knee, not at crotch and hem', () => {
    const d = worn({ knockKnees: 8 });
    const knee = (leg: Draft) => leg.pieces[0]?.lines.find((line) => line.name === 'knee')?.curves ?? [];
    expect(pathLength(knee(d)) - pathLength(knee(plain))).toBeCloseTo(16, 0);
    expect(d.measures.thighGirthFinished).toBeCloseTo(plain.measures.thighGirthFinished, 6);
    expect(Math.abs(d.measures.hemGirthFinished - plain.measures.hemGirthFinished)).toBeLessThan(3);
  });
});

describe('cloth that is not washed first', () => {
  const cloth = { ...exampleProject.cloth, washFirst: false, shrinkLength: 0.05, shrinkWidth: 0.02 };
  const d = drafted({ cloth });

  it('is cut longer and wider by 1 ÷ (1 − shrinkage), and the piece says so', () => {
    // Turned corners and evened seams of this difference of 3 % move no line by as much as a cutter's pencil is wide.
    const stitch = (leg: Draft) => outlineCurves(leg.pieces[0]?.stitchLine ?? []);
    stitch(plain).forEach((curve, i) => {
      const [p, grown] = [curvePoint(curve, 0.3), curvePoint(stitch(d)[i] ?? curve, 0.3)];
      expect(distance(grown, { x: p.x / 0.98, y: p.y / 0.95 })).toBeLessThan(0.5);
    });
    const front = d.pieces[0]?.stitchLine.find((edge) => edge.name === 'inseamFront')?.curves ?? [];
    const before = plain.pieces[0]?.stitchLine.find((edge) => edge.name === 'inseamFront')?.curves ?? [];
    front.forEach((curve, i) => {
      const p = curvePoint(before[i] ?? curve, 0.7);
      expect(distance(curvePoint(curve, 0.7), { x: p.x / 0.98, y: p.y / 0.95 })).toBeLessThan(1e-9);
    });
    expect(d.pieces[0]?.texts.some((text) => /not washed first/.test(text.text))).toBe(true);
    expect(plain.pieces[0]?.texts.some((text) => /not washed first/.test(text.text))).toBe(false);
  });

  it('keeps every pair of edges that is sewn together equal as it is cut, however it shrinks', () => {
    const lengthOf = (one: Draft, piece: string, edge: EdgeName) =>
      edgeLength(outlineEdge(one.pieces.find((other) => pieceName(other) === piece)?.stitchLine ?? [], edge));
    for (const [shrinkLength, shrinkWidth] of [
      [0.3, 0],
      [0, 0.3],
      [0.1, 0.02],
    ] as const) {
      const shrinking = { ...cloth, shrinkLength, shrinkWidth };
      const of = (waist: Project['waist']['finish'], hem: Project['hem']['finish']) =>
        drafted({
          cloth: shrinking,
          waist: { ...exampleProject.waist, finish: waist },
          hem: { ...exampleProject.hem, finish: hem },
        });
      const faced = of('facedCasing', 'facedHem');
      expect(lengthOf(faced, 'leg', 'inseamFront')).toBeCloseTo(lengthOf(faced, 'leg', 'inseamBack'), 4);
      expect(lengthOf(faced, 'waist facing', 'waist')).toBeCloseTo(lengthOf(faced, 'leg', 'waist'), 6);
      expect(lengthOf(faced, 'hem facing', 'hem')).toBeCloseTo(lengthOf(faced, 'leg', 'hem'), 6);
      const bands = of('separateCasing', 'contrastBand');
      expect(lengthOf(bands, 'casing', 'upper')).toBeCloseTo(2 * lengthOf(bands, 'leg', 'waist'), 6);
      expect(lengthOf(bands, 'hem band', 'upper')).toBeCloseTo(lengthOf(bands, 'leg', 'hem'), 6);
      const verdicts = checksOf(faced).filter(({ id }) => ['inseams-equal', 'notches-meet'].includes(id));
      expect(verdicts.map(({ verdict }) => verdict)).toEqual(['good', 'good']);
    }
  });

  it('keeps the allowances and what is worn', () => {
    expect(d.measures).toEqual(plain.measures);
    expect(checksOf(d).map((c) => [c.id, c.verdict])).toEqual(checksOf(plain).map((c) => [c.id, c.verdict]));
    expect(d.pieces[0]?.cutLine.map((edge) => edge.allowance)).toEqual(
      plain.pieces[0]?.cutLine.map((edge) => edge.allowance),
    );
  });
});
