import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SELVEDGE } from '../../src/check';
import { type ClothChoices, clothPlan, type Lay, type LayAnswer } from '../../src/cloth';
import { isSamePiece, type Piece } from '../../src/edges';
import { type Point, pointsBounds } from '../../src/plane';
import { pieceName } from '../names';
import { anyBody } from '../properties/bodies';
import { anyDesign, projectOf } from '../properties/designs';
import { draftOrRefusal } from '../properties/outlines';
import { chance, PATIENCE } from '../properties/seed';
import { cutPoints, laid, overlaps } from './cloth-reference';

// Every lay against a reference polygon library, Clipper2: true cut lines, not the covers that were laid.

const LAYS = 6;
const HAIR = 0.1;

const anyCloth = fc.record({
  width: fc.constantFrom(900, 914.4, 1120, 1143, 1400, 1500, 1524, 1900),
  layout: fc.constantFrom('best' as const, 'single' as const, 'foldedLengthwise' as const, 'foldedCrosswise' as const),
  oneWay: fc.boolean(),
  washFirst: fc.boolean(),
  repeat: fc.constantFrom(0, 0, 0, 40, 250),
  repeatAcross: fc.constantFrom(0, 0, 0, 30, 120),
  grainTolerance: fc.constantFrom(0, 0, 0, 2),
});

const anyPocket = fc.constantFrom(
  null,
  { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const,
  { width: 150, height: 165, facing: 30, part: 'front', count: 2 } as const,
);

let lays = 0;
let refused = 0;

test(
  'a thousand lays: nothing on anything else, nothing outside, every copy once',
  () => {
    fc.assert(
      fc.property(
        anyBody,
        anyDesign,
        anyPocket,
        fc.array(anyCloth, { minLength: LAYS, maxLength: LAYS }),
        (body, design, pocket, cloths) => {
          const d = draftOrRefusal(projectOf(body, { ...design, pocket, paper: { sheet: 'A0' } } as never));
          if (!d) return;
          for (const cloth of cloths) {
            const choices: ClothChoices = { ...d.project.cloth, ...cloth };
            const { answer, others } = clothPlan(d.pieces, choices);
            expectGoodAnswer(answer, d.pieces, choices);
            // Bands and cuffs come from a cloth without a repeat.
            for (const other of others) expectGoodAnswer(other.answer, d.pieces, { ...choices, repeat: 0 });
            if (answer.fits) lays += 1;
            else refused += 1;
          }
        },
      ),
      // A thousand are promised, so a slow machine is waited for.
      { ...chance('lays', 260), interruptAfterTimeLimit: 3 * PATIENCE },
    );
    console.log(`${lays} lays, ${refused} that do not fit their width`);
    expect(lays).toBeGreaterThanOrEqual(process.env.LEGWORK_RUNS === undefined ? 1000 : 1);
  },
  3 * PATIENCE,
);

function expectGoodAnswer(answer: LayAnswer, pieces: readonly Piece[], choices: ClothChoices) {
  if (answer.fits) expectGoodLay(answer.lay, pieces, choices);
  else expect(answer.widthWanted).toBeGreaterThan(answer.width);
}

function expectGoodLay(lay: Lay, pieces: readonly Piece[], choices: ClothChoices) {
  const polygons = lay.placements.map((placement) => {
    const piece = pieces.find((one) => isSamePiece(one, placement.piece));
    if (!piece) throw new Error(`a piece that nobody cuts: ${pieceName(placement.piece)}`);
    return laid(cutPoints(piece), placement);
  });
  expect(overlaps(polygons)).toEqual([]);
  lay.placements.forEach((placement, i) => {
    const box = pointsBounds(polygons[i] ?? []);
    if (placement.layer === 'fold') expect(Math.abs(box.left + box.right)).toBeLessThan(HAIR);
    else expect(box.left).toBeGreaterThan((lay.layout === 'foldedLengthwise' ? 0 : SELVEDGE) - HAIR);
    expect(box.right).toBeLessThan(lay.table.width - SELVEDGE + HAIR);
    expect(box.top).toBeGreaterThan(-HAIR);
    expect(box.bottom).toBeLessThan(lay.table.length + HAIR);
    const { grainline } = pieces.find((one) => isSamePiece(one, placement.piece)) as Piece;
    const [upper, lower] = laid(grainline, placement) as [Point, Point];
    const offGrain = (Math.atan2(Math.abs(lower.x - upper.x), Math.abs(lower.y - upper.y)) * 180) / Math.PI;
    expect(offGrain).toBeLessThan(choices.grainTolerance + 0.001);
    if (choices.oneWay) expect(lower.y).toBeGreaterThan(upper.y);
  });
  for (const name of new Set(lay.placements.map(({ piece }) => pieceName(piece)))) {
    const own = lay.placements.filter(({ piece }) => pieceName(piece) === name);
    const piece = pieces.find((one) => pieceName(one) === name) as Piece;
    const copies = own.flatMap((placement) => placement.copies).sort((a, b) => a - b);
    expect(copies).toEqual(Array.from({ length: piece.cut }, (_, i) => i + 1));
    // Half of a mirrored piece's copies lie the other way: printed side down, or in the other of two layers.
    const others = own.filter(({ mirrored, layer }) => mirrored || layer === 'both').length;
    if (piece.mirrored) expect(others).toBe(piece.cut / 2);
  }
  expect(lay.lengthNeeded).toBeGreaterThan(lay.lowerBound - HAIR);
  expect(lay.lengthNeeded).toBeCloseTo(lay.table.length * (lay.layout === 'foldedCrosswise' ? 2 : 1), 6);
  expect(lay.toBuy).toBeGreaterThan(lay.lengthNeeded + choices.repeat);
  expect(lay.waste).toBeGreaterThan(0);
}

test('the reference would notice pieces that lie a quarter of a millimetre on each other', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ];
  const beside = (by: number) => square.map(({ x, y }) => ({ x: x + by, y }));
  expect(overlaps([square, beside(100)])).toEqual([]);
  expect(overlaps([square, beside(99.75)]).length).toBe(1);
});
