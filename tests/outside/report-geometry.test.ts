import { describe, expect, it } from 'vitest';
import { makeReport, type Report, type ReportPiece } from '../../src/files';
import { draft, exampleProject, type Project } from '../../src/project';
import { crossingsAt, fromLine, line, lineLength, mirroredIn, type Pair, ringIsSimple } from './reference-geometry';
import { projectFor } from './survey';
import { first, last, named, stitch, turnings } from './turnings';

/** Everything below is computed from the report's polylines alone, by JSTS and plain arithmetic. */
const BODY = { label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 };

const projects: readonly (readonly [string, Project])[] = [
  ['the example', exampleProject],
  ['below the knee, wide elastic', projectFor(BODY, { leg: { length: 'belowKnee' }, waist: { elasticWidth: 38 } })],
  ['a number for the inseam, block shape', projectFor(BODY, { leg: { length: { inseam: 500 }, shape: 'block' } })],
  ['a hem girth, short', projectFor(BODY, { leg: { length: 'short', shape: { hemGirth: 700 } } })],
  ['inch allowances, elastic sewn on', projectFor(BODY, { units: 'inch', waist: { elastic: 'sewnOn' } })],
  ['a full abdomen', projectFor({ ...BODY, waistGirth: 1180, hipGirth: 1100 })],
  ['a child', projectFor({ label: 'c', waistGirth: 520, hipGirth: 560, hipDepth: 120, bodyRise: 170, insideLeg: 430 })],
];

const opened = projects.map(([name, project]) => {
  const result = draft(project);
  if (!result.ok) throw new Error(`${name}: ${result.problems.map((p) => p.field).join()}`);
  const report = JSON.parse(JSON.stringify(makeReport(result.value))) as Report;
  return { name, project, report, piece: report.pieces[0] as ReportPiece };
});

describe.each(opened)('the report of $name, measured by a general geometry library', ({ project, report, piece }) => {
  it('keeps every cut-line point at its allowance from the stitching line', () => {
    let tested = 0;
    // A corner reaches as far as the wider of its two allowances, on both edges.
    const corner = 1.5 * Math.max(...piece.cutLine.map((edge) => edge.allowance)) + 0.5;
    for (const cut of piece.cutLine) {
      const net = stitch(piece, cut.edge);
      const to = line(net);
      for (const p of cut.points) {
        const nearEnd = Math.min(
          Math.hypot(p[0] - first(net)[0], p[1] - first(net)[1]),
          Math.hypot(p[0] - last(net)[0], p[1] - last(net)[1]),
        );
        if (nearEnd <= corner) continue;
        tested += 1;
        expect(Math.abs(fromLine(to, p) - cut.allowance)).toBeLessThanOrEqual(0.05);
      }
    }
    expect(tested).toBeGreaterThan(40);
  });

  it('has equal inseams and a simple, closed cut line', () => {
    expect(Math.abs(lineLength(stitch(piece, 'inseamFront')) - lineLength(stitch(piece, 'inseamBack')))).toBeLessThan(
      0.1,
    );
    const ring = piece.cutLine.flatMap((edge) => edge.points.slice(1));
    expect(ringIsSimple([last(ring), ...ring])).toBe(true);
  });

  it('is as wide at the hip as girth, ease and spread say', () => {
    const level = first(named(piece.lines, 'hip'))[1];
    const net = piece.stitchLine.flatMap((edge) => edge.points);
    const xs = crossingsAt(net, level);
    const wide = 2 * (Math.max(...xs) - Math.min(...xs));
    const ease = project.block.source === 'drafted' ? project.block.hipEase : Number.NaN;
    // Where the hip line lies in a crotch curve, or over a belly, it is wider than that; never narrower.
    expect(wide - ((project.body.hipGirth ?? 0) + ease + 2 * project.leg.spread)).toBeGreaterThan(-0.1);
    expect(Math.abs(report.measures.hipGirthFinished - wide)).toBeLessThan(0.1);
  });

  it('has a casing of twice the elastic and the turn of the cloth, its fold halfway', () => {
    const { elasticWidth, turnOfCloth, elastic } = project.waist;
    const height = 2 * elasticWidth + turnOfCloth;
    const edge = line(named(piece.lines, 'waist edge'));
    const raw = stitch(piece, 'waist');
    const fold = named(piece.folds, 'waist fold');
    const middle = (points: readonly Pair[]): Pair => [
      (first(points)[0] + last(points)[0]) / 2,
      (first(points)[1] + last(points)[1]) / 2,
    ];
    expect(report.measures.casingHeight).toBeCloseTo(height, 3);
    expect(fromLine(edge, middle(raw))).toBeCloseTo(height + (elastic === 'threaded' ? 6 : 0), 2);
    expect(fromLine(edge, middle(fold))).toBeCloseTo(height / 2, 2);
  });

  // The part of each turning that is stitched down, laid over in its fold, against the line under it: ends and length.
  it('turns flat: within 1 % and 3 mm of the line it is stitched to, as a whole and over any 100 mm', () => {
    for (const t of turnings(piece)) {
      const over = t.turned.map((p) => mirroredIn(p, first(t.fold), last(t.fold)));
      const miss = Math.abs(lineLength(over) - lineLength(t.under));
      expect(miss).toBeLessThanOrEqual(3);
      expect(miss / lineLength(t.under)).toBeLessThanOrEqual(0.01);
      for (const [a, b] of [
        [first(over), first(t.under)],
        [last(over), last(t.under)],
      ] as const)
        expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThanOrEqual(1);
    }
  });

  it('meets the crotch point squarely, front and back together 180° ± 2°', () => {
    // A chord leans from its curve's end by half its turn, so the direction there comes from a parabola through three points.
    const wayAt = (points: readonly Pair[]): Pair => {
      const [[px, py], [qx, qy], [rx, ry]] = points as unknown as readonly [Pair, Pair, Pair];
      const [a1, a2] = [Math.hypot(qx - px, qy - py), Math.hypot(rx - px, ry - py)];
      const [w1, w2] = [a2 / (a1 * (a2 - a1)), -a1 / (a2 * (a2 - a1))];
      return [w1 * (qx - px) + w2 * (rx - px), w1 * (qy - py) + w2 * (ry - py)];
    };
    const corner = (before: readonly Pair[], after: readonly Pair[]) => {
      const [u, v] = [wayAt([...before].reverse()), wayAt(after)];
      return (Math.acos((u[0] * v[0] + u[1] * v[1]) / (Math.hypot(...u) * Math.hypot(...v))) * 180) / Math.PI;
    };
    const sum =
      corner(stitch(piece, 'crotchFront'), stitch(piece, 'inseamFront')) +
      corner(stitch(piece, 'inseamBack'), stitch(piece, 'crotchBack'));
    expect(Math.abs(sum - 180)).toBeLessThanOrEqual(2);
  });
});
