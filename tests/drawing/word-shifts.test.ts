import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StandingWord, type Stretch, wordShifts } from '../../src/drawing';
import { type Box, boxesMeet, boxMeetsSegment, type Point, point } from '../../src/plane';
import { between, chance, PATIENCE } from '../properties/seed';

const ROOM: Box = { left: 0, right: 800, top: 0, bottom: 600 };
const word = (x: number, y: number, width = 80, inside = false): StandingWord => ({
  box: { left: x, right: x + width, top: y, bottom: y + 14 },
  inside,
});
const line = (ax: number, ay: number, bx: number, by: number, parts = false): Stretch => ({
  a: point(ax, ay),
  b: point(bx, by),
  parts,
});
const moved = ({ box }: StandingWord, by: Point): Box => ({
  left: box.left + by.x,
  right: box.right + by.x,
  top: box.top + by.y,
  bottom: box.bottom + by.y,
});

describe('words on a drawing', () => {
  it('stay where they are if nothing is in their way', () => {
    const words = [word(100, 100), word(100, 120)];
    expect(wordShifts(words, { lines: [line(0, 300, 800, 300)], taken: [], room: ROOM })).toEqual([
      point(0, 0),
      point(0, 0),
    ]);
  });

  it('make way for a line, and for the word before them', () => {
    const words = [word(100, 100), word(110, 104)];
    const shifts = wordShifts(words, { lines: [line(0, 107, 800, 107)], taken: [], room: ROOM });
    expect(shifts.every((shift) => shift !== undefined && (shift.x !== 0 || shift.y !== 0))).toBe(true);
  });

  it('look for room as far off as their letters are large', () => {
    // The nearest room for it is below what is full, 120 pixels down.
    const full = Array.from({ length: 17 }, (_, i) => line(0, 60 + 10 * i, 800, 60 + 10 * i));
    const around = { lines: full, taken: [{ ...ROOM, bottom: 60 }], room: ROOM };
    const small = word(100, 100);
    const large = { ...small, box: { ...small.box, bottom: small.box.top + 31 } };
    expect(wordShifts([small], around)).toEqual([undefined]);
    const [shift] = wordShifts([large], around);
    expect(large.box.top + (shift?.y ?? 0)).toBeGreaterThan(220);
  });

  it('are not carried over an outline to where they would say something else', () => {
    // A word in a piece whose lower half is full of lines, below the piece’s upper rim.
    const rim = line(0, 90, 800, 90, true);
    const full = Array.from({ length: 100 }, (_, i) => line(0, 96 + 5 * i, 800, 96 + 5 * i));
    const around = { lines: [rim, ...full], taken: [], room: ROOM };
    expect(wordShifts([word(100, 100, 80, true)], around)).toEqual([undefined]);
    // One that may stand beside what it names does so.
    expect(wordShifts([word(100, 100)], around)[0]?.y).toBeLessThan(-20);
  });

  it(
    'never lie on a line, on each other or on what lies over the drawing, whatever there is',
    () => {
      const place = fc.record({
        x: between(0, 700),
        y: between(0, 580),
        width: between(20, 160),
        inside: fc.boolean(),
      });
      const stretch = fc.tuple(between(0, 800), between(0, 600), between(0, 800), between(0, 600), fc.boolean());
      fc.assert(
        fc.property(fc.array(place, { maxLength: 12 }), fc.array(stretch, { maxLength: 20 }), (places, stretches) => {
          const words = places.map(({ x, y, width, inside }) => word(x, y, width, inside));
          const lines = stretches.map((one) => line(...one));
          const taken = [{ left: 300, right: 500, top: 200, bottom: 260 }];
          const shifts = wordShifts(words, { lines, taken, room: ROOM });
          const boxes = words.flatMap((one, i) => {
            const shift = shifts[i];
            return shift ? [moved(one, shift)] : [];
          });
          for (const [i, box] of boxes.entries()) {
            for (const { a, b } of lines) expect(boxMeetsSegment(box, a, b)).toBe(false);
            for (const other of [...taken, ...boxes.slice(i + 1)]) expect(boxesMeet(box, other)).toBe(false);
          }
        }),
        chance('words apart', 100),
      );
    },
    PATIENCE,
  );
});
