import { describe, expect, it } from 'vitest';
import { type BodyInput, bodyRemarks, bodyWorking, prepareBody } from '../../src/body';
import { printPhrase, UNSAID } from '../../src/words';

/** An ordinary body, every measurement taken, the waist where the trade ties it. */
const BODY: BodyInput = {
  label: 'a',
  waistGirth: 742,
  hipGirth: 1020,
  hipDepth: 208,
  bodyRise: 262,
  insideLeg: 758,
  crotchLength: 715,
  frontCrotchLength: 330,
  highHipGirth: 900,
  thighGirth: 610,
  kneeGirth: 382,
  calfGirth: 372,
  ankleGirth: 225,
  footEntryGirth: 320,
  waistToKnee: 590,
  outsideLeg: 1040,
  height: 1660,
};
const inches = (value = 0) => value / 2.54;
const ids = (change: Partial<BodyInput>) => bodyRemarks({ ...BODY, ...change }).map((remark) => remark.id);

describe('remarks about a body', () => {
  it('are none where everything was measured well', () => {
    expect(bodyRemarks(BODY)).toEqual([]);
    expect(bodyRemarks({ label: 'nothing yet' })).toEqual([]);
  });

  it('let a waist larger than the hip pass: an ordinary body', () => {
    expect(ids({ waistGirth: 1180, highHipGirth: 1150 })).toEqual([]);
  });

  // Each slip is one that a tape and a keyboard make, on a body that is otherwise as measured.
  it.each<readonly [string, Partial<BodyInput>, string]>([
    ['waist and hip swapped', { waistGirth: 1020, hipGirth: 742 }, 'waist-hip'],
    ['the outside leg as inside leg', { insideLeg: 1030 }, 'inside-height'],
    ['the inside leg as outside leg', { outsideLeg: 758 }, 'outside-sum'],
    ['the inside leg in inches typed as centimetres', { insideLeg: inches(758) }, 'inside-rise'],
    ['the rise in inches typed as centimetres', { bodyRise: inches(262) }, 'rise-hip'],
    ['the hip in inches typed as centimetres', { hipGirth: inches(1020) }, 'hip-height'],
    ['the thigh in inches typed as centimetres', { thighGirth: inches(610) }, 'thigh-hip'],
    ['the knee in inches typed as centimetres', { kneeGirth: inches(382) }, 'knee-thigh'],
    ['the calf in inches typed as centimetres', { calfGirth: inches(372) }, 'calf-knee'],
    ['the ankle in inches typed as centimetres', { ankleGirth: inches(225) }, 'foot-ankle'],
    ['the hip depth in inches typed as centimetres', { hipDepth: inches(208) / 1.2 }, 'depth-rise'],
    ['the crotch length in inches typed as centimetres', { crotchLength: inches(715) }, 'crotch-hip'],
    ['half the crotch length as the whole', { crotchLength: 385 }, 'crotch-rise'],
    ['the back part as the front part', { frontCrotchLength: 430 }, 'front-crotch'],
    ['the front part alone', { crotchLength: undefined as never }, 'front-alone'],
    ['the waist as high hip', { highHipGirth: 690 }, 'high-hip'],
    ['waist to knee down to the calf', { waistToKnee: 690 }, 'knee-level'],
    ['the height in inches typed as centimetres', { height: inches(1660) }, 'rise-height'],
    ['under two years', { ageYears: 1 }, 'under-two'],
  ])('catch %s', (_slip, change, id) => {
    const remark = bodyRemarks({ ...BODY, ...change }).find((one) => one.id === id);
    expect(ids(change)).toContain(id);
    expect(remark?.source.template.length).toBeGreaterThan(5);
    expect(remark?.keys.length).toBeGreaterThan(0);
    expect(printPhrase(remark?.phrase ?? UNSAID, 'inch')).not.toMatch(/NaN|undefined|cm/);
  });

  it('change no value and refuse nothing, and are said in the working', () => {
    const swapped = { ...BODY, waistGirth: 1020, hipGirth: 830, thighGirth: 600 };
    const body = prepareBody(swapped);
    expect(body.thighGirth).toBe(600);
    expect(body.remarks).toEqual(bodyRemarks(swapped));
    const told = bodyWorking(body).filter((step) => step.id.startsWith('body.doubt.'));
    expect(told.length).toBe(body.remarks.length);
    expect(told.length).toBeGreaterThan(0);
    expect(told.every((step) => step.station === 'body')).toBe(true);
  });

  it('hold children to children’s figures', () => {
    // A two-year-old: short legs, a waist almost as large as the hip (AnthroKids, medians).
    const toddler = { ageYears: 2, height: 898, waistGirth: 468, hipGirth: 505, bodyRise: 112, insideLeg: 365 };
    expect(bodyRemarks({ label: 't', ...toddler, thighGirth: 280, calfGirth: 201, ankleGirth: 148 })).toEqual([]);
    expect(bodyRemarks({ label: 't', ...toddler, insideLeg: 330 }).map((one) => one.id)).toEqual(['inside-height']);
    expect(bodyRemarks({ label: 't', ...toddler, thighGirth: 390 }).map((one) => one.id)).toEqual(['thigh-hip']);
  });
});
