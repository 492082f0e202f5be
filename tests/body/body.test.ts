import { describe, expect, it } from 'vitest';
import { bodyProblems, estimateMissing, measurements, prepareBody } from '../../src/body';
import { Refusal } from '../../src/length';

const BODY = { label: 'a', waistGirth: 760, hipGirth: 1020, bodyRise: 270, insideLeg: 760 };

describe('a body', () => {
  it('keeps what was measured and estimates only what is missing', () => {
    const body = prepareBody({ ...BODY, kneeGirth: 402 });
    expect(body.kneeGirth).toBe(402);
    expect(body.estimates.map((e) => e.key).sort()).toEqual([
      'footEntryGirth',
      'hipDepth',
      'thighGirth',
      'waistToKnee',
    ]);
    for (const estimate of body.estimates) expect(estimate.spread).toBeGreaterThan(5);
  });

  it('never invents a crotch length, a front part or a high hip', () => {
    const body = prepareBody(BODY);
    expect([body.crotchLength, body.frontCrotchLength, body.highHipGirth]).toEqual([undefined, undefined, undefined]);
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
    expect(problem?.phrase).toContainEqual({ mm: 400 });
  });

  it('refuses a hip far below the seat and a knee outside the leg', () => {
    expect(bodyProblems({ ...BODY, hipDepth: 335 })[0]?.field).toBe('body.hipDepth');
    expect(bodyProblems({ ...BODY, waistToKnee: 300 })[0]?.field).toBe('body.waistToKnee');
  });

  it('has a catalogue in which every key stands once, with sensible limits', () => {
    expect(new Set(measurements.map((m) => m.key)).size).toBe(measurements.length);
    for (const m of measurements) expect(m.lowest).toBeLessThan(m.highest);
  });
});

describe('estimates', () => {
  // ANSUR II, medians (NATICK/TR-15/007, 2014): waist 907, hip 1017, stature 1719, rise 206, crotch height 825 →
  // thigh 621, lower thigh 405 (× 0.95), heel-ankle 334, hip depth 162, knee height 476.
  const median = { waistGirth: 907, hipGirth: 1017, bodyRise: 206, insideLeg: 825, height: 1719 };
  it.each([
    ['thighGirth', 621, 6],
    ['kneeGirth', 385, 6],
    ['footEntryGirth', 334, 6],
    ['hipDepth', 162, 3],
    ['waistToKnee', 206 + 825 - 476, 5],
  ] as const)('%s of the median body comes out at the survey’s median', (key, wanted, within) => {
    expect(Math.abs(estimateMissing(key, median).value - wanted)).toBeLessThan(within);
    expect(Math.abs(estimateMissing(key, { ...median, height: undefined }).value - wanted)).toBeLessThan(within);
  });
});
