import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/edges';
import {
  edgeLength,
  flattenCurves,
  outlineEdge,
  pathEnd,
  pathFoot,
  pathLength,
  pathStart,
  point,
  pointsBounds,
  pointsHold,
} from '../../src/plane';
import { exampleProject } from '../../src/project';
import { drafted, lineOf, pieceOf, ring } from './drafted';

const everything = drafted({
  waist: { ...exampleProject.waist, finish: 'separateCasing', cord: 'ofCloth' },
  hem: { ...exampleProject.hem, finish: 'contrastBand' },
  pocket: { width: 150, height: 165, facing: 30, part: 'back', count: 2 },
  allowances: { inseam: 12, crotch: 18, waist: 14, hem: 16 },
});

describe('a straight piece', () => {
  const casing = pieceOf(everything, 'casing');
  it('has its own allowances along its edges and at its ends', () => {
    const wide = (piece: Piece) => piece.cutLine.map(({ name, allowance }) => `${name} ${allowance}`);
    expect(wide(casing)).toEqual(['upper 14', 'rightEnd 18', 'lower 14', 'leftEnd 18']);
    expect(wide(pieceOf(everything, 'hem band'))).toEqual(['upper 16', 'rightEnd 12', 'lower 16', 'leftEnd 12']);
  });

  it('is folded along its middle, and stands upright where it is long', () => {
    const box = pointsBounds(ring(casing));
    expect(box.right - box.left).toBeCloseTo(everything.measures.casingHeight, 6);
    expect(box.bottom - box.top).toBeGreaterThan(900);
    const [fold] = casing.folds;
    expect(fold?.name).toBe('casingFold');
    for (const end of [pathStart(fold?.curves ?? []), pathEnd(fold?.curves ?? [])])
      expect(end.x).toBeCloseTo((box.left + box.right) / 2, 6);
    expect(edgeLength(fold as never)).toBeCloseTo(box.bottom - box.top, 6);
    const child = drafted({
      body: { label: 'Child', waistGirth: 480, hipGirth: 520, bodyRise: 180, insideLeg: 380 },
      hem: { ...exampleProject.hem, finish: 'ribCuff' },
    });
    const cuff = pointsBounds(ring(pieceOf(child, 'cuff')));
    expect(cuff.right - cuff.left).toBeGreaterThan(cuff.bottom - cuff.top);
  });

  it('has its quarters on both long edges, opposite each other', () => {
    const at = (edge: string) => casing.notches.filter((one) => one.edge === edge).map((one) => one.at.y);
    const length = pathLength(outlineEdge(casing.stitchLine, 'upper').curves);
    expect(at('upper')).toEqual([0.25, 0.5, 0.75].map((share) => expect.closeTo(share * length, 6)));
    expect(at('lower')).toEqual(at('upper'));
  });

  it('has no notches where it has no allowance to cut them into', () => {
    const bare = drafted({
      waist: { ...exampleProject.waist, finish: 'separateCasing' },
      allowances: { inseam: 12, crotch: 18, waist: 0, hem: 16 },
    });
    expect(pieceOf(bare, 'casing').notches).toEqual([]);
  });

  it.each(['casing', 'hem band'])('of the name %s says so within it, in letters that fit', (name) => {
    const piece = pieceOf(everything, name);
    const [first, second] = piece.texts;
    expect([first?.text, first?.says, second?.says]).toEqual([`${name} · cut ${piece.cut}`, 'piece', 'note']);
    expect(piece.mirrored).toBe(false);
    for (const { at, size, text, turn } of piece.texts) {
      expect(turn).toBe(90);
      expect(size).toBeLessThanOrEqual(6);
      expect(size).toBeGreaterThan(2);
      const half = 0.41 * size * text.length;
      for (const p of [point(at.x, at.y - half), point(at.x, at.y + half), point(at.x + size, at.y)])
        expect(pointsHold(ring(piece), p), text).toBe(true);
    }
    // Neither lies on the other or on the fold.
    const [a, b] = [first?.at.x ?? 0, second?.at.x ?? 0];
    const fold = pathStart(piece.folds[0]?.curves ?? []).x;
    expect(Math.abs(a - b)).toBeGreaterThan(first?.size ?? 0);
    for (const { at, size } of piece.texts) expect(at.x > fold || at.x + size < fold).toBe(true);
  });
});

describe('a pocket', () => {
  const pocket = pieceOf(everything, 'pocket');
  it('has its facing above the fold, allowances round it, and its words on its face', () => {
    const box = pointsBounds(ring(pocket));
    expect(box).toEqual({ left: 0, top: -30, right: 150, bottom: 165 });
    expect(pocket.folds.map(({ name }) => name)).toEqual(['pocketFold']);
    expect(pathStart(pocket.folds[0]?.curves ?? [])).toEqual(point(0, 0));
    expect(pathEnd(pocket.folds[0]?.curves ?? [])).toEqual(point(150, 0));
    expect(pocket.cutLine.map(({ name, allowance }) => `${name} ${allowance}`)).toEqual([
      'opening 0',
      'rightSide 12',
      'bottom 12',
      'leftSide 12',
    ]);
    const [text, ...more] = pocket.texts;
    expect(more).toEqual([]);
    expect(text).toMatchObject({ text: 'pocket · cut 2', turn: 0, says: 'piece' });
    expect(text?.at.x).toBe(75);
    expect(text?.at.y).toBeGreaterThan(text?.size ?? 0);
    expect(0.82 * (text?.size ?? 0) * 'pocket · cut 2'.length).toBeLessThan(150);
    expect(pocket.grainline[0].y).toBeGreaterThan(text?.at.y ?? 0);
  });

  it.each(['front', 'back'] as const)(
    'is sewn on the middle of the %s, 65 mm below the finished waist edge',
    (part) => {
      const of = drafted({ pocket: { width: 140, height: 160, facing: 25, part, count: 1 } });
      const place = pointsBounds(lineOf(pieceOf(of, 'leg'), 'pocketPlace').flat());
      expect((place.left + place.right) / 2).toBeCloseTo(of.leg[part].hipPoint.x / 2, 6);
      expect([place.right - place.left, place.bottom - place.top]).toEqual([
        expect.closeTo(140, 6),
        expect.closeTo(160, 6),
      ]);
      // The casing folds 27 mm above the leg’s own waist edge.
      expect(place.top).toBeCloseTo(Math.max(of.leg.front.waistPoint.y, of.leg.back.waistPoint.y) - 27 + 65, 6);
      expect(lineOf(pieceOf(of, 'leg'), 'pocketPlace')).toHaveLength(3);
    },
  );
});

it('a small child’s pocket lies higher, and ends above the crotch line', () => {
  const body = { label: '', waistGirth: 500, hipGirth: 540, bodyRise: 160, insideLeg: 380, ageYears: 4 };
  const top = (height: number) => {
    const of = drafted({ body, pocket: { width: 90, height, facing: 20, part: 'back', count: 1 } });
    const { top: upper, bottom } = pointsBounds(lineOf(pieceOf(of, 'leg'), 'pocketPlace').flat());
    const edge = Math.max(of.leg.front.waistPoint.y, of.leg.back.waistPoint.y);
    return { below: upper - edge, above: of.leg.crotchLevel - bottom };
  };
  // 0.6 of an adult’s 65 and 20.
  expect(top(80).below).toBeCloseTo(-27 + 39, 6);
  expect(top(80).above).toBeGreaterThan(12);
  expect(top(300).below).toBeCloseTo(12, 6);
});

describe('cloth that is not washed first', () => {
  const cloth = { ...exampleProject.cloth, washFirst: false, shrinkLength: 0.05, shrinkWidth: 0.03 };
  it('gets a leg that is larger by what it shrinks, with the same allowances, and says so on it', () => {
    const grown = drafted({ cloth });
    const [cut, sewn] = [grown.finished.piece, grown.finished.sewn];
    const [large, small] = [pointsBounds(ring(cut)), pointsBounds(ring(sewn))];
    expect((large.bottom - large.top) / (small.bottom - small.top)).toBeCloseTo(1 / 0.95, 3);
    expect((large.right - large.left) / (small.right - small.left)).toBeCloseTo(1 / 0.97, 3);
    expect(cut.cutLine.map(({ allowance }) => allowance)).toEqual(sewn.cutLine.map(({ allowance }) => allowance));
    expect(cut.notches.map(({ length }) => length)).toEqual(sewn.notches.map(({ length }) => length));
    for (const { edge, at } of cut.notches)
      expect(pathFoot(flattenCurves(outlineEdge(cut.stitchLine, edge).curves, 1e-3), at).distance).toBeLessThan(0.05);
    const note = cut.texts.find(({ says }) => says === 'note');
    expect(note?.text).toBe('cut 5.3 % longer and 3.1 % wider: not washed first');
    expect(note && pointsHold(ring(cut), note.at)).toBe(true);
    for (const name of ['hip', 'side', 'casingStitching'])
      expect(pathLength(lineOf(cut, name))).toBeGreaterThan(1.02 * pathLength(lineOf(sewn, name)));
    expect(cut.folds.map(({ name }) => name)).toEqual(sewn.folds.map(({ name }) => name));
    expect(pathLength(cut.folds[0]?.curves ?? [])).toBeGreaterThan(1.02 * pathLength(sewn.folds[0]?.curves ?? []));
    expect(cut.grainline[1].y - cut.grainline[0].y).toBeCloseTo((sewn.grainline[1].y - sewn.grainline[0].y) / 0.95, 6);
  });

  it('is cut as it is worn where it shrinks one way only, or was washed', () => {
    expect(drafted({ cloth: { ...cloth, washFirst: true } }).finished.piece.texts).toHaveLength(6);
    const lengthwise = drafted({ cloth: { ...cloth, shrinkWidth: 0 } }).finished;
    expect(lengthwise.piece.texts.at(-1)?.text).toBe('cut 5.3 % longer and 0.0 % wider: not washed first');
    const crosswise = drafted({ cloth: { ...cloth, shrinkLength: 0 } }).finished;
    expect(crosswise.piece.texts.at(-1)?.text).toBe('cut 0.0 % longer and 3.1 % wider: not washed first');
  });
});

describe('a facing', () => {
  const of = drafted({
    waist: { ...exampleProject.waist, finish: 'facedCasing' },
    hem: { ...exampleProject.hem, finish: 'facedHem' },
    allowances: { inseam: 12, crotch: 18, waist: 14, hem: 16 },
  });
  it.each([
    ['waist facing', ['waist 14', 'centreFront 18', 'lower 0', 'centreBack 18']],
    ['hem facing', ['upper 0', 'inseamFront 12', 'hem 16', 'inseamBack 12']],
  ] as const)('has the allowances of the seams that it shares with the leg: %s', (name, wide) => {
    const piece = pieceOf(of, name);
    expect(piece.cutLine.map((edge) => `${edge.name} ${edge.allowance}`)).toEqual(wide);
    // Its seams are marked on the leg alone.
    expect([piece.lines, piece.folds, piece.notches]).toEqual([[], [], []]);
    expect([piece.cut, piece.mirrored]).toEqual([2, true]);
    const [text, ...more] = piece.texts;
    expect(more).toEqual([]);
    expect([text?.text, text?.says, text?.turn]).toEqual([`${name} · cut 2, mirrored`, 'piece', 0]);
    const half = 0.41 * (text?.size ?? 0) * (text?.text.length ?? 0);
    for (const [x, y] of [
      [-half, 0],
      [half, 0],
      [0, -(text?.size ?? 0)],
    ] as const)
      expect(pointsHold(ring(piece), point((text?.at.x ?? 0) + x, (text?.at.y ?? 0) + y))).toBe(true);
    for (const end of piece.grainline) {
      expect(pointsHold(ring(piece), end)).toBe(true);
      expect(end.x).toBeGreaterThan((text?.at.x ?? 0) + half);
    }
    expect(piece.grainline[0].y).toBeLessThan(piece.grainline[1].y);
  });
});
