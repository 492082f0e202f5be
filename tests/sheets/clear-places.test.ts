import { expect, test } from 'vitest';
import { drawingInk, inkCrosses, pieceDrawing } from '../../src/drawing';
import { boxesMeet, boxHolds, point } from '../../src/plane';
import { clearPlaces } from '../../src/sheets';
import { draftWith } from '../files/drafts';

const [leg] = draftWith().pieces;
if (!leg) throw new Error('no leg');
const drawing = pieceDrawing(leg);
const ink = drawingInk([drawing]);
const { left, top, right } = drawing.bounds;
/** The upper left corner of the leg, with white beside its rim. */
const room = { left: left - 20, top: top - 20, right: (left + right) / 2, bottom: top + 260 };
const middle = point((room.left + room.right) / 2, (room.top + room.bottom) / 2);

test('what is found is white, and as large as was asked for', () => {
  const clear = clearPlaces(room, ink, 1)([]);
  for (const size of [10, 25, 40]) {
    const box = clear(size, size, middle);
    expect(box && inkCrosses(ink, box), `${size}`).toBe(false);
    expect(box && [box.right - box.left, box.bottom - box.top]).toEqual([size, size].map((s) => expect.closeTo(s, 6)));
  }
});

test('it lies by the place that was named where that is free, and keeps off what is taken', () => {
  const free = clearPlaces(room, ink, 1)([])(10, 10, middle);
  expect(free).toBeDefined();
  if (!free) return;
  const at = point((free.left + free.right) / 2, (free.top + free.bottom) / 2);
  const again = clearPlaces(room, ink, 1)([])(10, 10, at);
  expect(again && boxHolds(again, at)).toBe(true);
  const beside = clearPlaces(room, ink, 1)([free])(10, 10, at);
  expect(beside && boxesMeet(beside, free)).toBe(false);
});

test('where nothing is as large, nothing is found', () => {
  expect(clearPlaces(room, ink, 1)([])(room.right - room.left - 5, 200, middle)).toBeUndefined();
  expect(clearPlaces(room, ink, 1)([room])(5, 5, middle)).toBeUndefined();
});
