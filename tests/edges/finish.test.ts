import { describe, expect, it } from 'vitest';
import { casingHeights, cutCurves, elasticLength, type HemPlan, hemTurning, waistOpening } from '../../src/edges';
import {
  distance,
  edgeLength,
  flattenCurves,
  outlineArea,
  outlineCurves,
  outlineEdge,
  pathEnd,
  pathFoot,
  pathStart,
  pathThrough,
  point,
  pointsBounds,
} from '../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import { Refusal } from '../../src/words';

const drafted = (change: (project: Project) => Project = (p) => p): Draft => {
  const result = draft(change(exampleProject));
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const legOf = (d: Draft) => d.pieces[0] as Draft['pieces'][number];

const CASING = {
  finish: 'elasticCasing',
  cordWidth: 10,
  bandHeight: 60,
  elasticWidth: 25.4,
  rows: 1,
  turnOfCloth: 3.2,
  elastic: 'threaded',
  rawEdge: 'overlocked',
  elasticLength: 'auto',
  elasticStretch: 0.7,
  cordLength: 'auto',
  cord: 'bought',
  bandStretch: 1,
} as const;

describe('a fold-over casing', () => {
  // Practice: twice the elastic plus ⅛ in for the turn of the cloth, fold halfway.
  it('is built 2w + t above the waist edge, and more where the raw edge must be caught', () => {
    expect(casingHeights(CASING)).toMatchObject({ kind: 'folded', height: 54, fold: 27, catch: 6 });
    expect(casingHeights({ ...CASING, rawEdge: 'turnedUnder' }).catch).toBe(10);
    expect(casingHeights({ ...CASING, elastic: 'sewnOn' }).catch).toBe(0);
    expect(casingHeights({ ...CASING, elasticWidth: 10, rows: 3 }).height).toBeCloseTo(60 + 6 + 3.2, 9);
  });

  // Practice: elastic is drawn through a channel of its width and 1.5 mm.
  it('leaves the elastic a channel of at least its width and 1.5 mm', () => {
    expect(casingHeights(CASING).fold).toBeGreaterThanOrEqual(25.4 + 1.5);
  });

  it('measures the opening at its smallest ring, the fold', () => {
    const lines = {
      waistEdge: [point(-250, 0), point(250, 0)],
      fold: [point(-246, -27), point(247, -27)],
      raw: [point(-251, -60), point(251, -60)],
      partings: [],
      higher: 0,
    } as const;
    expect(waistOpening(lines)).toBe(2 * 493);
  });

  it('never cuts the elastic longer than the opening', () => {
    expect(elasticLength(742, 1040)).toBeCloseTo(0.92 * 742 + 25, 9);
    expect(elasticLength(1200, 1000)).toBe(1000);
  });
});

const PLAN: HemPlan = {
  kind: 'folded',
  depth: 30,
  beyond: 10,
  turnedUnder: true,
  added: 0,
  channel: undefined,
  chosen: { key: 'depth', value: 30 },
};

describe('a hem turning', () => {
  const front = pathThrough(point(200, 0), point(180, 600));
  const back = pathThrough(point(-250, 0), point(-220, 600));
  it('mirrors the leg above the fold', () => {
    const hem = hemTurning(front, back, PLAN);
    expect(pathStart(hem.front)).toEqual(pathEnd(front));
    expect(hem.raw[0].y).toBeCloseTo(640, 9);
    expect(hem.raw[0].x).toBeGreaterThan(180);
    expect(distance(...hem.raw)).toBeCloseTo(400 + (20 / 600) * 40 + (30 / 600) * 40, 9);
    expect(distance(...hem.turnUnder)).toBeCloseTo(distance(...hem.stitching), 9);
  });

  it('is refused where it is deeper than the leg is long', () => {
    const [shortFront, shortBack] = [
      pathThrough(point(200, 0), point(195, 30)),
      pathThrough(point(-250, 0), point(-245, 30)),
    ];
    expect(() => hemTurning(shortFront, shortBack, PLAN)).toThrow(Refusal);
  });
});

describe('the finished leg', () => {
  const d = drafted();
  const leg = legOf(d);

  it('has a closed stitching line with the trade’s names, and a cut line edge for edge', () => {
    expect(leg.stitchLine.map((edge) => edge.name)).toEqual([
      'waist',
      'centreFrontTurning',
      'centreFront',
      'crotchFront',
      'inseamFront',
      'inseamFrontTurning',
      'hem',
      'inseamBackTurning',
      'inseamBack',
      'crotchBack',
      'centreBack',
      'centreBackTurning',
    ]);
    expect(leg.cutLine.map((edge) => edge.name)).toEqual(leg.stitchLine.map((edge) => edge.name));
    for (const outline of [leg.stitchLine, leg.cutLine]) {
      outline.forEach((edge, i) => {
        const next = outline[(i + 1) % outline.length] ?? edge;
        expect(distance(pathEnd(edge.curves), pathStart(next.curves)), edge.name).toBeLessThan(1e-6);
      });
    }
  });

  it('is larger as cut than as sewn, by about allowance × seam', () => {
    const grown = outlineArea(cutCurves(leg)) - outlineArea(outlineCurves(leg.stitchLine));
    const seams = leg.stitchLine
      .filter((edge) => edge.name !== 'waist' && edge.name !== 'hem')
      .reduce((sum, edge) => sum + edgeLength(edge), 0);
    expect(grown).toBeGreaterThan(0.97 * 15 * seams);
    expect(grown).toBeLessThan(1.05 * 15 * seams);
  });

  it('has one notch in front and two behind, and inseam notches that meet', () => {
    expect(leg.notches.filter((n) => n.edge === 'centreFront').map((n) => n.count)).toEqual([1]);
    expect(leg.notches.filter((n) => n.edge === 'centreBack').map((n) => n.count)).toEqual([2]);
    const arcs = (edge: 'inseamFront' | 'inseamBack', part: 'front' | 'back') =>
      leg.notches
        .filter((n) => n.edge === edge)
        .map((n) => {
          const points = flattenCurves(d.leg[part].inseam, 1e-4);
          let nearest = { off: Infinity, arc: 0 };
          let arc = 0;
          points.slice(1).forEach((p, i) => {
            const off = pathFoot([points[i] as typeof p, p], n.at).distance;
            if (off < nearest.off) nearest = { off, arc: arc + distance(points[i] as typeof p, n.at) };
            arc += distance(points[i] as typeof p, p);
          });
          return nearest.arc;
        });
    const [front, back] = [arcs('inseamFront', 'front'), arcs('inseamBack', 'back')];
    expect(front).toHaveLength(2);
    front.forEach((arc, i) => {
      expect(Math.abs(arc - (back[i] ?? 0))).toBeLessThanOrEqual(0.5);
    });
  });

  it('keeps grainline and words inside the stitching line', () => {
    const box = pointsBounds(leg.stitchLine.flatMap((edge) => edge.curves.map((c) => c[0])));
    expect(leg.grainline[0].x).toBe(leg.grainline[1].x);
    for (const text of leg.texts) {
      expect(text.at.x).toBeGreaterThan(box.left);
      expect(text.at.x).toBeLessThan(box.right);
      expect(text.size).toBeGreaterThan(1.5);
    }
  });

  it('shrinks its letters on a child’s piece', () => {
    const child = drafted((p) => ({
      ...p,
      body: { label: 'c', waistGirth: 480, hipGirth: 500, bodyRise: 170, insideLeg: 350 },
    }));
    expect(Math.max(...legOf(child).texts.map((t) => t.size))).toBeLessThan(Math.max(...leg.texts.map((t) => t.size)));
  });

  it.each([0, 6, 10, 15, 25, 40])('has a cut line that keeps its allowance of %f mm', (allowance) => {
    const cut = drafted((p) => ({ ...p, allowances: { ...p.allowances, inseam: allowance, crotch: allowance } }));
    for (const id of ['allowances-uniform', 'cut-line-simple'])
      expect(checksOf(cut).find((c) => c.id === id)?.verdict).toBe('good');
    expect(outlineEdge(legOf(cut).cutLine, 'inseamFront').curves.length).toBeLessThanOrEqual(8);
  });
});
