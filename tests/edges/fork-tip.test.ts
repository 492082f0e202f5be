import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutCurves, type EdgeName, type Piece } from '../../src/edges';
import {
  edgeLength,
  flattenCurves,
  outlineArea,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
  type Point,
  pathEnd,
  pathFoot,
  pathStart,
  pointsHold,
} from '../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import { printPhrase } from '../../src/words';
import { outlineFinds } from '../fuzz/outlines';
import { pieceName } from '../names';
import { anyBody } from '../properties/bodies';
import { anyDesign, projectOf } from '../properties/designs';
import { draftOrRefusal } from '../properties/outlines';
import { between, chance, enough, PATIENCE } from '../properties/seed';
import { drafted, pieceOf, ring } from './drafted';

/** What both pieces together may be off the leg: mm of length; mm² of area for a metre of outline. */
const EXACT = 0.01;

const withTip = (piecedTip: number, change: Partial<Project> = {}): Draft =>
  drafted({ ...change, cloth: { ...exampleProject.cloth, ...change.cloth, piecedTip } });
const lengthOf = (piece: Piece, edge: EdgeName): number => edgeLength(outlineEdge(piece.stitchLine, edge));
const areaOf = (piece: Piece): number => outlineArea(outlineCurves(piece.stitchLine));
const cutOf = (piece: Piece) => flattenCurves(cutCurves(piece), 0.002);

/** The pieced leg, its tip, and the leg that both were cut from. */
function partsOf(d: Draft): { readonly leg: Piece; readonly tip: Piece; readonly whole: Piece } {
  return { leg: pieceOf(d, 'leg'), tip: pieceOf(d, 'fork tip'), whole: d.finished.cut.piece };
}

/** Both pieces, sewn together, are the leg: edges, area, seam, notches, grain. */
function expectLeg(d: Draft): void {
  const { leg, tip, whole } = partsOf(d);
  for (const edge of ['inseamBack', 'crotchBack'] as const)
    expect(Math.abs(lengthOf(leg, edge) + lengthOf(tip, edge) - lengthOf(whole, edge)), edge).toBeLessThan(EXACT);
  expect(Math.abs(areaOf(leg) + areaOf(tip) - areaOf(whole))).toBeLessThan(EXACT);
  expect(Math.abs(lengthOf(leg, 'piecing') - lengthOf(tip, 'piecing'))).toBeLessThan(1e-9);
  const [up, down] = [outlineEdge(leg.stitchLine, 'piecing').curves, outlineEdge(tip.stitchLine, 'piecing').curves];
  expect(pathStart(up)).toEqual(pathEnd(down));
  expect(pathEnd(up)).toEqual(pathStart(down));
  // Along the grain, as far inside the crotch point as was chosen.
  const seamX = pathStart(up).x;
  expect(pathEnd(up).x).toBeCloseTo(seamX, 6);
  const { crosswise } = growthOf(d);
  expect(seamX - pathEnd(outlineEdge(whole.stitchLine, 'inseamBack').curves).x).toBeCloseTo(
    d.project.cloth.piecedTip * crosswise,
    6,
  );
  expect(tip.grainline[0].x).toBeCloseTo(tip.grainline[1].x, 9);
  const outline = ring(tip);
  for (const end of tip.grainline) expect(pointsHold(outline, end)).toBe(true);
}

const growthOf = ({ project: { cloth } }: Draft) =>
  cloth.washFirst ? { crosswise: 1 } : { crosswise: 1 / (1 - cloth.shrinkWidth) };

/** Notches of the whole leg are all there, each on the piece that has its place; one more on both sides of the seam. */
function expectNotches(d: Draft): void {
  const { leg, tip, whole } = partsOf(d);
  const key = ({ edge, at }: { edge: string; at: Point }) => `${edge} ${at.x.toFixed(6)} ${at.y.toFixed(6)}`;
  const old = [...leg.notches, ...tip.notches].filter(({ edge }) => edge !== 'piecing');
  expect(old.map(key).sort()).toEqual(whole.notches.map(key).sort());
  for (const piece of [leg, tip])
    for (const { edge, at } of piece.notches)
      expect(pathFoot(flattenCurves(outlineEdge(piece.stitchLine, edge).curves, 1e-3), at).distance).toBeLessThan(0.01);
  const [own, other] = [leg, tip].map(({ notches }) => notches.filter(({ edge }) => edge === 'piecing'));
  expect(own?.length).toBe(d.project.allowances.inseam > 0 ? 1 : 0);
  expect(own?.map(({ at }) => at)).toEqual(other?.map(({ at }) => at));
  const [tick, otherTick] = [own?.[0], other?.[0]];
  if (tick && otherTick) {
    expect(tick.outward.x).toBe(-otherTick.outward.x);
    const [top, bottom] = [pathEnd, pathStart].map((end) => end(outlineEdge(leg.stitchLine, 'piecing').curves).y);
    // Off the middle: a tip the wrong way up shows.
    expect(Math.abs(tick.at.y - ((top ?? 0) + (bottom ?? 0)) / 2)).toBeGreaterThan(0.05 * ((bottom ?? 0) - (top ?? 0)));
  }
}

/** Cut lines: simple, round their stitching, the whole allowance everywhere; laid on each other at the seam. */
function expectCut(d: Draft): void {
  const { leg, tip } = partsOf(d);
  // Narrower ones are not drawn.
  const inseam = d.project.allowances.inseam < 0.05 ? 0 : d.project.allowances.inseam;
  expect(outlineFinds(d)).toEqual([]);
  for (const piece of [leg, tip]) expect(outlineCrossings(cutCurves(piece))).toEqual([]);
  const [x, top, bottom] = seamOf(leg);
  // Right sides together, the seam's raw edges lie on each other: level for level as wide, up to both ends.
  const [legs, tips] = [outlineEdge(leg.cutLine, 'piecing').curves, outlineEdge(tip.cutLine, 'piecing').curves];
  expect(pathStart(legs).x).toBeCloseTo(x - inseam, 4);
  expect(pathStart(tips).x).toBeCloseTo(x + inseam, 4);
  // Nowhere does the tip end before the last stitch; the leg's corner is one like any other.
  expect(pathStart(tips).y).toBeLessThan(top + 0.06);
  expect(pathEnd(tips).y).toBeGreaterThan(bottom - 0.06);
}

function seamOf(leg: Piece): readonly [x: number, top: number, bottom: number] {
  const { curves } = outlineEdge(leg.stitchLine, 'piecing');
  return [pathStart(curves).x, pathEnd(curves).y, pathStart(curves).y];
}

describe('a pieced fork tip', () => {
  test('is its own piece, cut 2 mirrored, and with the rest of the leg it is the leg', () => {
    const d = withTip(50);
    expectLeg(d);
    expectNotches(d);
    expectCut(d);
    const { leg, tip } = partsOf(d);
    expect(d.pieces).toEqual([leg, tip]);
    expect([tip.cut, tip.mirrored]).toEqual([2, true]);
    expect(tip.cutLine.map(({ name, allowance }) => `${name} ${allowance}`)).toEqual([
      'inseamBack 15',
      'crotchBack 15',
      'upperEnd 15',
      'piecing 15',
      'lowerEnd 15',
    ]);
    expect(leg.stitchLine.map(({ name }) => name)).toContain('piecing');
    // The crotch seam's notches stay on the leg.
    expect(leg.notches.map(({ edge }) => edge)).toEqual(expect.arrayContaining(['centreFront', 'centreBack']));
    expect(tip.notches.every(({ edge }) => edge === 'inseamBack' || edge === 'piecing')).toBe(true);
    // Its words lie within it.
    const outline = ring(tip);
    for (const { at, size, text } of tip.texts) {
      const half = 0.41 * size * text.length;
      for (const p of [-half, half].flatMap((y) => [0, -size].map((x) => ({ x: at.x + x, y: at.y + y }))))
        expect(pointsHold(outline, p), `${text} at ${p.x}, ${p.y}`).toBe(true);
    }
  });

  test('has raw edges that meet the leg’s at both ends of the seam', () => {
    for (const piecedTip of [30, 50, 70]) {
      const { leg, tip } = partsOf(withTip(piecedTip));
      const [x] = seamOf(leg);
      const [legs, tips] = [leg, tip].map((piece) => outlineEdge(piece.cutLine, 'piecing').curves);
      expect(pathEnd(tips ?? []).y).toBeCloseTo(pathStart(legs ?? []).y, 1);
      expect(pathStart(tips ?? []).y).toBeCloseTo(pathEnd(legs ?? []).y, 1);
      // And no point runs out below the seam by more than four allowances.
      const lowest = Math.max(...cutOf(tip).map(({ y }) => y));
      expect(lowest - seamOf(leg)[2]).toBeLessThan(4.3 * 15);
      expect(Math.max(...cutOf(tip).map((p) => p.x))).toBeCloseTo(x + 15, 4);
    }
  });

  test('takes the notches of the inseam with it that fall on it', () => {
    const [narrow, wide] = [20, 70].map((piecedTip) => partsOf(withTip(piecedTip)).tip.notches);
    expect(narrow?.filter(({ edge }) => edge === 'inseamBack')).toHaveLength(0);
    expect(wide?.filter(({ edge }) => edge === 'inseamBack')).toHaveLength(1);
  });

  test('grows with a leg that is cut larger, and is the sewn one then', () => {
    const cloth = { ...exampleProject.cloth, washFirst: false, shrinkLength: 0.07, shrinkWidth: 0.04 };
    const d = withTip(50, { cloth });
    expectLeg(d);
    expectNotches(d);
    expectCut(d);
    const sewn = d.finished.pieced;
    if (!sewn) throw new Error('as it is worn the leg is pieced, too');
    expect(Math.abs(areaOf(sewn.leg) + areaOf(sewn.tip) - areaOf(d.finished.sewn))).toBeLessThan(EXACT);
    expect(lengthOf(sewn.tip, 'piecing')).toBeLessThan(0.95 * lengthOf(pieceOf(d, 'fork tip'), 'piecing'));
  });

  test('is none unless it is chosen', () => {
    expect(drafted().pieces.map(pieceName)).toEqual(['leg']);
    expect(drafted().finished.pieced).toBeUndefined();
  });
});

describe('where no tip can be cut off', () => {
  const refusal = (piecedTip: number, leg: Partial<Project['leg']> = {}): string => {
    const result = draft({
      ...exampleProject,
      leg: { ...exampleProject.leg, ...leg },
      cloth: { ...exampleProject.cloth, piecedTip },
    });
    if (result.ok) return '';
    return result.problems.map(({ field, phrase }) => `${field}: ${printPhrase(phrase, 'cm')}`).join();
  };

  test('says so, and how much would do', () => {
    expect(refusal(50)).toBe('');
    expect(refusal(2)).toMatch(/^cloth\.piecedTip: .*0 for none, or at least 0\.3 cm\.$/);
    expect(refusal(5)).toBe('');
    const short = refusal(80, { length: { inseam: 150 } });
    const most = Number(/at most ([\d.]+) cm would do\.$/.exec(short)?.[1]);
    expect(refusal(10 * most, { length: { inseam: 150 } })).toBe('');
    expect(refusal(10 * most + 5, { length: { inseam: 150 } })).not.toBe('');
    // A leg that widens leaves the line no inseam to come out by.
    expect(refusal(50, { shape: { hemGirth: 1100 } })).toMatch(/no room for one: set it to 0\.$/);
  });
});

let pieced = 0;

test(
  'any leg in any design is its two pieces, or is refused in a sentence',
  () => {
    fc.assert(
      fc.property(
        anyBody,
        anyDesign,
        between(3, 70),
        fc.boolean(),
        between(0, 0.1),
        (body, design, piecedTip, washFirst, shrinkWidth) => {
          const base = projectOf(body, design);
          const d = draftOrRefusal({ ...base, cloth: { ...base.cloth, piecedTip, washFirst, shrinkWidth } });
          if (!d) return;
          pieced += 1;
          expectLeg(d);
          expectNotches(d);
          if (!checksOf(d).some(({ id, verdict }) => verdict === 'wrong' && /cut-line|allowances/.test(id)))
            expectCut(d);
        },
      ),
      chance('pieced legs', 60),
    );
    console.log(`${pieced} pieced`);
    expect(pieced).toBeGreaterThan(enough(25));
  },
  PATIENCE,
);
