import { describe, expect, it } from 'vitest';
import { limbGirth, passedBelow } from '../../src/body';

const LEG = {
  insideLeg: 800,
  thighGirth: 600,
  kneeGirth: 380,
  calfGirth: 370,
  ankleGirth: 230,
  footEntryGirth: 330,
};

describe('the girth of a leg', () => {
  it('is the ankle’s near the floor and the thigh’s at the crotch, and never beyond them', () => {
    expect(limbGirth(LEG, 0)).toBe(230);
    expect(limbGirth(LEG, 96)).toBe(230);
    expect(limbGirth(LEG, 800)).toBe(600);
    expect(limbGirth(LEG, 900)).toBe(600);
  });

  it('runs straight between ankle, calf, knee and thigh', () => {
    expect(limbGirth(LEG, 320)).toBeCloseTo(370, 9);
    expect(limbGirth(LEG, (96 + 320) / 2)).toBeCloseTo(300, 9);
    expect(limbGirth(LEG, 0.573 * 800)).toBeCloseTo(380, 9);
  });

  it('a hem passes the foot, and a calf only where it ends above it', () => {
    const fullest = (height: number) => Math.max(...passedBelow(LEG, height).map(({ girth }) => girth));
    expect(fullest(100)).toBe(330);
    expect(fullest(330)).toBe(370);
    expect(fullest(500)).toBe(380);
    expect(passedBelow(LEG, 500).map(({ key }) => key)).toEqual([
      'footEntryGirth',
      'ankleGirth',
      'calfGirth',
      'kneeGirth',
    ]);
  });
});
