import { describe, expect, it } from 'vitest';
import type { EdgeName, Piece } from '../../src/edges';
import {
  add,
  distance,
  dot,
  flattenCurves,
  outlineEdge,
  type Point,
  pathAt,
  pathEnd,
  pathFoot,
  pathLength,
  pathStart,
  point,
  pointsBounds,
  pointsHold,
  scale,
  subtract,
} from '../../src/plane';
import { type Draft, exampleProject } from '../../src/project';
import { drafted, lineOf, near, pieceOf, ring } from './drafted';

const d = drafted({ allowances: { inseam: 12, crotch: 18, waist: 15, hem: 15 } });
const leg = pieceOf(d, 'leg');
const short = drafted({ leg: { ...exampleProject.leg, length: 'short' } });
const everything = drafted({
  waist: { ...exampleProject.waist, finish: 'separateCasing', cord: 'ofCloth' },
  hem: { ...exampleProject.hem, finish: 'contrastBand' },
  pocket: { width: 150, height: 165, facing: 30, part: 'back', count: 2 },
  allowances: { inseam: 12, crotch: 18, waist: 14, hem: 16 },
});

describe.each([
  ['the leg', leg],
  ['a short leg', pieceOf(short, 'leg')],
  ['a casing', pieceOf(everything, 'casing')],
  ['a hem band', pieceOf(everything, 'hem band')],
] as const)('every notch of %s', (_, piece) => {
  it('lies on its edge and points straight out of the piece, as far as the allowance reaches', () => {
    expect(piece.notches.length).toBeGreaterThanOrEqual(2);
    for (const { edge, at, outward, length } of piece.notches) {
      const curves = outlineEdge(piece.stitchLine, edge).curves;
      expect(pathFoot(flattenCurves(curves, 1e-4), at).distance, edge).toBeLessThan(1e-3);
      expect(Math.hypot(outward.x, outward.y), edge).toBeCloseTo(1, 9);
      const cut = piece.cutLine.find(({ name }) => name === edge);
      expect(length, edge).toBe(cut?.allowance);
      const tip = add(at, scale(outward, length));
      expect(pathFoot(flattenCurves(cut?.curves ?? [], 1e-3), tip).distance, edge).toBeLessThan(0.3);
      expect(pointsHold(ring(piece), add(at, scale(outward, 1))), edge).toBe(false);
      expect(pointsHold(ring(piece), add(at, scale(outward, -1))), edge).toBe(true);
    }
  });
});

describe('the notches of a leg', () => {
  const levels = (of: Draft) => pieceOf(of, 'leg').notches.filter(({ edge }) => edge === 'inseamFront');
  it('stand where the crotch curves begin, 150 mm below the crotch, and at the knee', () => {
    expect(leg.notches.map(({ edge, count }) => `${edge} ${count}`)).toEqual([
      'centreFront 1',
      'centreBack 2',
      'inseamFront 1',
      'inseamFront 1',
      'inseamBack 1',
      'inseamBack 1',
    ]);
    expect(leg.notches[0]?.at).toEqual(d.leg.front.curveEnd);
    expect(leg.notches[1]?.at).toEqual(d.leg.back.curveEnd);
    const [upper, knee] = levels(d);
    expect(upper?.at).toEqual(near(pathAt(d.leg.front.inseam, 150).at));
    expect(knee?.at.y).toBeCloseTo(d.leg.kneeLevel ?? 0, 6);
  });

  it('are left out where they would be cut into each other, or into the end', () => {
    const inseam = (length: number) => drafted({ leg: { ...exampleProject.leg, length: { inseam: length } } });
    expect(levels(inseam(190))).toHaveLength(1);
    expect(levels(inseam(160))).toHaveLength(0);
    const long = inseam(700);
    expect(levels(long)).toHaveLength(2);
  });
});

describe('the words on a leg', () => {
  it('are these, on their own sides, level but for the one along the side', () => {
    expect(leg.texts.map(({ text, says, turn }) => [text, says, turn])).toEqual([
      [exampleProject.name, 'title', 0],
      ['leg · cut 2, mirrored', 'piece', 0],
      [exampleProject.body.label, 'label', 0],
      ['front', 'half', 0],
      ['back', 'half', 0],
      ['side – no seam here', 'side', -90],
    ]);
    const side = (text: string) => Math.sign(leg.texts.find((one) => one.text === text)?.at.x ?? 0);
    expect([side('front'), side('leg · cut 2, mirrored'), side('back')]).toEqual([1, 1, -1]);
  });

  it.each([
    ['a leg', d],
    ['one with a high waist', drafted({ leg: { ...exampleProject.leg, raiseWaist: 80 } })],
    ['one with a low waist', drafted({ leg: { ...exampleProject.leg, raiseWaist: -60 } })],
    ['one with its hips high up', drafted({ body: { ...exampleProject.body, hipDepth: 110 } })],
    ['a short leg', short],
    [
      'one for a child',
      drafted({ body: { label: 'Child', waistGirth: 530, hipGirth: 590, bodyRise: 190, insideLeg: 420 } }),
    ],
  ] as const)('of %s lie within its seams, apart from each other, the level ones between waist and crotch', (_, of) => {
    const piece = pieceOf(of, 'leg');
    const wide = ({ text, size }: Piece['texts'][number]) => 0.82 * size * text.length;
    const boxes = piece.texts.map((text) => {
      const [half, up] = [wide(text) / 2, text.size];
      return text.turn === 0
        ? { left: text.at.x - half, right: text.at.x + half, top: text.at.y - up, bottom: text.at.y }
        : { left: text.at.x - up, right: text.at.x, top: text.at.y - half, bottom: text.at.y + half };
    });
    boxes.forEach((box, i) => {
      for (const corner of [
        point(box.left, box.top),
        point(box.right, box.top),
        point(box.right, box.bottom),
        point(box.left, box.bottom),
      ])
        expect(pointsHold(ring(piece), corner), piece.texts[i]?.text).toBe(true);
      for (const other of boxes.slice(i + 1))
        expect(
          box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top,
          piece.texts[i]?.text,
        ).toBe(true);
      if (piece.texts[i]?.turn === 0) {
        expect(box.top).toBeGreaterThan(of.leg.front.waistPoint.y);
        expect(box.bottom).toBeLessThan(of.leg.hipLevel);
        // Front and back are told apart by the side line, over which nothing is written.
        expect(Math.sign(box.left)).toBe(Math.sign(box.right));
      }
    });
  });

  it('fill the room that is theirs: a long name is smaller, a short one no taller than reads across a table', () => {
    const size = (name: string) => pieceOf(drafted({ name }), 'leg').texts[0]?.size ?? 0;
    expect(size('A')).toBeLessThanOrEqual(9);
    expect(size('A')).toBeGreaterThan(6);
    expect(size('A name that is so long that hardly anything else has room')).toBeLessThan(0.6 * size('A'));
  });
});

describe('the grainline', () => {
  it.each([
    ['leg', d],
    ['leg', short],
    ['casing', everything],
    ['hem band', everything],
    ['pocket', everything],
  ] as const)('of a %s lies within it, its upper arrowhead first', (name, of) => {
    const piece = pieceOf(of, name);
    const [upper, lower] = piece.grainline;
    expect(upper.y).toBeLessThanOrEqual(lower.y);
    for (const share of [0, 0.25, 0.5, 0.75, 1])
      expect(pointsHold(ring(piece), add(upper, scale(subtract(lower, upper), share))), `${share}`).toBe(true);
    expect(distance(upper, lower)).toBeGreaterThan(0.25 * Math.min(300, pointsBounds(ring(piece)).bottom));
  });

  it('of the leg stands upright on the back, clear of every word', () => {
    const [upper, lower] = leg.grainline;
    expect(upper.x).toBe(lower.x);
    expect(upper.x).toBeLessThan(-10);
    for (const { at, size, text } of leg.texts)
      if (at.y > upper.y - size && at.y < lower.y)
        expect(Math.abs(at.x - upper.x), text).toBeGreaterThan(
          (0.82 * size * (at.x < 0 && text === 'back' ? 4 : 1)) / 2,
        );
  });

  it('runs along a casing, and across a band of knit, whose stretch goes round the body', () => {
    const along = (piece: Piece) => {
      const [a, b] = piece.grainline;
      const [start, end] = [
        pathStart(outlineEdge(piece.stitchLine, 'upper').curves),
        pathEnd(outlineEdge(piece.stitchLine, 'upper').curves),
      ];
      return Math.abs(dot(subtract(b, a), subtract(end, start))) / (distance(a, b) * distance(start, end));
    };
    expect(along(pieceOf(everything, 'casing'))).toBeCloseTo(1, 9);
    expect(along(pieceOf(everything, 'hem band'))).toBeCloseTo(1, 9);
    const knit = drafted({
      waist: { ...exampleProject.waist, finish: 'knitBand' },
      hem: { ...exampleProject.hem, finish: 'ribCuff' },
    });
    expect(along(pieceOf(knit, 'waist band'))).toBeCloseTo(0, 9);
    expect(along(pieceOf(knit, 'cuff'))).toBeCloseTo(0, 9);
    expect(pieceOf(knit, 'waist band').texts.map(({ text }) => text)).toEqual([
      'waist band, of knit · cut 1',
      'ends meet at centre back',
    ]);
    expect(pieceOf(knit, 'cuff').texts.map(({ text }) => text)).toEqual([
      'cuff, of rib · cut 2',
      'ends meet at the inseam',
    ]);
  });
});

describe('the levels and lines of a leg', () => {
  it('run level from seam to seam', () => {
    const net = ring(leg);
    for (const [name, y] of [
      ['hip', d.leg.hipLevel],
      ['crotchLine', d.leg.crotchLevel],
      ['knee', d.leg.kneeLevel ?? 0],
    ] as const) {
      const [left, right] = [pathStart(lineOf(leg, name)), pathEnd(lineOf(leg, name))];
      expect([left.y, right.y], name).toEqual([y, y]);
      expect([left.x < 0, right.x > 0], name).toEqual([true, true]);
      for (const end of [left, right])
        expect(pathFoot([...net, net[0] as Point], end).distance, name).toBeLessThan(0.03);
      expect(pointsHold(net, point((left.x + right.x) / 2, y)), name).toBe(true);
    }
    expect(leg.lines.map(({ name }) => name)).not.toContain('channelStitching');
  });

  it('the side is upright from raw edge to raw edge, and the quarters reach 12 mm into the piece', () => {
    const side = lineOf(leg, 'side');
    const edge = (name: EdgeName) => flattenCurves(outlineEdge(leg.stitchLine, name).curves);
    expect([pathStart(side).x, pathEnd(side).x]).toEqual([0, 0]);
    expect(pathFoot(edge('waist'), pathStart(side)).distance).toBeLessThan(1e-6);
    expect(pathFoot(edge('hem'), pathEnd(side)).distance).toBeLessThan(1e-6);
    const quartersOf = (of: Draft) => pieceOf(of, 'leg').lines.filter(({ kind }) => kind === 'quarter');
    for (const finish of ['separateCasing', 'facedCasing'] as const)
      expect(quartersOf(drafted({ waist: { ...exampleProject.waist, finish } })), finish).toHaveLength(1);
    const quarters = quartersOf(d);
    expect(quarters).toHaveLength(2);
    for (const { curves } of quarters) {
      expect(pathLength(curves)).toBeCloseTo(12, 9);
      expect(pointsHold(ring(leg), pathEnd(curves))).toBe(true);
    }
  });

  it('say where a leg is made longer: between waist and hip, in the thigh, in the calf, clear of marks', () => {
    const where = (of: Draft) =>
      pieceOf(of, 'leg')
        .lines.filter(({ kind }) => kind === 'lengthen')
        .map(({ name, curves }) => [name, pathStart(curves).y] as const);
    const hem = (of: Draft) => pathStart(of.leg.hem).y;
    const [rise, thigh, calf] = where(d);
    const knee = d.leg.kneeLevel ?? 0;
    expect([rise?.[0], thigh?.[0], calf?.[0]]).toEqual(['lengthenRise', 'lengthenThigh', 'lengthenCalf']);
    expect(rise?.[1]).toBeGreaterThan(Math.max(d.leg.front.waistPoint.y, d.leg.back.waistPoint.y));
    expect(rise?.[1]).toBeLessThan(d.leg.hipLevel);
    expect(thigh?.[1]).toBeGreaterThan(d.leg.crotchLevel + 59);
    expect(thigh?.[1]).toBeLessThan(knee);
    expect(calf?.[1]).toBeCloseTo((knee + hem(d)) / 2, 1);
    for (const length of [100, 140, 200, 300, 420, 500] as const) {
      const of = drafted({ leg: { ...exampleProject.leg, length: { inseam: length } } });
      for (const [name, y] of where(of).slice(1)) {
        expect(y, `${length} ${name}`).toBeGreaterThan(of.leg.crotchLevel + 59);
        expect(y, `${length} ${name}`).toBeLessThan(hem(of) - 55);
      }
    }
  });

  it('a buttonhole is 3 mm longer than its cord is wide, and stands across its channel', () => {
    const corded = drafted({
      waist: { ...exampleProject.waist, finish: 'elasticAndDrawstring', cordWidth: 12 },
      hem: { ...exampleProject.hem, finish: 'drawstringCasing', cordWidth: 5 },
    });
    const piece = pieceOf(corded, 'leg');
    const [hole, low] = [lineOf(piece, 'cordOpening'), lineOf(piece, 'hemCordOpening')];
    expect([pathLength(hole), pathLength(low)]).toEqual([expect.closeTo(15, 9), expect.closeTo(8, 9)]);
    // 20 mm from centre front along the waist edge, as high above it as the middle of the cord's channel.
    const [back, front] = [pathStart(lineOf(piece, 'waistEdge')), pathEnd(lineOf(piece, 'waistEdge'))];
    const along = scale(subtract(back, front), 1 / distance(back, front));
    const middle = scale(add(pathStart(hole), pathEnd(hole)), 0.5);
    expect(dot(subtract(middle, front), along)).toBeCloseTo(20, 6);
    const channel = corded.finished.heights.channels.at(-1);
    const high = Math.abs(along.x * (middle.y - front.y) - along.y * (middle.x - front.x));
    expect(high).toBeCloseTo(((channel?.from ?? 0) + (channel?.to ?? 0)) / 2, 6);
    expect(middle.y).toBeLessThan(front.y);
    expect(Math.abs(dot(subtract(pathEnd(hole), pathStart(hole)), along))).toBeLessThan(1e-6);
    expect([pathStart(low).x, pathEnd(low).x]).toEqual([0, 0]);
    const fold = pathStart(corded.leg.hem).y;
    expect((pathStart(low).y + pathEnd(low).y) / 2).toBeCloseTo(fold - corded.finished.hemPlan.depth / 2, 0);
  });
});
