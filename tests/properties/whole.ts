import { expect } from 'vitest';
import {
  type Curve,
  curveCurvature,
  distance,
  edgeLength,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
} from '../../src/plane';
import { checksOf, type Draft, workingOf } from '../../src/project';
import { printPhrase } from '../../src/words';
import { BROKEN_WORDS } from './net';
import { girthAt, netOutline } from './outlines';

// What holds of every draft, whole.

const finite = (curves: readonly Curve[]) =>
  curves.every((curve) => curve.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y)));

const farthestGap = (curves: readonly Curve[]) =>
  Math.max(...curves.map((curve, i) => distance(curve[3], (curves[(i + 1) % curves.length] as Curve)[0])));

/** Finite, closed, equal inseams; the stitching line simple, and the cut line too, or the check says that it isn't. */
export function expectWholeOutlines(d: Draft) {
  const stitching = netOutline(d);
  for (const outline of [stitching, d.pieces[0]?.cutLine ?? []]) {
    const curves = outlineCurves(outline);
    expect(finite(curves)).toBe(true);
    expect(farthestGap(curves)).toBeLessThan(1e-3);
  }
  expect(outlineCrossings(outlineCurves(stitching))).toEqual([]);
  const cutCrossings = outlineCrossings(outlineCurves(d.pieces[0]?.cutLine ?? [])).length;
  expect(checksOf(d).find((c) => c.id === 'cut-line-simple')?.verdict).toBe(cutCrossings === 0 ? 'good' : 'wrong');
  // Only an allowance wider than the least radius of a hollow seam can make the cut line cross itself.
  const { crotch, inseam: along } = d.project.allowances;
  if (crotch <= leastRadius(d, 'crotch') && along <= leastRadius(d, 'inseam')) expect(cutCrossings).toBe(0);
  const inseam = (part: 'Front' | 'Back') => edgeLength(outlineEdge(stitching, `inseam${part}`));
  expect(Math.abs(inseam('Front') - inseam('Back'))).toBeLessThan(0.1);
  expect(Object.values(d.measures).every(Number.isFinite)).toBe(true);
}

/** The least radius of the two crotch curves, or of the two inseams. */
function leastRadius(d: Draft, seam: 'crotch' | 'inseam'): number {
  const curves = (['front', 'back'] as const).flatMap((part) => d.leg[part][seam]);
  const bends = curves.flatMap((curve) =>
    Array.from({ length: 101 }, (_, i) => Math.abs(curveCurvature(curve, i / 100))),
  );
  return 1 / Math.max(...bends);
}

/** A line that is drawn to a level is found there again to this, mm (tolerance). */
const ON_LEVEL = 0.01;

/**
 * Finished hip = hip + ease + 2 × spread, on the drawn line at the hip level. Never less; more only where that line lies in
 * a crotch curve, over a belly, or above the point about which a centre line was straightened, and never by more than the
 * forks have.
 */
export function expectPromisedHip(d: Draft) {
  const { front, back, hipLevel, straighten, spread } = d.leg;
  const { waistGirth = 0, hipGirth = 0, highHipGirth = 0 } = d.project.body;
  const drafted =
    d.project.block.source === 'drafted' ? d.project.block : { hipEase: Number.NaN, waistEase: Number.NaN };
  const seat = hipGirth + drafted.hipEase;
  const belly = Math.max(0, Math.max(waistGirth, highHipGirth) + drafted.waistEase - seat);
  const more = girthAt(netOutline(d), hipLevel) - (seat + 2 * spread);
  expect(more).toBeGreaterThan(-0.1);
  const inCurve = [front, back].some(({ curveEnd }) => hipLevel > curveEnd.y + ON_LEVEL);
  const turned = straighten > 0 && hipLevel < back.curveEnd.y - ON_LEVEL;
  if (belly === 0 && !inCurve && !turned) expect(more).toBeLessThan(0.1);
  else expect(more).toBeLessThan(2 * (d.blocks.extensionFront + d.blocks.extensionBack) + belly);
}

/** Steps with their own ids, that can be printed in both units, with lines that can be drawn. */
export function expectWorking(d: Draft) {
  const ids = workingOf(d).map((step) => step.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.length).toBeGreaterThan(10);
  for (const step of workingOf(d)) {
    for (const units of ['cm', 'inch'] as const) {
      expect(printPhrase(step.sentence, units)).toMatch(/\S.*\.$/s);
      expect(printPhrase(step.sentence, units) + printPhrase(step.formula, units), step.id).not.toMatch(BROKEN_WORDS);
    }
    expect(
      step.lines.every((line) => finite(line.curves)),
      step.id,
    ).toBe(true);
  }
  for (const check of checksOf(d))
    for (const phrase of [check.reason, check.remedy]) expect(printPhrase(phrase, 'inch')).not.toMatch(BROKEN_WORDS);
}
