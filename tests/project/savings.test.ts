import { describe, expect, test } from 'vitest';
import {
  applyRemedy,
  type ClothSaving,
  checksOf,
  clothOf,
  clothSavingsOf,
  type Draft,
  draft,
  exampleProject,
  garmentOf,
  type Project,
} from '../../src/project';
import { sewingSteps } from '../../src/sewing';
import { printPhrase } from '../../src/words';
import { pieceName } from '../names';

/** An average adult, and one whose legs just don't lie abreast any more. */
const body = (hipGirth: number): Project['body'] => ({
  label: '',
  hipGirth,
  waistGirth: hipGirth - 220,
  bodyRise: 260,
  insideLeg: 760,
});

function drafted(hip: number, cloth: Partial<Project['cloth']>, change: Partial<Project> = {}): Draft {
  const result = draft({
    ...exampleProject,
    body: body(hip),
    leg: { ...exampleProject.leg, length: 'full' },
    ...change,
    cloth: { ...exampleProject.cloth, width: 1450, ...cloth },
  });
  if (!result.ok) throw new Error(result.problems.map(({ field }) => field).join());
  return result.value;
}

const buys = (d: Draft): number => {
  const { answer } = clothOf(d);
  return answer.fits ? answer.lay.toBuy : Number.POSITIVE_INFINITY;
};
const stepsOf = (d: Draft) => sewingSteps(garmentOf(d)).map(({ id }) => id);
const ids = (d: Draft) => clothSavingsOf(d).map(({ id }) => id);

/** What is promised is what is bought when it is done. */
function expectKept(d: Draft, saving: ClothSaving): void {
  const changed = draft(applyRemedy(d.project, saving));
  if (!changed.ok) throw new Error(`${saving.id} is refused`);
  expect(buys(changed.value), saving.id).toBeCloseTo(saving.toBuy, 6);
  if (saving.saved !== undefined) expect(buys(d) - buys(changed.value), saving.id).toBeCloseTo(saving.saved, 6);
}

describe('what would save cloth', () => {
  test('is bought for exactly that when it is done', () => {
    let promised = 0;
    for (const [hip, cloth] of [
      [1020, {}],
      [1060, { washFirst: false }],
      [1060, { oneWay: true }],
      [1100, { layout: 'foldedCrosswise' }],
      [1060, { width: 1150 }],
      [1140, { piecedTip: 30 }],
    ] as const) {
      const d = drafted(hip, cloth);
      for (const saving of clothSavingsOf(d)) {
        promised += 1;
        expectKept(d, saving);
        expect(saving.saved).toBeGreaterThanOrEqual(100);
        expect(printPhrase(saving.says, 'inch')).toMatch(/^Buy .* instead of .*\.$/);
      }
      // The most first.
      const amounts = clothSavingsOf(d).map(({ toBuy }) => toBuy);
      expect(amounts).toEqual(amounts.toSorted((a, b) => a - b));
    }
    expect(promised).toBeGreaterThan(12);
  });

  test('is found for a left and a right leg that differ, each with its own tip', () => {
    const sides = { left: { longerLeg: 15 }, right: { fullerHip: 20 } } as unknown as NonNullable<Project['sides']>;
    const d = drafted(1060, {}, { sides });
    expect(d.pieces.map(pieceName)).toEqual(['leg left', 'leg right']);
    const tip = clothSavingsOf(d).find(({ id }) => id === 'pieced-tip-50');
    if (!tip) throw new Error('a tip would save here');
    expectKept(d, tip);
    const changed = draft(applyRemedy(d.project, tip));
    expect(changed.ok && changed.value.pieces.map(pieceName)).toEqual([
      'leg left',
      'leg right',
      'fork tip left',
      'fork tip right',
    ]);
    if (changed.ok) expect(stepsOf(changed.value)).toContain('fork-tip');
  });

  test('is a pieced fork tip where that brings both legs onto one length', () => {
    const d = drafted(1020, {});
    const tip = clothSavingsOf(d).find(({ id }) => id === 'pieced-tip-50');
    expect(tip?.oneLength).toBe(true);
    expect(tip && printPhrase(tip.says, 'cm')).toMatch(
      /^Buy 1\.\d m instead of 1\.\d m\. Both legs lie on one length then\. It takes a short seam on each leg, along the grain\.$/,
    );
  });

  test('is none where both legs lie side by side already, whatever is asked', () => {
    expect(ids(drafted(940, {}))).toEqual([]);
  });

  test('asks for no tip across a stripe or a check, nor for the one that is there', () => {
    const tips = (cloth: Partial<Project['cloth']>) =>
      ids(drafted(1060, cloth)).filter((id) => id.startsWith('pieced'));
    expect(tips({})).toEqual(['pieced-tip-50', 'pieced-tip-30']);
    expect(tips({ repeatAcross: 40 })).toEqual([]);
    expect(tips({ repeat: 60 })).toEqual([]);
    expect(tips({ piecedTip: 50 })).toEqual([]);
  });

  test('is the turning end for end, and a better layout, only where the other was chosen', () => {
    expect(ids(drafted(1060, { oneWay: true }))).toContain('either-way');
    expect(ids(drafted(1060, {}))).not.toContain('either-way');
    expect(ids(drafted(1060, { layout: 'foldedCrosswise' }))).toContain('shortest-lay');
    expect(ids(drafted(1060, {}))).not.toContain('shortest-lay');
  });

  test('says what would fit where nothing does', () => {
    const savings = clothSavingsOf(drafted(1060, { layout: 'foldedLengthwise' }));
    expect(savings.map(({ id }) => id)).toContain('shortest-lay');
    for (const { saved, says } of savings) {
      expect(saved).toBeUndefined();
      expect(printPhrase(says, 'cm')).toMatch(/^Buy [\d.]+ m, where nothing fits now\./);
    }
  });

  test('makes no check worse by a narrower hem', () => {
    for (const hip of [980, 1000, 1020, 1040, 1060]) {
      const d = drafted(hip, { width: 1500 });
      const hem = clothSavingsOf(d).find(({ id }) => id === 'narrower-hem');
      if (!hem) continue;
      const changed = draft(applyRemedy(d.project, hem));
      const bad = (one: Draft) =>
        checksOf(one)
          .filter(({ verdict }) => verdict !== 'good')
          .map(({ id }) => id);
      expect(changed.ok && bad(changed.value)).toEqual(bad(d));
    }
  });

  test('is found once', () => {
    const d = drafted(1060, {});
    expect(clothSavingsOf(d)).toBe(clothSavingsOf(d));
  });
});
