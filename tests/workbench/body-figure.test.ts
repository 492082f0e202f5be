import { describe, expect, it } from 'vitest';
import { type BodyInput, measurements, prepareBody, STARTING_BODIES } from '../../src/body';
import {
  backLines,
  frontLines,
  seatedLines,
  sideLines,
  wholeLines,
} from '../../src/workbench/table/drawings/figure-lines';
import { figureBox, figurePlaces, figureShape } from '../../src/workbench/table/drawings/figure-shape';
import { figureViews, tapeMarks, viewScale } from '../../src/workbench/table/drawings/tape-paths';

const bodies: readonly BodyInput[] = [
  { label: 'example', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 },
  { label: 'full waist', waistGirth: 1500, hipGirth: 1250, bodyRise: 212, insideLeg: 869, height: 1819 },
  { label: 'low hip', waistGirth: 742, hipGirth: 1020, hipDepth: 330, bodyRise: 240, insideLeg: 758 },
  ...Object.values(STARTING_BODIES).flatMap((list) =>
    [list[0], list.at(-1)].map((start) => ({ label: 'start', ...start?.figures })),
  ),
];
const shapes = bodies.map((body) => figureShape(prepareBody(body), body.height));

describe('the figure', () => {
  it('is drawn from every side with finite numbers', () => {
    for (const f of shapes) {
      for (const lines of [frontLines, backLines, sideLines, seatedLines, wholeLines]) {
        const { grounds, outlines, soft, furniture = '' } = lines(f);
        expect([...grounds, ...outlines, ...soft, furniture].join(' ')).not.toMatch(/NaN|undefined|Infinity/);
        expect(outlines.join('').match(/C/g)?.length ?? 0).toBeGreaterThan(9);
      }
    }
  });

  it('stands in its views side by side, none over another', () => {
    for (const f of shapes) {
      const places = figurePlaces(f);
      const wide = Math.max(f.half.hip, f.half.waist);
      expect(places.side.x + Math.min(f.heel, f.aft.hip, f.aft.waist)).toBeGreaterThan(wide);
      expect(places.back.x - wide).toBeGreaterThan(places.side.x + Math.max(f.toe, f.fore.waist, f.fore.hip));
      expect(figureBox(f).right).toBeGreaterThanOrEqual(places.back.x + wide);
    }
  });

  it('sits with its feet on the floor on which it stands', () => {
    for (const f of shapes) {
      expect(figurePlaces(f).seated.y + f.crotchLevel + f.chair).toBeCloseTo(f.floor, 6);
    }
  });
});

describe('the tape', () => {
  const taped = measurements.filter(({ key }) => key !== 'ageYears');

  it.each(taped.map(({ key }) => key))('has its own path for %s, on a view that is shown while it is typed', (key) => {
    for (const f of shapes) {
      const shown = tapeMarks(key, f).filter(({ view }) => figureViews(key).includes(view));
      expect(shown.length).toBeGreaterThan(0);
      expect(shown.some(({ label }) => label)).toBe(true);
      const box = figureBox(f);
      for (const { view, seen, hidden = '', label } of shown) {
        expect(`${seen}${hidden}`).not.toMatch(/NaN|undefined/);
        const place = figurePlaces(f)[view];
        const y = place.y + viewScale(view, f) * (label?.y ?? 0);
        expect(y).toBeGreaterThanOrEqual(box.top);
        expect(y).toBeLessThanOrEqual(box.bottom);
      }
    }
  });

  it('goes another way for every measurement', () => {
    const [f] = shapes;
    if (!f) throw new Error('no figure');
    const paths = taped.map(({ key }) =>
      tapeMarks(key, f)
        .map(({ view, seen }) => view + seen)
        .join(),
    );
    expect(new Set(paths).size).toBe(taped.length);
    expect(tapeMarks('ageYears', f)).toEqual([]);
  });

  it('shows a body rise sitting, and a height from head to foot', () => {
    expect(figureViews('bodyRise')).toContain('seated');
    expect(figureViews('height')).toContain('whole');
    expect(figureViews('crotchLength')).toEqual(['front', 'side', 'back']);
  });
});
