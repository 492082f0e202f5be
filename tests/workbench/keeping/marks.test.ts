import { expect, it } from 'vitest';
import { isWork } from '../../../src/workbench/photo/is-work';
import { NO_WORK, newShot } from '../../../src/workbench/photo/work';

const shot = newShot('front.jpg', 3000, 4000);
const marks = { landmarks: { waistSide: { x: 1, y: 2 } }, points: { crotch: [{ x: 1, y: 2, corner: true }] } };
const work = { ...NO_WORK, shots: [shot], front: { shot: 0, marks } };

it('takes marks on photographs as they were kept', () => {
  expect([NO_WORK, work, structuredClone(work)].map(isWork)).toEqual([true, true, true]);
});

it.each([
  null,
  7,
  {},
  { ...work, shots: [null] },
  { ...work, shots: [{ ...shot, corners: [null, null, null, null] }] },
  { ...work, front: { shot: 0, marks: { landmarks: { waistSide: null }, points: {} } } },
  { ...work, front: { shot: 0, marks: { landmarks: {}, points: { crotch: 'torn' } } } },
])('takes no others', (found) => {
  expect(isWork(found)).toBe(false);
});
