import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block';
import { curvesOneWay } from '../../src/check';
import {
  type Curve,
  curveCurvature,
  distance,
  outlineEdge,
  pathEndWay,
  pathStartWay,
  turnBetween,
} from '../../src/plane';
import { checksOf, type Draft, draft, type Project } from '../../src/project';
import { childMedians } from './children';
import { projectFor, surveyBodies } from './survey';

/** What a curve may be broken by where two of its parts meet: a twentieth of a degree, far below a pencil's line. */
const SMOOTH = (0.05 * Math.PI) / 180;
/** A radius of a hundred metres: flatter than any curve ruler, so that its sign says nothing. */
const FLAT = 1e-5;
const SAMPLES = 80;

// No source: that a hand draws such lines in one sweep is practice. The curves are judged numerically, as they are printed.
const bodies: readonly (readonly [string, Project['body']])[] = [
  ...surveyBodies()
    .filter((_, i, all) => all.length < 100 || i % 300 === 0)
    .map(({ id, body }) => [`survey ${id}`, body] as const),
  ...childMedians.map((m) => {
    const body = {
      label: `${m.age}`,
      height: m.stature,
      waistGirth: m.waist * m.stature,
      hipGirth: m.hip * m.stature,
      bodyRise: (m.waistHeight - m.crotchHeight) * m.stature,
      insideLeg: m.crotchHeight * m.stature,
    };
    return [`child of ${m.age}`, body] as const;
  }),
];
const shapes = ['pyjama', 'block', 'straight'] as const;

const drafts: readonly (readonly [string, Draft])[] = bodies.flatMap(([name, body]) =>
  shapes.map((shape, i) => {
    const result = draft(projectFor(body, { leg: { shape, spread: 12 * i, straighten: i === 1 ? 0 : 'auto' } }));
    if (!result.ok) throw new Error(`${name}: ${result.problems.map((p) => p.field).join()}`);
    return [`${name}, ${shape}`, result.value] as const;
  }),
);

/** The sharpest corner inside a run of curves, radians. */
const corner = (path: readonly Curve[]): number =>
  Math.max(
    0,
    ...path.slice(1).map((curve, i) => Math.abs(turnBetween(pathEndWay([path[i] as Curve]), pathStartWay([curve])))),
  );

const gap = (path: readonly Curve[]): number =>
  Math.max(0, ...path.slice(1).map((curve, i) => distance((path[i] as Curve)[3], curve[0])));

/** How often a run of curves changes the side to which it bends. */
function inflections(path: readonly Curve[]): number {
  const sides = path
    .flatMap((curve) => Array.from({ length: SAMPLES + 1 }, (_, i) => curveCurvature(curve, i / SAMPLES)))
    .filter((bend) => Math.abs(bend) > FLAT)
    .map(Math.sign);
  return sides.slice(1).filter((side, i) => side !== sides[i]).length;
}

const edgeOf = (block: Block, name: 'crotch' | 'inseam' | 'side' | 'waist') => outlineEdge(block.edges, name).curves;

/** The names of those drafts in which something isn't so. */
const where = (holds: (d: Draft) => boolean) => drafts.filter(([, d]) => !holds(d)).map(([name]) => name);
const blocksOf = (d: Draft): readonly Block[] => [d.blocks.front, d.blocks.back];
const halvesOf = (d: Draft) => [d.leg.front, d.leg.back];

describe('the curves of the blocks', () => {
  it('have no gap and no corner inside an edge', () => {
    const names = ['crotch', 'inseam', 'side', 'waist'] as const;
    const edges = (d: Draft) => blocksOf(d).flatMap((block) => names.map((name) => edgeOf(block, name)));
    expect(where((d) => edges(d).every((path) => gap(path) < 1e-6))).toEqual([]);
    expect(where((d) => edges(d).every((path) => corner(path) < SMOOTH))).toEqual([]);
  });

  it('let the crotch curve leave the centre line in its own direction', () => {
    const turn = (block: Block) =>
      Math.abs(
        turnBetween(pathEndWay(outlineEdge(block.edges, 'centre').curves), pathStartWay(edgeOf(block, 'crotch'))),
      );
    expect(where((d) => blocksOf(d).every((block) => turn(block) < SMOOTH))).toEqual([]);
  });

  it('bend one way at inseam and crotch', () => {
    expect(
      where((d) => blocksOf(d).every((b) => curvesOneWay(edgeOf(b, 'inseam')) && curvesOneWay(edgeOf(b, 'crotch')))),
    ).toEqual([]);
  });

  it('bend back at most once at the side above the hip, once between hip and knee, and run straight below', () => {
    // From the hem up: knee to hem, hip to knee, waist to hip.
    const parts = (block: Block) => edgeOf(block, 'side').map((curve) => inflections([curve]));
    const good = ([below, thigh, seat]: readonly number[]) => below === 0 && (thigh ?? 9) <= 1 && (seat ?? 9) <= 1;
    expect(drafts.every(([, d]) => blocksOf(d).every((block) => edgeOf(block, 'side').length === 3))).toBe(true);
    expect(where((d) => blocksOf(d).every((block) => good(parts(block))))).toEqual([]);
  });
});

describe('the curves of the leg', () => {
  it('have no gap and no corner inside an edge, and none where the crotch curve begins', () => {
    const edges = (d: Draft) => halvesOf(d).flatMap((half) => [half.crotch, half.inseam]);
    expect(where((d) => edges(d).every((path) => gap(path) < 1e-6 && corner(path) < SMOOTH))).toEqual([]);
    const turn = (half: Draft['leg']['front']) => {
      const { waistPoint: a, curveEnd: b } = half;
      return Math.abs(turnBetween({ x: b.x - a.x, y: b.y - a.y }, pathStartWay(half.crotch)));
    };
    expect(where((d) => halvesOf(d).every((half) => turn(half) < SMOOTH))).toEqual([]);
  });

  it('bend one way at the inseam', () => {
    expect(where((d) => halvesOf(d).every((half) => curvesOneWay(half.inseam)))).toEqual([]);
  });

  it('bend one way at the crotch', () => {
    expect(where((d) => halvesOf(d).every((half) => curvesOneWay(half.crotch)))).toEqual([]);
  });

  it('run on through the crotch point once the inseam is sewn, within 0.5°', () => {
    const angle = (d: Draft) => checksOf(d).find((c) => c.id === 'crotch-smooth')?.measured ?? Number.NaN;
    expect(where((d) => Math.abs(angle(d) - 180) < 0.5)).toEqual([]);
  });
});

describe('the judges', () => {
  const at = (x: number, y: number) => ({ x, y });
  const bow: Curve = [at(0, 0), at(0, 50), at(40, 100), at(100, 100)];
  const ess: Curve = [at(0, 0), at(60, 40), at(-60, 60), at(0, 100)];

  it('count one inflection in an S and none in a bow', () => {
    expect(inflections([ess])).toBe(1);
    expect(inflections([bow])).toBe(0);
  });

  it('see a corner of half a degree and a gap of a hundredth', () => {
    const half = Math.tan((0.5 * Math.PI) / 180);
    const bent: Curve = [at(100, 100), at(120, 100 + 20 * half), at(140, 100 + 40 * half), at(160, 100 + 60 * half)];
    expect(corner([bow, bent])).toBeGreaterThan(SMOOTH);
    const moved = bent.map((p) => at(p.x + 0.01, p.y)) as unknown as Curve;
    expect(gap([bow, moved])).toBeCloseTo(0.01, 6);
  });
});
