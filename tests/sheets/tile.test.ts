import { describe, expect, test } from 'vitest';
import { placer } from '../../src/drawing';
import { cutCurves, pieceLine } from '../../src/edges';
import { boxHolds, flattenCurves, outlineArea, point, straight } from '../../src/plane';
import { PAPER_SIZES, planParts, type SheetPlan, tilePieces } from '../../src/sheets';
import { legPiece, rectanglePiece } from '../drawing/leg-piece';
import { A4 } from './paper';

/** The last bits of a sum of millimetres: a join and a window's edge may be reckoned from either end. */
const SAME = 1e-9;

describe('a rectangle that can be counted by hand', () => {
  // A4 upright less two margins shows 190 × 277; a second sheet adds 180 × 267. The line's own width takes 0.3 a side.
  test('fits one sheet, and needs another when it is wider than the window less a line’s width', () => {
    const labels = (width: number, height: number) =>
      tilePieces([rectanglePiece('casing', width, height)], { ...A4, orientation: 'portrait' }).sheets.map(
        (s) => s.label,
      );
    expect(labels(189.3, 276.3)).toEqual(['A1']);
    expect(labels(189.5, 274)).toEqual(['A1', 'A2']);
    expect(labels(187, 276.5)).toEqual(['A1', 'B1']);
    expect(labels(369.3, 543.3)).toEqual(['A1', 'A2', 'B1', 'B2']);
    // What lies in the middle is two strips along the rims, which the corners of other sheets bear.
    expect(labels(369.5, 541)).toEqual(['A1', 'A3', 'B1', 'B3']);
  });

  test('turns the paper where that saves sheets, and takes fewer rows where it saves none', () => {
    expect(tilePieces([rectanglePiece('casing', 270, 150)], A4).paper).toEqual({ name: 'A4', width: 297, height: 210 });
    // 250 × 250: two sheets either way; upright they stand side by side in one row.
    expect(tilePieces([rectanglePiece('casing', 250, 250)], A4)).toMatchObject({
      rows: 1,
      columns: 2,
      paper: { width: 210 },
    });
  });

  test('leaves out the blank sheets inside a large piece, and takes them off the bound', () => {
    const plan = tilePieces([rectanglePiece('casing', 720, 1000)], { ...A4, orientation: 'portrait' });
    // A plain grid has 4 × 4 sheets, and four of them lie inside.
    expect(plan.sheets.length).toBeLessThanOrEqual(12);
    const window = 190 * 277;
    const shown = planParts(plan).reduce(
      (sum, part) => sum + (part.window.right - part.window.left) * (part.window.bottom - part.window.top),
      0,
    );
    expect(shown).toBeLessThan(720 * 1000);
    expect(plan.lowerBound).toBeLessThan((720 * 1000) / window);
    expect(plan.lowerBound).toBeLessThanOrEqual(Math.ceil(shown / window));
  });
});

const OPPOSITE = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const;

describe('the leg', () => {
  const plans = PAPER_SIZES.flatMap(({ name }) =>
    [0, 10, 25].map((overlap) => ({ name, overlap, plan: tilePieces([legPiece], { ...A4, sheet: name, overlap }) })),
  );
  const cut = flattenCurves(cutCurves(legPiece), 0.02);

  test.each(plans)('every point of the cut line is on a sheet or a tip: $name, overlap $overlap', ({ plan }) => {
    const place = placer(plan.places[0] ?? { turn: 0, shift: { x: 0, y: 0 } });
    const windows = planParts(plan).map(({ window }) => window);
    expect(cut.map(place).filter((p) => !windows.some((window) => boxHolds(window, p)))).toEqual([]);
  });

  test.each(plans)('rows and columns are those that sheets and tips fill: $name, overlap $overlap', ({ plan }) => {
    const rows = planParts(plan).map((s) => s.row);
    const columns = planParts(plan).map((s) => s.column);
    expect([Math.min(...rows), Math.max(...rows)]).toEqual([0, plan.rows - 1]);
    expect([Math.min(...columns), Math.max(...columns)]).toEqual([0, plan.columns - 1]);
  });

  test.each(plans)(
    'joins are where the neighbour begins, and the overlap goes on beyond: $name, overlap $overlap',
    ({ plan }) => {
      const parts = planParts(plan);
      for (const part of parts) {
        for (const { side, neighbour, at, from, to } of part.joins) {
          const other = parts.find(({ label }) => label === neighbour);
          expect(other?.joins).toContainEqual({ side: OPPOSITE[side], neighbour: part.label, at, from, to });
          if (!other) continue;
          const [first, second] = side === 'right' || side === 'bottom' ? [part, other] : [other, part];
          const [ends, starts] =
            side === 'right' || side === 'left'
              ? [first.window.right, second.window.left]
              : [first.window.bottom, second.window.top];
          expect(at).toBe(starts);
          expect(ends - starts).toBeCloseTo(plan.overlap, 9);
          for (const { window } of [part, other]) {
            const [low, high] =
              side === 'right' || side === 'left' ? [window.top, window.bottom] : [window.left, window.right];
            expect(from).toBeGreaterThanOrEqual(low - SAME);
            expect(to).toBeLessThanOrEqual(high + SAME);
          }
        }
      }
    },
  );

  test.each(plans)(
    'never below the area of the cloth over the area of the sheets: $name, overlap $overlap',
    ({ plan }) => {
      expect(plan.lowerBound).toBeLessThanOrEqual(plan.sheets.length);
      const first = plan.sheets[0]?.window ?? { left: 0, right: 0, top: 0, bottom: 0 };
      const window = (first.right - first.left) * (first.bottom - first.top);
      const full = Math.ceil(outlineArea(cutCurves(legPiece)) / window);
      expect(plan.lowerBound).toBeLessThanOrEqual(full);
      expect(plan.lowerBound).toBeGreaterThan(0);
    },
  );

  test('half scale takes about a quarter of the sheets, and shows twice as much on each', () => {
    const full = tilePieces([legPiece], A4);
    const half = tilePieces([legPiece], { ...A4, scale: 0.5 });
    const width = (plan: SheetPlan) => (plan.sheets[0]?.window.right ?? 0) - (plan.sheets[0]?.window.left ?? 0);
    expect(width(half) * half.scale.x).toBeCloseTo(half.paper.width - 20, 9);
    expect(half.sheets.length).toBeLessThan(full.sheets.length / 2.5);
  });

  test("a printer's correction turns with the paper", () => {
    const correct = { ...A4, correctX: 1.01, correctY: 0.99 };
    expect(tilePieces([legPiece], { ...correct, orientation: 'portrait' }).scale).toEqual({ x: 1.01, y: 0.99 });
    expect(tilePieces([legPiece], { ...correct, orientation: 'landscape' }).scale).toEqual({ x: 0.99, y: 1.01 });
  });
});

describe('several pieces', () => {
  const band = rectanglePiece('hemBand', 600, 80);
  const pocket = rectanglePiece('pocket', 170, 190);
  const pieces = [legPiece, band, pocket];

  test.each(['quick', 'thorough'] as const)(
    'share the grid and touch nowhere, however they are turned: %s',
    (search) => {
      const plan = tilePieces(pieces, A4, search);
      expect(plan.places.map((place) => place.piece.kind)).toEqual(['leg', 'hemBand', 'pocket']);
      const lines = pieces.map((piece, i) => {
        const place = placer(plan.places[i] ?? { turn: 0, shift: { x: 0, y: 0 } });
        return flattenCurves(cutCurves(piece), 0.1).map(place);
      });
      const [leg = [], ...others] = lines;
      for (const [k, other] of others.entries()) {
        for (const p of other) {
          expect(holds(leg, p)).toBe(false);
          expect(Math.min(...leg.map((q) => Math.hypot(p.x - q.x, p.y - q.y)))).toBeGreaterThan(5);
          for (const third of others.slice(k + 1)) expect(holds(third, p)).toBe(false);
        }
      }
      const alone = pieces.reduce((sum, piece) => sum + tilePieces([piece], A4).sheets.length, 0);
      expect(plan.sheets.length).toBeLessThanOrEqual(alone);
    },
  );

  test.each(['portrait', 'landscape', 'auto'] as const)('no word stands on its head: %s', (orientation) => {
    const upright = {
      ...band,
      texts: [{ at: point(40, 300), text: 'band', size: 5, turn: 90, says: 'piece' as const }],
    };
    const plan = tilePieces([legPiece, upright], { ...A4, orientation }, 'thorough');
    const turns = [legPiece, upright].flatMap(({ texts }, i) =>
      texts.map(({ turn }) => turn + (plan.places[i]?.turn ?? 0)),
    );
    expect(turns.length).toBeGreaterThan(1);
    for (const turn of turns) expect(Math.abs(turn)).toBeLessThan(135);
  });

  /** Even-odd, by a ray to the right. */
  function holds(line: readonly { x: number; y: number }[], p: { x: number; y: number }): boolean {
    return (
      line.filter((a, i) => {
        const b = line[(i + 1) % line.length] ?? a;
        return a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x);
      }).length %
        2 ===
      1
    );
  }
});

describe('one large sheet', () => {
  test('a roll is cut to the length that is needed, and the leg lies across it if that saves paper', () => {
    const plan = tilePieces([legPiece], { ...A4, sheet: 'Roll 36 in' });
    expect(plan.sheets).toHaveLength(1);
    expect(plan.paper.width).toBeCloseTo(36 * 25.4, 9);
    // The leg is 801 mm wide over its crotch points; lying down it would be too long for the roll's width.
    expect(plan.paper.height).toBeGreaterThan(1100);
    expect(plan.paper.height).toBeLessThan(1200);
    const wide = tilePieces([legPiece], { ...A4, sheet: 'own', ownWidth: 2000, ownHeight: 1300 });
    expect(wide.sheets).toHaveLength(1);
    expect(tilePieces([legPiece], { ...A4, sheet: 'Roll 42 in', orientation: 'landscape' }).paper.height).toBeCloseTo(
      42 * 25.4,
      9,
    );
  });

  test('a roll too narrow for the leg is joined from strips, each as long as the leg', () => {
    const plan = tilePieces([legPiece], { ...A4, sheet: 'Roll 24 in' });
    expect(plan.sheets).toHaveLength(2);
    for (const sheet of plan.sheets) expect(sheet.marks).toHaveLength(2);
  });

  test('a page is never larger than a PDF page can be: more sheets, or a refusal', () => {
    const tall = rectanglePiece('casing', 500, 7000);
    const plan = tilePieces([tall], { ...A4, sheet: 'Roll 24 in', orientation: 'portrait' });
    expect(plan.sheets).toHaveLength(2);
    expect(plan.paper.height).toBeLessThanOrEqual(5080);
    expect(() => tilePieces([tall], { ...A4, sheet: 'own', ownWidth: 600, ownHeight: 7100 })).toThrow();
  });
});

test('a line that only reaches into the overlap needs no further sheet', () => {
  // Upright A4 shows 190 × 277; two sheets reach 370, and three 550. The bar ends 5 mm into the third sheet's share.
  const plan = tilePieces([rectanglePiece('casing', 365, 100)], { ...A4, orientation: 'landscape', overlap: 10 });
  expect(plan.sheets.length).toBeLessThanOrEqual(2);
});

test('sheets of one piece hang together: a lone one inside gets those between it and the rim', () => {
  const frame = rectanglePiece('casing', 1000, 1300);
  const inside = pieceLine('hemStitching', [straight(point(495, 640), point(505, 640))]);
  const plan = tilePieces([{ ...frame, lines: [inside] }], A4);
  const parts = planParts(plan);
  const reached = new Set([parts[0]?.label]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const { label, joins } of parts) {
      if (joins.some(({ neighbour }) => reached.has(neighbour))) reached.add(label);
    }
  }
  expect(reached.size).toBe(parts.length);
});
