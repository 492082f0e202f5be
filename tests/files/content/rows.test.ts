import { describe, expect, test } from 'vitest';
import {
  bodyRows,
  cautionSentences,
  checkSentences,
  choiceSentences,
  controlRows,
  cutRows,
  scaleSentence,
} from '../../../src/files/content/rows';
import { checksOf } from '../../../src/project';
import { mm, say, UNSAID } from '../../../src/words';
import { draftWith, projectWith } from '../drafts';

describe('what the first sheet lists', () => {
  test('the measurements that were given, and only those', () => {
    const rows = bodyRows(draftWith({ body: { ageYears: 34 } }));
    expect(rows.map((row) => row.name)).toEqual([
      'Waist',
      'Hip',
      'Hip depth',
      'Body rise',
      'Inside leg',
      'Crotch length',
      'Age',
    ]);
    expect(rows.at(-1)?.value).toBe('34 years');
  });

  test('every choice in one sentence, none of them undefined', () => {
    const sentences = choiceSentences(draftWith({ leg: { length: { inseam: 500 }, shape: { hemGirth: 600 } } }));
    expect(sentences.map((sentence) => sentence.split(':')[0])).toEqual([
      'Cloth',
      'Leg',
      'Waist',
      'Hem',
      'Seam allowances are drawn in',
    ]);
    expect(sentences[1]).toContain('inseam 50 cm');
    expect(sentences[1]).toContain('hem 60 cm round');
    for (const sentence of sentences) expect(sentence).not.toMatch(/undefined|NaN|\[object/);
  });

  test('two legs, one of them mirrored, and the elastic', () => {
    const rows = cutRows(draftWith());
    expect(rows[0]).toEqual({ name: 'leg, of the cloth', value: '2 (1 mirrored)' });
    expect(rows[1]?.name).toBe('2.5 cm elastic');
  });

  test('the lines that cross a join, to be measured after joining', () => {
    expect(controlRows(draftWith()).map((row) => row.name)).toEqual([
      'hip line',
      'front inseam, along its stitching line',
    ]);
    // At half size every control length is half as long on the paper.
    const half = controlRows(draftWith({ paper: { sheet: 'A4', scale: 0.5 } }));
    expect(half[0]?.value).toBe('27.5 cm');
    // On one sheet of A0 nothing is joined, so there is nothing to prove.
    // On one sheet they prove the print.
    expect(controlRows(draftWith({ paper: { sheet: 'A0' } }))).toEqual(controlRows(draftWith()));
  });
});

describe('checks', () => {
  const [good] = checksOf(draftWith());
  if (!good) throw new Error('no checks');
  const wrong = {
    ...good,
    verdict: 'wrong',
    name: say`Hem`,
    reason: say`Short by ${mm(30)}.`,
    remedy: say`Widen it.`,
  } as const;
  const doubtful = { ...good, verdict: 'doubtful', name: say`Waist`, reason: say`Full.`, remedy: UNSAID } as const;

  test('wrong before doubtful, each with what to change', () => {
    expect(checkSentences([good, doubtful, wrong], 'cm')).toEqual([
      'Wrong – Hem: Short by 3 cm. Widen it.',
      'Doubtful – Waist: Full.',
    ]);
  });

  test('one sentence where all is well', () => {
    expect(checkSentences([good, good], 'cm')).toEqual(['All 2 checks are good.']);
  });
});

test.each([
  [{}, ''],
  [{ scale: 0.5 }, /half of true size, allowances too: a sample, not for cutting out/],
  [{ scale: 0.5, allowances: 'full' as const }, /half of true size, allowances at full width/],
  [{ scale: 1 / 3 }, /a third of true size/],
  [{ scale: 0.4 }, /0\.4 of true size/],
  [{ correctX: 1.012 }, /Corrected for one printer: × 1\.012 along the short side, × 1 along the long side/],
])('%o says %s', (paper, says) => {
  expect(scaleSentence({ ...projectWith().paper, ...paper })).toMatch(says === '' ? /^$/ : says);
});

test('the cautions, and once at the end that the tool certifies nothing', () => {
  const { cautions } = draftWith({ body: { ageYears: 6 } });
  const sentences = cautionSentences(cautions, 'inch');
  expect(sentences).toHaveLength(cautions.length + 1);
  expect(sentences[1]).toMatch(/^Children’s sleepwear: For a child of 6 years: /);
  expect(sentences.filter((sentence) => sentence.includes('certifies nothing'))).toHaveLength(1);
  expect(sentences.at(-1)).toContain('certifies nothing');
});
