import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/plane';
import { type Garment, type PictureItem, stepPicture } from '../../src/sewing';
import { printPhrase } from '../../src/words';
import { CHILD, garmentWith, type Parts, POCKET } from './garments';

const itemsOf = (garment: Garment, view: 'legInLeg' | 'inseams' | 'marks'): readonly PictureItem[] =>
  stepPicture(garment, { view }).panels.flatMap(({ items }) => items);

const wordsAt = (items: readonly PictureItem[], text: string): readonly Point[] =>
  items.flatMap((item) => (item.kind === 'word' && printPhrase(item.text, 'cm') === text ? [item.at] : []));

const BODIES: Readonly<Record<string, Parts>> = {
  grown: {},
  short: { leg: { length: 'short' } },
  child: { body: CHILD, leg: { shape: { hemGirth: 290 } } },
  uneven: { sides: { left: { fullerHip: 10 } } },
};

/**
 * A right leg that stands before us, right side out, its inseam towards us, walks to our left: we look at it from where the
 * left leg is. Turned inside out it would walk to our right, and the left leg to our left, as the right one did.
 */
describe('a leg that is turned', () => {
  it('has its front on the left, right side out and inseam up, if it is the right one', () => {
    for (const [name, parts] of Object.entries(BODIES)) {
      const items = itemsOf(garmentWith(parts), 'legInLeg');
      const [inner] = items.filter((item) => item.kind === 'line' && item.line === 'stitch');
      const inseam = inner?.kind === 'line' ? (inner.points[0] as Point) : { x: Number.NaN, y: 0 };
      expect(wordsAt(items, 'right leg').length, name).toBe(1);
      expect(wordsAt(items, 'front')[0]?.x, name).toBeLessThan(inseam.x);
      expect(wordsAt(items, 'back')[0]?.x, name).toBeGreaterThan(inseam.x);
    }
  });

  it('goes into the other front on front and back on back: both lie the same way round', () => {
    for (const [name, parts] of Object.entries(BODIES)) {
      const items = itemsOf(garmentWith(parts), 'legInLeg');
      const inseams = items.flatMap((item) =>
        item.kind === 'line' && item.line === 'stitch' ? [item.points[0] as Point] : [],
      );
      expect(inseams.length, name).toBe(2);
      for (const half of ['front', 'back']) {
        const sides = wordsAt(items, half).map(({ x }, i) => Math.sign(x - (inseams[i]?.x ?? Number.NaN)));
        expect(sides, `${name}, ${half}`).toEqual([sides[0], sides[0]]);
      }
    }
  });

  it('has one notch pinned in the front half of the crotch seam, where that runs lower, and two behind', () => {
    const garment = garmentWith();
    const [lit] = itemsOf(garment, 'legInLeg').filter((item) => item.kind === 'line' && item.line === 'lit');
    const seam = lit?.kind === 'line' ? lit.points : [];
    const [front, back] = [seam[0] as Point, seam.at(-1) as Point];
    expect(front.x).toBeLessThan(back.x);
    // The waist is highest at centre back.
    expect(front.y).toBeGreaterThan(back.y);
  });
});

describe('a leg that is folded', () => {
  it('is one cloth at the fold: front and back share its ends', () => {
    for (const [name, parts] of Object.entries(BODIES)) {
      const areas = itemsOf(garmentWith(parts), 'inseams').flatMap((item) =>
        item.kind === 'area' ? [item.points] : [],
      );
      const [back, front] = areas as [readonly Point[], readonly Point[]];
      const shared = front.filter((p) => back.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < 0.01));
      expect(shared.length, name).toBeGreaterThanOrEqual(2);
      const ys = shared.map(({ y }) => y);
      expect(Math.max(...ys) - Math.min(...ys), name).toBeGreaterThan(0.9 * garmentWith(parts).leg.crotchLevel);
    }
  });
});

describe('a leg that is marked', () => {
  it('is the right one, wrong side up, its front at the left: on that the pocket is sewn', () => {
    const garment = garmentWith({ pocket: POCKET });
    const items = itemsOf(garment, 'marks');
    const [front, back] = [wordsAt(items, 'front')[0], wordsAt(items, 'back')[0]];
    expect(front?.x).toBeLessThan(back?.x ?? Number.NaN);
    expect(items.filter((item) => item.kind === 'area').map((item) => item.kind === 'area' && item.face)).toEqual([
      'wrong',
    ]);
    expect(wordsAt(items, 'pocket, this leg only').length).toBe(1);
  });
});
