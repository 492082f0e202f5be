import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { expect, it } from 'vitest';
import { checkAllowances } from '../../src/check/check-allowances';
import { checkCutLine } from '../../src/check/check-cut-line';
import type { EdgeName, Piece } from '../../src/edges';
import { cutLineOf } from '../../src/edges/outline';
import { type Allowances, legAllowance } from '../../src/edges/seams';
import { type Curve, curvePoint, flattenCurves, type Outline, outlineCurves, type Point } from '../../src/plane';
import { draft } from '../../src/project';
import { bandsOver } from './allowance-bands';
import { childBodies } from './children';
import { every, share } from './every';
import { fromLine, line, type Pair, ringIsSimple } from './reference-geometry';
import { distribution, ONE_SHEET, projectFor, surveyBodies } from './survey';

const WIDTHS = [0, 6, 15, 25, 40] as const;
/** What the cut line promises, millimetres. */
const PROMISED = 0.05;

/** Inseam and crotch alike, as most sew them, and very unlike: a bound inseam, a wide crotch, and the reverse. */
const SEAMS: readonly Allowances[] = [
  ...WIDTHS.map((each) => ({ inseam: each, crotch: each, waist: each, hem: each })),
  { inseam: 0, crotch: 15, waist: 10, hem: 10 },
  { inseam: 3, crotch: 40, waist: 6, hem: 6 },
  { inseam: 40, crotch: 6, waist: 25, hem: 25 },
];

interface Net {
  readonly id: string;
  readonly leg: Piece;
  readonly seamed: boolean;
}

// Bodies: ANSUR II and the children of UM-HSRI-77-17, as in survey.ts and children.ts; where the files are not beside
// the checkout, the percentile bodies and medians that stand in for them there.
const nets: readonly Net[] = [...share(surveyBodies(), 100), ...share(childBodies(), 100)].flatMap(
  ({ id, body }, i) => {
    const seamed = i % 3 === 0;
    const edges = seamed ? { waist: { finish: 'separateCasing' }, hem: { finish: 'contrastBand' } } : {};
    const result = draft(
      projectFor(body, { ...ONE_SHEET, ...edges, leg: { length: i % 2 === 0 ? 'ankle' : 'short' } }),
    );
    return result.ok ? [{ id, seamed, leg: result.value.pieces[0] as Piece }] : [];
  },
);

/** The leg's cut line with other allowances. */
const withAllowances = ({ leg, seamed }: Net, seams: Allowances): Piece => {
  const kind = seamed ? 'seamed' : 'folded';
  return { ...leg, cutLine: cutLineOf(leg.stitchLine as Outline<EdgeName>, legAllowance(seams, kind, kind)) };
};

const pairs = (outline: Outline, chord: number): readonly Pair[] =>
  flattenCurves(outlineCurves(outline), chord).map(({ x, y }) => [x, y]);

it('a cut line from 0 to 40 mm never crosses itself and is the border of its allowances, on every body', () => {
  const complaints: string[] = [];
  const off: number[] = [];
  const curves: number[] = [];
  nets.forEach((net, i) => {
    SEAMS.forEach((seams, k) => {
      if (!every && k !== i % SEAMS.length) return;
      const piece = withAllowances(net, seams);
      const finished = { piece, cut: { piece } } as Parameters<typeof checkAllowances>[0]['finished'];
      const subject = { finished } as Parameters<typeof checkAllowances>[0];
      const name = `${net.id}, inseam ${seams.inseam}, crotch ${seams.crotch}`;
      for (const check of [checkAllowances(subject), checkCutLine(subject)])
        if (check.verdict !== 'good') complaints.push(`${name}: ${check.id} ${check.measured}`);
      if (!ringIsSimple(pairs(piece.cutLine, 0.01))) complaints.push(`${name}: crossed, by JSTS`);
      const miss = bandsOver(piece);
      off.push(miss.off);
      if (miss.off > PROMISED) complaints.push(`${name}: ${miss.off.toFixed(3)} off by its bands at ${miss.edge}`);
      curves.push(outlineCurves(piece.cutLine).length);
    });
  });
  console.log(distribution('cut line off its bands, mm', off, 4));
  console.log(distribution('curves of a cut line', curves, 0));
  console.log(complaints.slice(0, 40).join('\n'));
  expect(nets.length).toBeGreaterThanOrEqual(19);
  expect(complaints).toEqual([]);
  expect(Math.max(...curves)).toBeLessThan(120);
});

/** Chords of a curve without its end, the first and the last so short that corners get its very direction there. */
const chordsOf = (curve: Curve): readonly Point[] => {
  const [a, b, c, d] = curve;
  const [first, last] = [
    SHORT / (3 * Math.hypot(b.x - a.x, b.y - a.y)),
    SHORT / (3 * Math.hypot(d.x - c.x, d.y - c.y)),
  ];
  const between = flattenCurves([curve], CHORD).slice(1, -1);
  return [a, curvePoint(curve, first), ...between, curvePoint(curve, 1 - last)];
};
const SHORT = 0.01;
/** The reference’s own error, a tenth of what is promised: Clipper2 takes three times as long for a fifth of it. */
const CHORD = 0.005;

it('with one allowance all round the cut line is Clipper2’s, hollows tighter than the allowance included', () => {
  const apart: number[] = [];
  const complaints: string[] = [];
  nets.forEach((net, i) => {
    WIDTHS.forEach((away, k) => {
      if (away === 0 || (!every && k !== 1 + (i % (WIDTHS.length - 1)))) return;
      const ours = pairs(
        cutLineOf(net.leg.stitchLine, () => away),
        0.01,
      );
      const points = outlineCurves(net.leg.stitchLine).flatMap(chordsOf);
      const [outer] = inflatePathsD([points], away, JoinType.Miter, EndType.Polygon, 8, 7);
      const theirs = (outer ?? []).map(({ x, y }): Pair => [x, y]);
      const [there, here] = [line([...theirs, theirs[0] as Pair]), line(ours)];
      const miss = Math.max(
        ...ours.filter((_, n) => n % 3 === 0).map((p) => fromLine(there, p)),
        ...theirs.filter((_, n) => n % 12 === 0).map((p) => fromLine(here, p)),
      );
      apart.push(miss);
      if (miss > PROMISED) complaints.push(`${net.id}, ${away} mm: ${miss.toFixed(3)}`);
    });
  });
  console.log(distribution('from Clipper2’s, mm', apart, 4));
  console.log(complaints.slice(0, 40).join('\n'));
  expect(complaints).toEqual([]);
});
