import { describe, expect, it } from 'vitest';
import { rulerMarks } from '../../src/workbench/table/ruler-marks';

const view = { scale: 0.6, left: 0, top: 0 };
const size = { width: 800, height: 1200 };

describe('ruler marks', () => {
  it('stand where the length is, with its number', () => {
    const mark = rulerMarks({ ...view, left: 100 }, size, 'across', 'cm').find(({ text }) => text === '20');
    expect(mark?.at).toBeCloseTo(100 + 200 * 0.6, 9);
  });

  it('have a main mark each 100 mm in centimetres', () => {
    const main = rulerMarks(view, size, 'across', 'cm').filter((mark) => mark.main);
    expect((main[1]?.at ?? 0) - (main[0]?.at ?? 0)).toBeCloseTo(60, 9);
  });

  it('have a main mark each 4 in in inches', () => {
    const main = rulerMarks(view, size, 'across', 'inch').filter((mark) => mark.main);
    expect((main[1]?.at ?? 0) - (main[0]?.at ?? 0)).toBeCloseTo(4 * 25.4 * 0.6, 9);
  });

  it.each([0.03, 0.1, 0.6, 2, 9, 20])('keep their distance at %f pixels a millimetre', (scale) => {
    for (const units of ['cm', 'inch'] as const) {
      const marks = rulerMarks({ scale, left: 0, top: -333 }, size, 'down', units);
      const numbered = marks.filter((mark) => mark.text !== '').map((mark) => mark.at);
      const gaps = numbered.slice(1).map((at, i) => at - (numbered[i] ?? 0));
      expect(Math.min(...gaps, Infinity)).toBeGreaterThanOrEqual(30);
      expect(marks.length).toBeLessThan(400);
    }
  });

  it('count with a true minus left of zero', () => {
    expect(rulerMarks({ ...view, left: 300 }, size, 'across', 'cm').map(({ text }) => text)).toContain('−10');
  });
});
