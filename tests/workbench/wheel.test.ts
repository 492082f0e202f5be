import { describe, expect, it } from 'vitest';
import { wheelFactor } from '../../src/workbench/view/wheel';

const turn = (deltaY: number, deltaMode = 0, ctrlKey = false) => wheelFactor({ deltaY, deltaMode, ctrlKey });

describe('a turn of the wheel', () => {
  it('by one notch zooms by the same, in pixels, lines and pages, whatever the settings', () => {
    const notch = turn(-100);
    expect(notch).toBeGreaterThan(1.1);
    for (const [deltaY, deltaMode] of [
      [-120, 0],
      [-333, 0],
      [-1, 1],
      [-3, 1],
      [-10, 1],
      [-1, 2],
    ] as const)
      expect(turn(deltaY, deltaMode), `${deltaY} in mode ${deltaMode}`).toBe(notch);
    expect(turn(100) * notch).toBeCloseTo(1, 12);
    expect(turn(3, 1) * notch).toBeCloseTo(1, 12);
  });

  it('on a touchpad adds up to the same, however finely it comes', () => {
    const steps = Array.from({ length: 25 }, () => turn(-4)).reduce((all, one) => all * one, 1);
    expect(steps).toBeCloseTo(turn(-100), 9);
  });

  it('by a pinch answers to smaller steps, and by none not at all', () => {
    expect(turn(-4, 0, true)).toBeGreaterThan(turn(-4));
    // A wheel with the control key held is still a notch, and no leap.
    expect(turn(-100, 0, true)).toBe(turn(-100));
    expect([turn(0), turn(0, 1)]).toEqual([1, 1]);
  });
});
