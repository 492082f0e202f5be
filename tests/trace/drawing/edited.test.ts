import { describe, expect, test } from 'vitest';
import { distance } from '../../../src/plane';
import {
  blockFromReading,
  drawnSheet,
  outlineScaled,
  pointRound,
  READ_PLACES,
  readingOf,
  readingScaled,
  uprightTurn,
  withEdgeNamed,
  withGrainAsDrawn,
  withNamesReversed,
  withNextCorner,
  withPressed,
  withRoundPlace,
} from '../../../src/trace';
import { drawingOf } from './drawn-blocks';
import { dxfOfLines, explodedLines, FORTY_PIECES, NAMELESS } from './written-drawings';

const sheet = drawnSheet(await drawingOf(NAMELESS));
const outline = sheet.outlines[sheet.picked?.front ?? 0];
if (!outline) throw new Error('no outline');
const front = readingOf(outline);
const at = (name: keyof typeof front.places, reading = front) => pointRound(reading.way, reading.places[name] ?? 0);

describe('a drawing to pick from', () => {
  test('has the only two outlines that look like blocks picked, among forty others too', async () => {
    expect(sheet.picked).toEqual({ front: 1, back: 0 });
    const many = drawnSheet(await drawingOf(dxfOfLines(explodedLines(8), 0, 25.4, FORTY_PIECES)));
    expect(many.unit).toBeUndefined();
    expect(many.outlines.length).toBeGreaterThan(30);
  });

  test('is taken to be in the unit in which a block is as large as blocks are', async () => {
    const inInches = drawnSheet(await drawingOf(dxfOfLines(explodedLines(8), 0, 25.4)));
    expect([inInches.unit, inInches.likelyUnit, inInches.picked]).toEqual([undefined, 25.4, { front: 1, back: 0 }]);
  });
});

describe('what was read in an outline is changed', () => {
  test('by a press, to the corner near it and no other', () => {
    const hem = at('hemSide');
    const pressed = withPressed(front, 'waistSide', { x: hem.x + 5, y: hem.y - 4 }, 10);
    expect(distance(at('waistSide', pressed), hem)).toBeLessThan(1e-6);
    const free = withPressed(front, 'crotchTop', { x: at('crotchTop').x, y: at('crotchTop').y - 60 }, 10);
    expect(at('crotchTop', free).y).toBeCloseTo(at('crotchTop').y - 60, 0);
  });

  test('by keys, from corner to corner and all the way round', () => {
    let reading = front;
    const places = new Set<number>();
    for (let i = 0; i < front.corners.length; i += 1) {
      reading = withNextCorner(reading, 'hemSide', true);
      places.add(Math.round(reading.places.hemSide ?? -1));
    }
    expect(places.size).toBe(front.corners.length);
    expect(reading.places.hemSide).toBeCloseTo(front.places.hemSide ?? 0, 6);
    const back = withNextCorner(withNextCorner(front, 'hemSide', true), 'hemSide', false);
    expect(back.places.hemSide).toBeCloseTo(front.places.hemSide ?? 0, 6);
  });

  test('by the name of an edge: the others follow, and back', () => {
    const turned = withEdgeNamed(front, 4, 0);
    expect([turned.places.waistSide, turned.places.waistCentre]).toEqual([
      front.places.hemInseam,
      front.places.hemSide,
    ]);
    expect(withEdgeNamed(turned, 0, 4).places).toEqual(front.places);
    expect(withNamesReversed(withNamesReversed(front)).places).toEqual(front.places);
    expect(withNamesReversed(front).places.waistSide).toBe(front.places.waistCentre);
  });

  test('places out of their order are no block, and it is said', () => {
    const crossed = withRoundPlace(front, 'hemSide', (front.places.waistSide ?? 0) + 1);
    const swapped = withRoundPlace(crossed, 'crotchPoint', front.places.hemSide ?? 0);
    expect(() => blockFromReading('front', swapped)).toThrow(/outline/);
  });

  test('a grainline that is not drawn stands as the piece is drawn', () => {
    const asDrawn = withGrainAsDrawn({ ...front, grain: undefined, doubts: new Set(['grain']) });
    expect([...asDrawn.doubts]).toEqual([]);
    expect(uprightTurn(asDrawn)).toBeCloseTo(0, 9);
  });

  test('twice as large, everything of it is', () => {
    const twice = readingScaled(front, 2);
    const again = readingOf(outlineScaled(outline, 2));
    expect(twice.way.length).toBeCloseTo(2 * front.way.length, 6);
    for (const name of READ_PLACES)
      if (name !== 'grain' && name !== 'hip' && name !== 'knee')
        expect(distance(at(name, twice), at(name, again)), name).toBeLessThan(0.01);
    expect(twice.hip).toEqual({ x: 2 * (front.hip?.x ?? 0), y: 2 * (front.hip?.y ?? 0) });
  });
});
