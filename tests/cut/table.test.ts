import { expect, test } from 'vitest';
import { draft } from '../../src/project';
import { ONE_SHEET, projectFor } from '../outside/survey';
import { figuresOf } from './figures';
import { type Measured, measured } from './measured';
import { correlation, inOrder, percentile } from './statistics';
import { tableText, verdictsOf } from './table';
import { limitsHeld } from './wanted';

const BODY = {
  label: 'somebody',
  waistGirth: 800,
  hipGirth: 1000,
  bodyRise: 260,
  hipDepth: 200,
  insideLeg: 780,
  crotchLength: 690,
  frontCrotchLength: 310,
  thighGirth: 600,
};

const one = measured({
  name: 'adults, crotch length and its front part',
  people: [{ id: 'one', body: BODY, seatDepth: 240 }],
});

/** The same people with one figure set by hand. */
const withFigure = (figure: string, values: readonly number[]): Measured => ({
  ...one,
  rows: values.flatMap((value) => one.rows.map((row) => ({ ...row, figures: { ...row.figures, [figure]: value } }))),
});

test('percentiles are read from the values themselves', () => {
  const ordered = inOrder([5, 3, 1, 2, 4]);
  expect([0, 0.5, 1].map((share) => percentile(ordered, share))).toEqual([1, 3, 5]);
});

test('a correlation is 1 along a rising line, −1 along a falling one, 0 where nothing follows', () => {
  const line = [1, 2, 3, 4];
  expect(correlation(line.map((x) => [x, 2 * x + 7] as const))).toBeCloseTo(1, 9);
  expect(correlation(line.map((x) => [x, -x] as const))).toBeCloseTo(-1, 9);
  expect(
    correlation([
      [-1, 1],
      [1, 1],
      [-1, -1],
      [1, -1],
    ]),
  ).toBeCloseTo(0, 9);
});

test('the figures are those of the report, taken once more from the drawn lines', () => {
  const result = draft(projectFor(BODY, ONE_SHEET));
  if (!result.ok) throw new Error('refused');
  const { value } = result;
  const figures = figuresOf(value, { id: 'one', body: BODY, seatDepth: 240 });
  expect(figures.hipOver).toBeCloseTo(value.measures.hipGirthFinished - BODY.hipGirth, 1);
  expect(figures.hem).toBeCloseTo(value.measures.hemGirthFinished, 3);
  expect(figures.thighEase).toBeCloseTo(value.measures.thighGirthFinished - BODY.thighGirth, 3);
  expect(figures.crotchMiss).toBeCloseTo(value.measures.crotchFit, 3);
  expect(figures.forkSum).toBeCloseTo((figures.forkFront ?? 0) + (figures.forkBack ?? 0), 9);
  expect(figures.forkSumOfDepth).toBeCloseTo((100 * (figures.forkSum ?? 0)) / 240, 9);
  expect(figures.tilt).toBeCloseTo(value.leg.front.waistPoint.y - value.leg.back.waistPoint.y, 9);
});

test('a limit that is missed says so, and by whom', () => {
  const held = (measuredNow: Measured, what: RegExp) =>
    limitsHeld([measuredNow]).filter((limit) => what.test(limit.what));
  expect(held(withFigure('forkSumOfSeat', [20, 20.9]), /forks/).map(({ holds }) => holds)).toEqual([true]);
  expect(held(withFigure('forkSumOfSeat', [20, 23]), /forks/)).toMatchObject([{ holds: false, worst: 'one: 23.00' }]);
  expect(held(withFigure('hem', [430, 480, 520]), /hem/).map(({ holds }) => holds)).toEqual([true]);
  expect(held(withFigure('hem', [400, 480, 520]), /hem/).map(({ holds }) => holds)).toEqual([false]);
  const narrowest = { ...one, refused: ['two: body.bodyRise'] };
  expect(held(narrowest, /refused/)).toMatchObject([{ holds: false, worst: 'two: body.bodyRise' }]);
});

test('the table has every figure and every check that finds something', () => {
  const wrong = {
    ...one,
    rows: one.rows.map((row) => ({ ...row, verdicts: { ...row.verdicts, 'pull-on': 'wrong' } })),
  };
  expect(verdictsOf(wrong).whole).toEqual([0, 0, 1]);
  const text = tableText([wrong], 'Title');
  expect(text).toMatch(/^# Title/);
  expect(text).toMatch(/\| pull-on \| 0 \| 0 \| 1 \|/);
  expect(text).toMatch(/\| hem \| 1 \|/);
});
