import { areaD, EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveCurvature,
  curveMap,
  edgeLength,
  flattenCurves,
  type Outline,
  outlineArea,
  outlineCrossings,
  outlineCurves,
  parallelOutline,
  pathStart,
  pointsBounds,
} from '../../src/plane';
import { pathMeetings } from '../../src/plane/meetings';
import { draft } from '../../src/project';
import { anyBody } from '../properties/bodies';
import { anyDesign, projectOf } from '../properties/designs';
import { between, chance } from '../properties/seed';
import { fromLine, line, lineCrossings, lineLength, type Pair, ringArea, ringIsSimple } from './reference-geometry';

/**
 * Our plane room against two general geometry libraries: JSTS (a port of the JTS Topology Suite) and Clipper2 (polygon
 * clipping and offsetting), on the outlines of fifty drafts from chance. Both know polylines only, so they get chords
 * that leave our curves by no more than this.
 */
const CHORD = 0.001;
/** What the cut line promises. */
const PROMISED = 0.05;

interface Drawn {
  readonly net: Outline;
  readonly cut: Outline;
  readonly away: number;
}

const { seed, numRuns } = chance('reference geometry', 50);
const drawn: readonly Drawn[] = fc
  .sample(fc.tuple(anyBody, anyDesign, between(3, 16)), { seed: seed ?? 0, numRuns: 2 * numRuns })
  .flatMap(([body, design, away]) => {
    const result = draft(projectOf(body, design));
    const piece = result.ok ? result.value.pieces[0] : undefined;
    return piece ? [{ net: piece.stitchLine, cut: piece.cutLine, away }] : [];
  })
  .slice(0, numRuns);

const pairs = (curves: readonly Curve[], chord = CHORD): readonly Pair[] =>
  flattenCurves(curves, chord).map(({ x, y }) => [x, y]);
const ring = (outline: Outline, chord = CHORD): readonly Pair[] => pairs(outlineCurves(outline), chord);
const closed = (points: readonly Pair[]): readonly Pair[] => [...points.slice(0, -1), points[0] as Pair];

it('has fifty outlines to compare', () => {
  expect(drawn).toHaveLength(numRuns);
});

describe('lengths, areas and crossings, by JSTS', () => {
  it('edges are as long, to a hundred thousandth', () => {
    for (const { net, cut } of drawn)
      for (const edge of [...net, ...cut]) {
        const theirs = lineLength(pairs(edge.curves));
        expect(Math.abs(edgeLength(edge) - theirs)).toBeLessThan(1e-3 + 1e-5 * theirs);
      }
  });

  it('outlines have the same area, by both libraries, to a hundred thousandth', () => {
    for (const { net, cut } of drawn)
      for (const outline of [net, cut]) {
        const points = closed(ring(outline));
        const ours = outlineArea(outlineCurves(outline));
        expect(ours / ringArea(points)).toBeCloseTo(1, 5);
        expect(ours / Math.abs(areaD(points.slice(1).map(([x, y]) => ({ x, y }))))).toBeCloseTo(1, 5);
      }
  });

  it('both say of the same outlines that they are simple', () => {
    for (const { net, cut } of drawn)
      for (const outline of [net, cut])
        expect(ringIsSimple(closed(ring(outline, 0.01)))).toBe(outlineCrossings(outlineCurves(outline)).length === 0);
  });

  it('an outline crosses its own moved copy in the same points, to a hundredth of a millimetre', () => {
    let points = 0;
    for (const { net } of drawn) {
      const curves = outlineCurves(net);
      const { right, bottom, left, top } = pointsBounds(flattenCurves(curves));
      const push = { x: 0.11 * (right - left), y: 0.07 * (bottom - top) };
      const moved = curves.map((curve) => curveMap(curve, (p) => ({ x: p.x + push.x, y: p.y + push.y })));
      const ours = pathMeetings(curves, moved).map(({ at }) => at);
      const theirs = lineCrossings(pairs(curves), pairs(moved));
      expect(ours.length).toBe(theirs.length);
      points += theirs.length;
      for (const [x, y] of theirs)
        expect(Math.min(...ours.map((p) => Math.hypot(p.x - x, p.y - y)))).toBeLessThan(0.01);
    }
    // Two shifted legs cross at least twice each.
    expect(points).toBeGreaterThanOrEqual(2 * drawn.length);
  });
});

/** The parallel of a whole outline by Clipper2: corners mitred, as ours. */
function offsetRing(net: Outline, away: number): readonly Pair[] {
  const points = ring(net)
    .slice(1)
    .map(([x, y]) => ({ x, y }));
  const [outer] = inflatePathsD([points], away, JoinType.Miter, EndType.Polygon, 8, 5);
  const pairsOf = (outer ?? []).map(({ x, y }): Pair => [x, y]);
  return [...pairsOf, pairsOf[0] as Pair];
}

/** The farthest that any point of one polyline lies from another, by JSTS. */
const farthest = (from: readonly Pair[], to: readonly Pair[]): number => {
  const there = line(to);
  return Math.max(...from.map((p) => fromLine(there, p)));
};

/** The least radius of a hollow, sampled. */
const tightest = (net: Outline): number =>
  Math.min(
    ...outlineCurves(net).flatMap((curve) =>
      Array.from({ length: 41 }, (_, i) => -1 / Math.min(-1e-9, curveCurvature(curve, i / 40))),
    ),
  );

/** Places that lie farther than a mitre reaches from every corner of the net outline: there the last chord's direction decides. */
const offCorners = (points: readonly Pair[], net: Outline, away: number): readonly Pair[] => {
  const corners = net.map((edge) => pathStart(edge.curves));
  return points.filter(([x, y]) => corners.every((c) => Math.hypot(c.x - x, c.y - y) > 2 * away));
};

describe('parallel outlines at one distance all round, by Clipper2', () => {
  // A hollow tighter than the distance has no parallel of its own; what the corner becomes there is another question.
  const wide = drawn.filter(({ net, away }) => tightest(net) > away);
  const misses = wide.map(({ net, away }) => {
    const ours = ring(
      parallelOutline(net, () => away),
      0.02,
    );
    const theirs = offsetRing(net, away);
    const apart = (choose: (points: readonly Pair[]) => readonly Pair[]) =>
      Math.max(farthest(choose(ours), theirs), farthest(choose(theirs.filter((_, i) => i % 4 === 0)), ours));
    return { corners: apart((points) => points), edges: apart((points) => offCorners(points, net, away)) };
  });

  it('lie within 0.05 mm of each other along the edges, and within 0.2 mm at the corners', () => {
    const [edges, corners] = [misses.map((m) => m.edges), misses.map((m) => m.corners)];
    console.log(
      `${wide.length} of ${drawn.length} outlines have no hollow tighter than the distance; farthest apart: edges ${Math.max(...edges).toFixed(4)}, corners ${Math.max(...corners).toFixed(4)} mm`,
    );
    expect(wide.length).toBeGreaterThan(0.6 * drawn.length);
    expect(edges.filter((miss) => miss > PROMISED)).toEqual([]);
    expect(corners.filter((miss) => miss > 4 * PROMISED)).toEqual([]);
  });

  it('a cut line that is a tenth of a millimetre off is found out', () => {
    const { net, away } = wide[0] as Drawn;
    const off = ring(parallelOutline(net, () => away + 0.1));
    expect(farthest(offCorners(off, net, away), offsetRing(net, away))).toBeGreaterThan(PROMISED);
  });
});
