import { expect, it } from 'vitest';
import { cutCurves, ELASTIC_LAP, elasticLength } from '../../src/edges';
import { curvesBounds, distance, pathEnd, pathStart } from '../../src/plane';
import { checksOf, exampleProject } from '../../src/project';
import { drafted, pieceOf } from './drafted';

// 0.92 × waist, at most 70 mm under it, and 25 of lap (practice; two to three inches less than the waist: published).
it.each([
  [600, 577],
  [875, 830],
  [1000, 955],
  [1400, 1355],
])('elastic for a waist of %i mm is cut %i mm long', (waist, length) => {
  expect(elasticLength(waist, 5000)).toBeCloseTo(length, 9);
  expect(elasticLength(waist, 500)).toBe(500);
});

it('elastic reaches as far as its ring does, without the lap', () => {
  const reach = (change: object) => {
    const d = drafted({ waist: { ...exampleProject.waist, ...change } });
    return [checksOf(d).find(({ id }) => id === 'elastic-reaches'), d.notions.elasticLength ?? 0] as const;
  };
  for (const elasticStretch of [0.2, 0.7, 1.4]) {
    const [check, length] = reach({ elasticStretch });
    expect(check?.measured).toBeCloseTo((length - ELASTIC_LAP) * (1 + elasticStretch), 6);
  }
  // The hip of the example is 1020: a ring of 600 × 1.7 is just enough.
  expect(reach({ elasticLength: 625.1 })[0]?.verdict).toBe('good');
  expect(reach({ elasticLength: 624.9 })[0]?.verdict).toBe('wrong');
  expect(reach({ elasticStretch: 0.2 })[0]).toMatchObject({ verdict: 'wrong' });
});

it('a cord is as long as it was chosen, at the waist and at the hem', () => {
  const change = (cordLength: number | 'auto') => ({
    waist: { ...exampleProject.waist, finish: 'drawstringCasing', cordLength } as const,
    hem: { ...exampleProject.hem, finish: 'drawstringCasing', cordLength } as const,
  });
  expect(drafted(change(1234)).notions).toMatchObject({ cordLength: 1234, hemCordLength: 1234 });
  const { notions, measures } = drafted(change('auto'));
  expect(notions.cordLength).toBeCloseTo(measures.waistOpening + 550, 6);
});

it.each([
  ['elasticCasing', 6],
  ['drawstringCasing', 6],
  ['ribCuff', 3],
  ['contrastBand', 3],
  ['turned', 0],
  ['facedHem', 0],
] as const)('a hem with %s has %i quarter marks', (finish, count) => {
  const leg = pieceOf(drafted({ hem: { ...exampleProject.hem, finish } }), 'leg');
  const quarters = leg.lines.filter(({ name }) => name === 'hemQuarter');
  expect(quarters).toHaveLength(count);
  // Inside the piece, not beyond its raw edge.
  const { bottom } = curvesBounds(cutCurves(leg));
  for (const { curves } of quarters) expect(curvesBounds(curves).bottom).toBeLessThan(bottom + 0.05);
});

it('the quarters of a hem part its edge in four, apart from the side', () => {
  const leg = pieceOf(drafted({ hem: { ...exampleProject.hem, finish: 'contrastBand' } }), 'leg');
  const marks = leg.lines.filter(({ name }) => name === 'hemQuarter').map(({ curves }) => pathStart(curves));
  const hem = leg.stitchLine.find(({ name }) => name === 'hem')?.curves ?? [];
  const round = [pathStart(hem), ...marks, pathEnd(hem)].sort((a, b) => a.x - b.x);
  const parts = round.slice(1).map((p, i) => distance(p, round[i] ?? p));
  for (const part of parts) expect(part).toBeCloseTo(distance(pathStart(hem), pathEnd(hem)) / 4, 6);
  expect(Math.min(...marks.map(({ x }) => Math.abs(x)))).toBeGreaterThan(2);
});
