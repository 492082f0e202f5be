import { describe, expect, it } from 'vitest';
import { type Corrections, NO_CORRECTIONS } from '../../src/block';
import {
  curvePoint,
  distance,
  edgeLength,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
  pathLength,
} from '../../src/plane';
import { type Draft, draft, exampleProject, type Project } from '../../src/project';

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
    ['fullThigh', 10],
    ['swayBack', 10],
    ['sittingPull', 15],
    ['knockKnees', 8],
  ] as const)('%s keeps inseams equal and outlines simple, and says what it did with both lines', (seen, amount) => {
    for (const shape of ['pyjama', 'block', 'straight'] as const) {
      const d = worn({ [seen]: amount }, { leg: { ...exampleProject.leg, shape } });
      expect(Math.abs(d.measures.inseamFront - d.measures.inseamBack)).toBeLessThan(0.1);
      expect(outlineCrossings(outlineCurves(d.pieces[0]?.cutLine ?? []))).toEqual([]);
      expect(d.pieces).not.toEqual(drafted({ leg: { ...exampleProject.leg, shape } }).pieces);
      const steps = d.working.filter((step) => step.id.startsWith('check.worn.'));
      expect(steps.map((step) => step.id)).toEqual([`check.worn.${seen}`]);
      expect(steps[0]?.lines.some((line) => line.name.endsWith('before'))).toBe(true);
    }
  });

  it('a flat seat takes its amount off the back extension and off the back rise', () => {
    const d = worn({ flatSeat: 10 });
    // The leg's crotch length is aimed at anew, which moves the extension by a fraction of a millimetre.
    expect(d.blocks.extensionBack - plain.blocks.extensionBack).toBeCloseTo(-10, 0);
    expect(d.blocks.backRaise - plain.blocks.backRaise).toBeCloseTo(-10, 0);
    expect(d.measures.thighGirthFinished - plain.measures.thighGirthFinished).toBeCloseTo(-10, 0);
    expect(d.measures.crotchLengthFinished - plain.measures.crotchLengthFinished).toBeLessThan(-12);
  });

  it('full thighs get both extensions, and the crotch length follows although it was measured', () => {
    const d = worn({ fullThigh: 10 });
    expect(Math.abs(d.measures.thighGirthFinished - plain.measures.thighGirthFinished - 20)).toBeLessThan(1);
    expect(d.measures.crotchLengthFinished).toBeGreaterThan(plain.measures.crotchLengthFinished + 8);
  });

  it('a hollow back and a pull when sitting move the centre back waist only', () => {
    const [hollow, pull] = [worn({ swayBack: 10 }), worn({ sittingPull: 15 })];
    expect(hollow.blocks.backRaise).toBeCloseTo(plain.blocks.backRaise - 10, 1);
    expect(pull.blocks.backRaise).toBeCloseTo(plain.blocks.backRaise + 15, 1);
    for (const d of [hollow, pull])
      expect(Math.abs(d.measures.thighGirthFinished - plain.measures.thighGirthFinished)).toBeLessThan(0.5);
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
    const lengthOf = (one: Draft, piece: string, edge: string) =>
      edgeLength(outlineEdge(one.pieces.find(({ name }) => name === piece)?.stitchLine ?? [], edge));
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
      const verdicts = faced.checks.filter(({ id }) => ['inseams-equal', 'notches-meet'].includes(id));
      expect(verdicts.map(({ verdict }) => verdict)).toEqual(['good', 'good']);
    }
  });

  it('keeps the allowances and what is worn', () => {
    expect(d.measures).toEqual(plain.measures);
    expect(d.checks.map((c) => [c.id, c.verdict])).toEqual(plain.checks.map((c) => [c.id, c.verdict]));
    expect(d.pieces[0]?.cutLine.map((edge) => edge.allowance)).toEqual(
      plain.pieces[0]?.cutLine.map((edge) => edge.allowance),
    );
  });
});
