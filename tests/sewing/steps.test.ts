import { beforeAll, describe, expect, it } from 'vitest';
import { edgeLength } from '../../src/plane';
import { type SewingStep, sewingMinutes, sewingSteps, stepMinutes } from '../../src/sewing';
import { isSaid, printPhrase } from '../../src/words';
import { pieceName } from '../names';
import { every } from '../outside/every';
import { faultsOf } from './faults';
import { CHILD, everyGarment, garmentWith } from './garments';

describe('the order of work', () => {
  // One walk for both tests.
  const faults: string[] = [];
  const silences: string[] = [];
  let garments = 0;
  beforeAll(() => {
    for (const [name, garment] of everyGarment()) {
      garments += 1;
      const steps = sewingSteps(garment);
      for (const fault of faultsOf(garment, steps)) faults.push(`${name}: ${fault}`);
      for (const step of steps) for (const fault of silencesOf(step)) silences.push(`${name}: ${step.id}: ${fault}`);
    }
    console.log(`${garments} combinations of cloth, machine, waist, hem and pocket`);
  }, 120_000);

  it('sews every edge once and finishes every raw edge once, whatever three choices meet', () => {
    expect(faults.slice(0, 20)).toEqual([]);
    // Each waist with each hem, with each of two choices more; `LEGWORK_EVERY=1` walks all of them.
    expect(garments).toBeGreaterThanOrEqual(6 * 6 * 2);
    if (every) expect(garments).toBe(2 * 2 * 6 * 2 * 2 * 2 * 6 * 2 * 2);
  });

  it('says something in every step, in whole sentences', () => {
    expect(silences.slice(0, 10)).toEqual([]);
  });

  it('does so on a child’s narrow legs, which are hemmed flat', () => {
    const faults: string[] = [];
    let flat = 0;
    for (const [name, garment] of everyGarment({ body: CHILD, leg: { shape: { hemGirth: 290 } } }, [
      'turned',
      'elasticCasing',
    ])) {
      const steps = sewingSteps(garment);
      if (steps.some((step) => step.id === 'hem.flat')) flat += 1;
      for (const fault of faultsOf(garment, steps)) faults.push(`${name}: ${fault}`);
    }
    expect(faults.slice(0, 20)).toEqual([]);
    expect(flat).toBeGreaterThan(0);
  });

  it('finds out a forgotten seam, a seam sewn twice, and steps in a wrong order', () => {
    const garment = garmentWith({ pocket: null });
    const steps = sewingSteps(garment);
    expect(faultsOf(garment, steps)).toEqual([]);
    const without = steps.filter((step) => step.id !== 'inseams');
    expect(faultsOf(garment, without).join()).toContain('leg.inseamFront sewn 0 times');
    const crotch = steps.find((step) => step.id === 'crotch') as SewingStep;
    expect(faultsOf(garment, [...steps, { ...crotch, id: 'again' }]).join()).toContain('leg.crotchFront sewn 2 times');
    expect(faultsOf(garment, [...steps].reverse()).join()).toContain('inseams comes after crotch');
  });

  it('sews a fork’s tip on before the seams that run over it', () => {
    const garment = garmentWith({ cloth: { piecedTip: 50 } });
    const steps = sewingSteps(garment);
    const ids = steps.map(({ id }) => id);
    expect(garment.pieces.map(pieceName)).toEqual(['leg', 'fork tip']);
    expect(faultsOf(garment, steps)).toEqual([]);
    expect(
      faultsOf(
        garment,
        steps.filter(({ id }) => id !== 'fork-tip'),
      ).join(),
    ).toContain('fork tip.piecing sewn 0 times');
    expect(ids.indexOf('fork-tip')).toBe(ids.indexOf('try') + 1);
    expect(ids.indexOf('fork-tip')).toBeLessThan(ids.indexOf('folds'));
    const later = [...steps.filter(({ id }) => id !== 'fork-tip'), ...steps.filter(({ id }) => id === 'fork-tip')];
    expect(faultsOf(garment, later).join()).toContain('fork-tip comes after inseams');
  });
});

/** What a step does not say, or says badly. */
function silencesOf(step: SewingStep): readonly string[] {
  const sentences = [...step.tasks, step.check, ...[step.why, step.care].filter(isSaid)];
  return [
    ...sentences
      .map((phrase) => printPhrase(phrase, 'cm'))
      .filter((text) => !/^[A-ZÀ-Ý0-9].*[.?!]$/.test(text) || /undefined|NaN|\bnull\b| {2}/.test(text)),
    ...(step.tasks.length === 0 || !(stepMinutes(step) > 0) ? ['says nothing'] : []),
  ];
}

describe('a ring of rib', () => {
  const cuffed = (hemGirth: number, ribStretch = 0.5) =>
    garmentWith({ leg: { shape: { hemGirth } }, hem: { finish: 'ribCuff', ribStretch } });

  it('is stretched to the leg where it reaches, and else the leg is gathered to it first', () => {
    const ids = (hemGirth: number, ribStretch?: number) =>
      sewingSteps(cuffed(hemGirth, ribStretch)).map(({ id }) => id);
    expect(ids(340, 1)).not.toContain('hem.gathers');
    const wide = ids(700);
    expect(wide.indexOf('hem.gathers')).toBe(wide.indexOf('hem.on') - 1);
    // The rib reaches 1 + 0.7 × 0.5 of its length (practice): the hem is gathered to that.
    const garment = cuffed(700);
    const round = garment.pieces.find(({ kind }) => kind === 'cuff')?.stitchLine.find(({ name }) => name === 'upper');
    const told = sewingSteps(garment).find(({ id }) => id === 'hem.gathers')?.tasks ?? [];
    const cm = Number(/is ([\d.]+) cm round/.exec(told.map((task) => printPhrase(task, 'cm')).join(' '))?.[1]);
    expect(10 * cm).toBeCloseTo(1.35 * (round ? edgeLength(round) : 0), 0);
  });
});

describe('the time', () => {
  it('is the sum of the steps, and grows with the seams', () => {
    const long = sewingSteps(garmentWith());
    const short = sewingSteps(garmentWith({ leg: { length: 'short' } }));
    expect(sewingMinutes(long).usual).toBeCloseTo(
      long.reduce((sum, step) => sum + stepMinutes(step), 0),
      9,
    );
    expect(sewingMinutes(short).usual).toBeLessThan(sewingMinutes(long).usual);
    expect(sewingMinutes(long).usual).toBeGreaterThan(120);
    expect(sewingMinutes(long).usual).toBeLessThan(480);
  });
});
