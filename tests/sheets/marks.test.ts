import { describe, expect, test } from 'vitest';
import { drawingInk, pieceDrawing } from '../../src/drawing';
import {
  type JoinMark,
  joinLine,
  MARK,
  markCorners,
  planParts,
  type SheetPart,
  type SheetPlan,
  tilePieces,
} from '../../src/sheets';
import { LEAST_MARKED } from '../../src/sheets/joins';
import { markPlaces } from '../../src/sheets/marks';
import { legPiece, rectanglePiece } from '../drawing/leg-piece';
import { A4 } from './paper';

const plans = [
  ...['A4', 'A3', 'Letter', 'Legal'].flatMap((sheet) => [10, 0].map((overlap) => ({ ...A4, sheet, overlap }))),
  { ...A4, scale: 0.5 },
].map((paper) => ({
  name: `${paper.sheet}, overlap ${paper.overlap}, scale ${paper.scale}`,
  plan: tilePieces([legPiece], paper),
}));

const pairs = (plan: SheetPlan) => {
  const halves = new Map<number, { sheet: SheetPart; mark: JoinMark }[]>();
  for (const sheet of planParts(plan)) {
    for (const mark of sheet.marks) halves.set(mark.number, [...(halves.get(mark.number) ?? []), { sheet, mark }]);
  }
  return halves;
};
/** A half points towards the middle of its own part. */
const TOWARDS = { left: 'right', right: 'left', top: 'down', bottom: 'up' } as const;
const OPPOSITE = { left: 'right', right: 'left', up: 'down', down: 'up' } as const;

describe.each(plans)('$name', ({ plan }) => {
  test('each number stands on exactly two sheets, at one place of the drawing, the halves apart', () => {
    for (const [number, halves] of pairs(plan)) {
      expect(halves, `mark ${number}`).toHaveLength(2);
      const [first, second] = halves;
      expect(first?.mark.at).toEqual(second?.mark.at);
      expect(second?.mark.towards).toBe(OPPOSITE[first?.mark.towards ?? 'left']);
    }
  });

  test('two marks a join, well apart, on the stretch that both share; none where that is short', () => {
    for (const { joins, marks, label } of planParts(plan)) {
      const found = joins.map(({ side, at, from, to }) => {
        const [on, along] = side === 'left' || side === 'right' ? (['x', 'y'] as const) : (['y', 'x'] as const);
        const places = marks
          .filter((mark) => mark.towards === TOWARDS[side] && mark.at[on] === at)
          .map((mark) => mark.at[along])
          .filter((place) => place >= from && place <= to);
        const short = (to - from) * plan.scale[along] < LEAST_MARKED;
        expect(places.length, `${label} ${side}`).toBe(short ? 0 : 2);
        if (!short) expect(Math.abs((places[1] ?? 0) - (places[0] ?? 0)) * plan.scale[along]).toBeGreaterThan(5);
        return places.length;
      });
      expect(
        found.reduce((a, b) => a + b, 0),
        label,
      ).toBe(marks.length);
      expect(marks.length, label).toBeGreaterThan(0);
    }
  });

  test('no half reaches over the edge of its sheet, and none is under a neighbour', () => {
    for (const sheet of planParts(plan)) {
      const { window, marks } = sheet;
      const seen = {
        left: window.left,
        top: window.top,
        right: joinLine(sheet, 'right') ?? window.right,
        bottom: joinLine(sheet, 'bottom') ?? window.bottom,
      };
      for (const mark of marks) {
        for (const corner of markCorners(mark.towards)) {
          const at = { x: mark.at.x + corner.x / plan.scale.x, y: mark.at.y + corner.y / plan.scale.y };
          expect(at.x).toBeGreaterThanOrEqual(seen.left - 1e-9);
          expect(at.x).toBeLessThanOrEqual(seen.right + 1e-9);
          expect(at.y).toBeGreaterThanOrEqual(seen.top - 1e-9);
          expect(at.y).toBeLessThanOrEqual(seen.bottom + 1e-9);
        }
      }
    }
  });
});

test('a cut line that runs along nearly all of a join is not covered while a hand’s breadth is free', () => {
  const pocket = rectanglePiece('pocket', 190, 222);
  const ink = drawingInk([pieceDrawing(pocket, { x: 1.65, y: 4 })]);
  const join = { runs: 'down', at: 0, from: 0, to: 250 } as const;
  const { places, covers } = markPlaces(join, ink, { x: 1, y: 1 });
  expect(covers).not.toBe('cut');
  for (const { y } of places) expect(y).toBeGreaterThan(226);
  expect(Math.abs(places[1].y - places[0].y)).toBeGreaterThan(2 * 0.7 * MARK.halfBase);
});

test('two halves make one diamond: the same base, tips apart', () => {
  for (const [one, other] of [
    ['left', 'right'],
    ['up', 'down'],
  ] as const) {
    const [a, tip, b] = markCorners(one);
    const [c, otherTip, d] = markCorners(other);
    expect([a, b]).toEqual([c, d]);
    expect([tip.x + otherTip.x, tip.y + otherTip.y]).toEqual([0, 0]);
    expect(Math.hypot(tip.x, tip.y)).toBe(MARK.depth);
  }
});
