import { describe, expect, it } from 'vitest';
import { type Curve, flattenCurves, type Point, pathFoot } from '../../src/plane';
import { checksOf, type Draft, draft, type Project } from '../../src/project';
import type { CurvePoints, Pair, TracedBlock } from '../../src/trace';
import { projectFor } from './survey';

/**
 * Three one-piece drafts in print, whose fold is the side and the grain, typed in by their numbers (inches) and cut
 * apart at the fold. Joined again by the same code they must give the printed outline back.
 */
const IN = 25.4;
const at = (x: number, y: number): Pair => [x * IN, y * IN];
const mid = (a: Pair, b: Pair, t: number): Pair => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
const line = (a: Pair, b: Pair): CurvePoints => [a, mid(a, b, 1 / 3), mid(a, b, 2 / 3), b];

/** A centre seam that runs straight towards `aim` up to `turn`, then curves into the crotch point, arriving level. */
const curveInto = (turn: Pair, aim: Pair, crotch: Pair): CurvePoints => [
  turn,
  mid(turn, aim, 0.6),
  [mid(turn, crotch, 0.75)[0], crotch[1]],
  crotch,
];

interface Half {
  readonly top: Pair;
  readonly turn: Pair;
  readonly aim: Pair;
}

/** One half of a printed draft, from the fold (x = 0) outwards. */
function half(
  { top, turn, aim }: Half,
  side: Pair,
  crotch: Pair,
  hem: Pair,
  inseam: readonly CurvePoints[],
  hipLevel: number,
): TracedBlock {
  const fold: Pair = [0, hem[1]];
  return {
    edges: {
      waist: [line(side, top)],
      centre: [line(top, turn)],
      crotch: [curveInto(turn, aim, crotch)],
      inseam,
      hem: [line(hem, fold)],
      side: [line(fold, side)],
    },
    grainline: [side, fold],
    hipLevel: hipLevel * IN,
    kneeLevel: hem[1] - 1, // drawers end at the bend of the knee
  };
}

interface Printed {
  readonly name: string;
  readonly body: object;
  readonly front: TracedBlock;
  readonly back: TracedBlock;
}

// School Sewing Based on Home Problems (1916), lesson “Drawers”; hip 40, side length 24 (read).
const school = (() => {
  const [side, crotch, hem] = [at(0, 3), at(18, 19), at(18, 27)];
  const [n, v, s] = [at(10, 4), at(7.13, 0), at(16, 19)];
  const length = Math.hypot(crotch[0] - n[0], crotch[1] - n[1]);
  const frontTurn = mid(n, crotch, 1 - (2 * IN) / length);
  const inseam = [line(crotch, hem)];
  return {
    name: 'School Sewing (1916)',
    body: { label: '1916', waistGirth: 28 * IN, hipGirth: 40 * IN, bodyRise: 12 * IN, insideLeg: 28 * IN },
    front: half({ top: n, turn: frontTurn, aim: crotch }, side, crotch, hem, inseam, 11),
    back: half({ top: v, turn: mid(v, s, 0.85), aim: s }, side, crotch, hem, inseam, 11),
  };
})();

// Text-Book on Domestic Art (1911), “Drawers–Yoke”; waist 24, hip 39, side 22 (read).
const domestic = (() => {
  const [side, crotch, hem] = [at(0, 2), at(17, 13.33), at(12, 19)];
  const inseam = [line(crotch, hem)];
  const centre = (top: Pair): Half => ({
    top,
    turn: mid(top, [top[0] + 0.5 * IN, crotch[1]], 0.6),
    aim: [top[0] + 0.5 * IN, crotch[1]],
  });
  return {
    name: 'Text-Book on Domestic Art (1911)',
    body: { label: '1911', waistGirth: 24 * IN, hipGirth: 39 * IN, bodyRise: 10 * IN, insideLeg: 26 * IN },
    front: half(centre(at(10, 3)), side, crotch, hem, inseam, 8),
    back: half(centre(at(12, 0)), side, crotch, hem, inseam, 8),
  };
})();

// School Needlework (1893), drawers for a child of eight; inseam bowed in 1 in at mid-height (read).
const needlework = (() => {
  const [side, crotch, hem] = [at(0, 3), at(14, 12.5), at(8.5, 20)];
  const [bowA, bowB] = [mid(crotch, hem, 1 / 3), mid(crotch, hem, 2 / 3)];
  const bow = (4 / 3) * IN; // both handles by 4/3 of it move the middle by 1 in
  const inseam: readonly CurvePoints[] = [[crotch, [bowA[0] - bow, bowA[1]], [bowB[0] - bow, bowB[1]], hem]];
  const centre: Half = { top: at(10, 0), turn: mid(at(10, 0), at(10.5, 12.5), 0.6), aim: at(10.5, 12.5) };
  return {
    name: 'School Needlework (1893)',
    body: { label: '1893', waistGirth: 22 * IN, hipGirth: 26 * IN, bodyRise: 8.5 * IN, insideLeg: 21 * IN },
    front: half(centre, side, crotch, hem, inseam, 8),
    back: half(centre, side, crotch, hem, inseam, 8),
  };
})();

const drafts: readonly Printed[] = [school, domestic, needlework];

const drafted = (printed: Printed, leg: object): Draft => {
  const project: Project = projectFor(printed.body, {
    block: { source: 'drawn', front: printed.front, back: printed.back },
    leg: { spread: 0, straighten: 0, ...leg },
  });
  const result = draft(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

/** The printed outline: both halves, the back's mirrored to the left of the fold, levels from the top of the side. */
function printedLine(printed: Printed, edges: readonly (keyof TracedBlock['edges'])[]): readonly (readonly Point[])[] {
  const drop = printed.front.edges.waist[0]?.[0][1] ?? 0;
  return (['front', 'back'] as const).flatMap((part) =>
    edges.map((edge) =>
      flattenCurves(
        printed[part].edges[edge].map(
          (curve) => curve.map(([x, y]) => ({ x: part === 'front' ? x : -x, y: y - drop })) as unknown as Curve,
        ),
        0.01,
      ),
    ),
  );
}

const farthest = (from: readonly Point[], to: readonly (readonly Point[])[]): number =>
  Math.max(...from.map((p) => Math.min(...to.map((line) => pathFoot(line, p).distance))));

describe.each(drafts)('$name, cut apart at the fold', (printed) => {
  it('is joined again to the printed outline within 0.5 mm, the fold as grain', () => {
    const d = drafted(printed, { shape: 'block' });
    const wanted = printedLine(printed, ['waist', 'centre', 'crotch', 'inseam', 'hem', 'side']);
    const got = [flattenCurves(d.leg.joined.front, 0.01), flattenCurves(d.leg.joined.back, 0.01)];
    const apart = Math.max(...got.map((line) => farthest(line, wanted)), ...wanted.map((line) => farthest(line, got)));
    console.log(`${printed.name}: ${apart.toFixed(3)} mm off the printed outline`);
    expect(apart).toBeLessThanOrEqual(0.5);
    expect([d.leg.gapAtWaist, d.leg.gapAtKnee, d.leg.gapAtHem].every((gap) => Math.abs(gap) < 1e-6)).toBe(true);
    expect(d.pieces[0]?.grainline[0].x).toBe(d.pieces[0]?.grainline[1].x);
  });

  it('keeps its crotch curves and inseams as the leg’s own, where the shape is the block’s', () => {
    const d = drafted(printed, { shape: 'block' });
    const wanted = printedLine(printed, ['crotch', 'inseam']);
    const net = d.pieces[0]?.stitchLine ?? [];
    const own = net
      .filter((edge) => /^(crotch|inseam)(Front|Back)$/.test(edge.name))
      .map((edge) => flattenCurves(edge.curves, 0.01));
    // The printed inseam may be shorter or longer than the ankle's: only the common part is compared.
    const lowest = Math.min(...wanted.map((line) => Math.max(...line.map((p) => p.y))));
    expect(
      Math.max(
        ...own.map((line) =>
          farthest(
            line.filter((p) => p.y <= lowest),
            wanted,
          ),
        ),
      ),
    ).toBeLessThanOrEqual(0.5);
  });

  it.each([
    { length: 'ankle', shape: 'pyjama' },
    { length: 'belowKnee', shape: 'block' },
    { length: 'knee', shape: 'straight' },
  ])('goes on through length and shape: %j', (leg) => {
    const d = drafted(printed, { ...leg, straighten: 0.5 });
    expect(Math.abs(d.measures.inseamFront - d.measures.inseamBack)).toBeLessThan(0.1);
    expect(Object.values(d.measures).every(Number.isFinite)).toBe(true);
    expect(checksOf(d).find((c) => c.id === 'cut-line-simple')?.verdict).toBe('good');
    expect(checksOf(d).find((c) => c.id === 'allowances-uniform')?.verdict).toBe('good');
  });
});

describe('a tracing that does not hang together', () => {
  it('is refused with the edge that is loose, or missing', () => {
    const loose = { ...school.front, edges: { ...school.front.edges, hem: [line(at(18, 27.5), at(0, 27))] } };
    const result = draft(projectFor(school.body, { block: { source: 'drawn', front: loose, back: school.back } }));
    expect(result.ok || result.problems.map((p) => p.field)).toEqual(['block.front.edges.hem']);
    const empty = { ...school.front, edges: { ...school.front.edges, side: [] } };
    const second = draft(projectFor(school.body, { block: { source: 'drawn', front: empty, back: school.back } }));
    expect(second.ok || second.problems.map((p) => p.field)).toEqual(['block.front.edges.side']);
  });

  it('may lie mirrored: its centre is turned to its own side', () => {
    const flip = (block: TracedBlock): TracedBlock => ({
      ...block,
      edges: Object.fromEntries(
        Object.entries(block.edges).map(([name, curves]) => [name, curves.map((c) => c.map(([x, y]) => [-x, y]))]),
      ) as unknown as TracedBlock['edges'],
      grainline: block.grainline.map(([x, y]) => [-x, y]) as unknown as TracedBlock['grainline'],
    });
    const plain = drafted(school, { shape: 'block' });
    const flipped = drafted({ ...school, front: flip(school.front) }, { shape: 'block' });
    expect(flipped.measures).toEqual(plain.measures);
  });
});
