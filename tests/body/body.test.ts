import { describe, expect, it } from 'vitest';
import {
  bodyProblems,
  bodyWorking,
  crotchLengthExpected,
  estimateMissing,
  estimateRange,
  measurements,
  prepareBody,
  restsOn,
} from '../../src/body';
import { printPhrase, Refusal, UNSAID, words } from '../../src/words';

const BODY = { label: 'a', waistGirth: 760, hipGirth: 1020, bodyRise: 270, insideLeg: 760 };
const CHILD = { label: 'c', ageYears: 6, height: 1180, waistGirth: 530, hipGirth: 600, bodyRise: 130, insideLeg: 545 };
const ESTIMATED = ['ankleGirth', 'calfGirth', 'footEntryGirth', 'hipDepth', 'kneeGirth', 'thighGirth', 'waistToKnee'];

describe('a body', () => {
  it('keeps what was measured and estimates only what is missing', () => {
    const body = prepareBody({ ...BODY, kneeGirth: 402 });
    expect(body.kneeGirth).toBe(402);
    expect(body.estimates.map((e) => e.key).sort()).toEqual(ESTIMATED.filter((key) => key !== 'kneeGirth'));
    for (const estimate of body.estimates) expect(estimate.spread).toBeGreaterThan(5);
  });

  it('never invents a crotch length, a front part or a high hip', () => {
    const body = prepareBody(BODY);
    expect([body.crotchLength, body.frontCrotchLength, body.highHipGirth]).toEqual([undefined, undefined, undefined]);
  });

  it('estimates rise and inside leg where that was asked for, by what was measured and never over it', () => {
    const { bodyRise: _rise, ...known } = BODY;
    const asked = prepareBody({ ...known, bodyRise: 'estimated' });
    const rise = asked.estimates.find(({ key }) => key === 'bodyRise');
    expect(rise).toMatchObject({ basis: 'survey', from: ['waistGirth', 'hipGirth', 'insideLeg'] });
    expect(asked.bodyRise).toBe(rise?.value);
    // 106.4 − 0.0485 × 760 + 0.0664 × 1020 + 0.0906 × 760.
    expect(asked.bodyRise).toBeCloseTo(206.1, 0);
    expect(prepareBody(BODY).estimates.map(({ key }) => key)).not.toContain('bodyRise');
    const tall = prepareBody({ ...known, bodyRise: 'estimated', height: 1700 });
    expect(tall.estimates.find(({ key }) => key === 'bodyRise')?.spread).toBeLessThan(rise?.spread ?? 0);
    const both = prepareBody({
      label: 'a',
      waistGirth: 760,
      hipGirth: 1020,
      bodyRise: 'estimated',
      insideLeg: 'estimated',
    });
    expect(restsOn(both).map(({ key }) => key)).toEqual(['bodyRise', 'insideLeg', 'hipDepth']);
    const [low, high] = estimateRange(rise ?? { value: 0, spread: 0 });
    expect([low, high].map(Math.round)).toEqual([171, 241]);
  });

  it('leans on trousers where those were measured, and on nothing that is an estimate itself', () => {
    const body = prepareBody({
      label: 'a',
      waistGirth: 965,
      hipGirth: 1041,
      trouserInseam: 762,
      bodyRise: 'estimated',
    });
    const of = (key: string) => body.estimates.find((one) => one.key === key);
    expect(of('bodyRise')?.from).toEqual(['waistGirth', 'hipGirth', 'trouserInseam']);
    expect(of('hipDepth')?.from).toEqual(['waistGirth', 'hipGirth', 'trouserInseam']);
    expect(restsOn(body).map(({ key }) => key)).toEqual(['bodyRise', 'hipDepth']);
  });

  it('takes a small body of unknown age for a child, whose rise is inferred', () => {
    const small = prepareBody({ label: 'c', waistGirth: 530, hipGirth: 600, insideLeg: 545, bodyRise: 'estimated' });
    expect(small.child).toBe(true);
    expect(small.estimates.find(({ key }) => key === 'bodyRise')?.basis).toBe('inference');
    expect(small.bodyRise).toBeGreaterThan(90);
    expect(small.bodyRise).toBeLessThan(190);
  });

  it('says that waist and hip are needed before an estimate, and refuses one that no body has', () => {
    expect(bodyProblems({ label: 'a', bodyRise: 'estimated', insideLeg: 760 }).map(({ field }) => field)).toEqual([
      'body.waistGirth',
      'body.hipGirth',
      'body.bodyRise',
    ]);
    const [odd] = bodyProblems({ ...BODY, height: 2400, insideLeg: 400, bodyRise: 'estimated' });
    expect([odd?.field, odd?.value]).toEqual(['body.bodyRise', 'estimated']);
  });

  it('names every required measurement that is missing', () => {
    expect(bodyProblems({ label: 'a' }).map((p) => p.field)).toEqual([
      'body.waistGirth',
      'body.hipGirth',
      'body.bodyRise',
      'body.insideLeg',
    ]);
    expect(() => prepareBody({ label: 'a' })).toThrow(Refusal);
  });

  it.each([0, -5, 1e9, Number.NaN, 399, 2101])('refuses a hip of %f and says the limits', (hipGirth) => {
    const [problem] = bodyProblems({ ...BODY, hipGirth });
    expect(problem?.field).toBe('body.hipGirth');
    expect(problem?.phrase.values).toContainEqual({ mm: 400 });
  });

  it('refuses a hip far below the seat, a knee outside the leg and a front part longer than the whole', () => {
    expect(bodyProblems({ ...BODY, hipDepth: 371 })[0]?.field).toBe('body.hipDepth');
    expect(bodyProblems({ ...BODY, hipDepth: 369 })).toEqual([]);
    expect(bodyProblems({ ...BODY, waistToKnee: 300 })[0]?.field).toBe('body.waistToKnee');
    const front = { ...BODY, crotchLength: 700, frontCrotchLength: 700 };
    expect(bodyProblems(front)[0]?.field).toBe('body.frontCrotchLength');
    expect(bodyProblems({ ...front, frontCrotchLength: 320 })).toEqual([]);
  });

  it('takes a toddler whose rise at the navel is 70', () => {
    const toddler = { ...CHILD, ageYears: 2, height: 880, waistGirth: 470, hipGirth: 500, insideLeg: 340 };
    expect(bodyProblems({ ...toddler, bodyRise: 70 })).toEqual([]);
    expect(bodyProblems({ ...toddler, bodyRise: 69 })[0]?.field).toBe('body.bodyRise');
    const body = prepareBody({ ...toddler, bodyRise: 70 });
    for (const { value } of body.estimates) expect(value).toBeGreaterThan(0);
  });
});

describe('the catalogue', () => {
  it('holds every key once, with sensible limits, a definition and where the tape goes', () => {
    expect(new Set(measurements.map((m) => m.key)).size).toBe(measurements.length);
    for (const m of measurements) {
      expect(m.lowest).toBeLessThan(m.highest);
      expect(m.definition.template, m.key).toMatch(/\.$/);
      expect(m.where.template, m.key).toMatch(/\.$/);
    }
  });

  it('says of every clause of the standard whether it was quoted or comes from memory', () => {
    for (const { key, iso, isoFrom } of measurements) expect(isoFrom === undefined, key).toBe(iso === undefined);
    expect(measurements.filter((m) => m.isoFrom === 'memory').map((m) => m.key)).toEqual(['ankleGirth']);
  });
});

describe('estimates of an adult', () => {
  // ANSUR II, medians (NATICK/TR-15/007, 2014): waist 907, hip 1017, stature 1719, rise 206, crotch height 825 →
  // thigh 621, lower thigh 405 (× 0.95), calf 385, ankle 225, heel-ankle 334, hip depth 162, knee height 476.
  const median = { waistGirth: 907, hipGirth: 1017, bodyRise: 206, insideLeg: 825, height: 1719 };
  it.each([
    ['thighGirth', 621, 6],
    ['kneeGirth', 385, 6],
    ['calfGirth', 385, 4],
    ['ankleGirth', 225, 4],
    ['footEntryGirth', 334, 6],
    ['hipDepth', 162, 3],
    ['waistToKnee', 206 + 825 - 476, 5],
  ] as const)('%s of the median body comes out at the survey’s median', (key, wanted, within) => {
    expect(Math.abs(estimateMissing(key, median).value - wanted)).toBeLessThan(within);
    expect(Math.abs(estimateMissing(key, { ...median, height: undefined }).value - wanted)).toBeLessThan(within);
    expect(estimateMissing(key, median).source.template).toMatch(/ANSUR/);
  });

  it('say a crotch length for information, which reaches the working and not the draft', () => {
    expect(crotchLengthExpected(median)?.value).toBeCloseTo(620, 0);
    const told = bodyWorking(prepareBody(BODY)).find((step) => step.id === 'body.crotch');
    expect(printPhrase(told?.sentence ?? UNSAID, 'cm')).toMatch(/nothing is drawn from it/);
    const measured = prepareBody({ ...BODY, crotchLength: 700 });
    expect(bodyWorking(measured).some((step) => step.id === 'body.crotch')).toBe(false);
    expect(crotchLengthExpected(CHILD)).toBeUndefined();
  });
});

describe('a child', () => {
  it.each([
    ['by its age', { ageYears: 17, height: 1750 }, true],
    ['not from eighteen on, however small', { ageYears: 18, height: 1300 }, false],
    ['of unknown age below 1,400 mm', { height: 1399 }, true],
    ['of unknown age above', { height: 1400 }, false],
    ['of unknown age and height with a waist lower than any adult’s', { bodyRise: 140, insideLeg: 640 }, true],
    ['not with a waist as high as an adult’s', {}, false],
  ])('is told %s', (_name, figures, child) => {
    expect(prepareBody({ ...BODY, ...figures }).child).toBe(child);
  });

  it('is estimated by the children’s survey, never by soldiers’ lines', () => {
    for (const key of ['thighGirth', 'calfGirth', 'ankleGirth', 'hipDepth'] as const) {
      const estimate = estimateMissing(key, CHILD);
      expect(estimate.basis, key).toBe('survey');
      expect(words`${estimate.source}`, key).toMatch(/Infants, Children and Youths/);
      expect(words`${estimate.source}`, key).not.toMatch(/ANSUR/);
    }
  });

  it('has knee, foot entry and knee level only inferred, and the working says that nobody measured them and how far they may be off', () => {
    const body = prepareBody(CHILD);
    const inferred = body.estimates.filter((one) => one.basis === 'inference').map((one) => one.key);
    expect(inferred.sort()).toEqual(['footEntryGirth', 'kneeGirth', 'waistToKnee']);
    for (const key of inferred) {
      const step = bodyWorking(body).find(({ id }) => id === `body.estimate.${key}`);
      expect(printPhrase(step?.sentence ?? UNSAID, 'cm')).toMatch(
        /was not measured, and no survey of children measured it; by adults’ proportions two in three lie within/,
      );
      expect(printPhrase(step?.formula ?? UNSAID, 'cm')).toMatch(/inferred/);
    }
  });

  it('lends its own calf and ankle to what is inferred from them', () => {
    expect(estimateMissing('kneeGirth', { ...CHILD, calfGirth: 251 }).value).toBeCloseTo(251, 6);
    expect(estimateMissing('footEntryGirth', { ...CHILD, ankleGirth: 160 }).value).toBeCloseTo(
      0.557 * 160 + 0.121 * 1180,
      6,
    );
    const wider = estimateMissing('kneeGirth', CHILD).spread;
    expect(estimateMissing('kneeGirth', { ...CHILD, calfGirth: 251 }).spread).toBeLessThan(wider);
  });

  it('has what is inferred with a spread of a twelfth at least, for adults’ proportions miss children', () => {
    for (const key of ['kneeGirth', 'footEntryGirth'] as const) {
      const { value, spread } = estimateMissing(key, { ...CHILD, calfGirth: 251, ankleGirth: 160 });
      expect(spread, key).toBeCloseTo(0.08 * value, 6);
    }
  });

  it('without a height is estimated as if it had the height of its waist', () => {
    const { height: _, ...without } = CHILD;
    for (const key of ['thighGirth', 'calfGirth', 'ankleGirth', 'hipDepth'] as const) {
      const near = Math.abs(estimateMissing(key, without).value - estimateMissing(key, CHILD).value);
      expect(near, key).toBeLessThan(4);
    }
  });
});
