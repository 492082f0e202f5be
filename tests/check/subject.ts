import { NO_CORRECTIONS } from '../../src/block';
import { type Check, runChecks, type Subject } from '../../src/check';
import { casingHeights, casingLines, finishLeg, waistOpening } from '../../src/edges';
import { finishedInseam, joinBlocks, type Leg, type LegHalf, spreadLeg } from '../../src/leg';
import { type Curve, curveMap, type Edge, type Point, subtract, unit } from '../../src/plane';
import { type Draft, draft, exampleProject, hemOf, type Project } from '../../src/project';
import { legFitted } from '../../src/project/fitted-leg';
import { isBrought, numbersOf, pairByNumbers } from '../../src/trace';

/** The draft of a project that can be drafted. */
export function drafted(project: Project): Draft {
  const result = draft(project);
  if (!result.ok) throw new Error(`refused: ${result.problems.map((p) => p.field).join(', ')}`);
  return result.value;
}

/** What the checks look at in a draft, built again from its parts, with a leg that may be spoilt on purpose. */
export function subjectOf(d: Draft, spoil: (leg: Leg) => Leg = (leg) => leg): Subject {
  const { project: p, body, blocks } = d;
  const { uncorrected, proportions } = legFitted(p).drafted;
  const leg = spoil(d.leg);
  const casing = casingHeights(p.waist);
  const finished = finishLeg(leg, casing, {
    ...p,
    hem: hemOf(p),
    growth: { lengthwise: 1, crosswise: 1 },
    hipGirth: body.hipGirth,
    piecedTip: p.cloth.piecedTip,
    words: { title: 't', label: 'l' },
  });
  const centre = (h: LegHalf) => ({ ...h, way: unit(subtract(h.curveEnd, h.waistPoint)) });
  return {
    body,
    cloth: p.cloth,
    blocks,
    uncorrected,
    proportions,
    traced: isBrought(p.block),
    numbers: p.block.source === 'numbers' ? pairByNumbers(p.block) : undefined,
    corrections: p.fit ?? NO_CORRECTIONS,
    joined: spreadLeg(joinBlocks(blocks), p.leg.spread),
    leg,
    choices: {
      ...p.leg,
      straighten: leg.straighten,
      straightenAutomatic: p.leg.straighten === 'auto',
      inseam: finishedInseam(p.leg.length, body, blocks.riseEase, p.leg.lowerCrotch),
      ankleInseam: finishedInseam('ankle', body, blocks.riseEase),
      hemBody: body,
      kneesOut: 0,
    },
    finished,
    waist: p.waist,
    hem: hemOf(p),
    opening: waistOpening(casingLines({ front: centre(leg.front), back: centre(leg.back) }, casing)),
    elasticLength: d.notions.elasticLength ?? d.notions.bandLength,
    cordLength: d.notions.cordLength,
    ageYears: p.body.ageYears,
  };
}

/** A drafted pair that was brought along again as tracings, so that the checks of tracings have something to judge. */
function tracedAgain({ blocks, project }: Draft): Project {
  const pair = ({ x, y }: Point) => [x, y] as const;
  const traced = (block: Draft['blocks']['front']) => ({
    edges: Object.fromEntries(
      block.edges.map((edge) => [edge.name, edge.curves.map((curve) => curve.map(pair))]),
    ) as never,
    grainline: [pair(block.grainline[0]), pair(block.grainline[1])] as const,
    hipLevel: block.hipLevel,
    kneeLevel: block.kneeLevel,
  });
  return { ...project, block: { source: 'drawn', front: traced(blocks.front), back: traced(blocks.back) } };
}

export const example: Draft = drafted(exampleProject);
export const tracedExample: Draft = drafted(tracedAgain(example));

/** The example with its blocks brought along as a tape measures them. */
export const numberedExample: Draft = drafted({
  ...example.project,
  block: { source: 'numbers', front: numbersOf(example.blocks.front), back: numbersOf(example.blocks.back) },
});

/** The example with the tip of its back fork sewn on again. */
export const piecedExample: Draft = drafted({
  ...example.project,
  cloth: { ...example.project.cloth, piecedTip: 50 },
});

/** A child's pair with cords at waist and hem: the rules of cords have something to judge. */
export const cordedChild: Draft = drafted({
  ...example.project,
  body: { label: 'six', ageYears: 6, waistGirth: 540, hipGirth: 620, bodyRise: 180, insideLeg: 520, height: 1180 },
  waist: { ...example.project.waist, finish: 'drawstringCasing' },
  hem: { ...example.project.hem, finish: 'drawstringCasing' },
});

/** Verdicts by check. */
export const verdicts = (subject: Subject): Record<string, Check['verdict']> =>
  Object.fromEntries(runChecks(subject).map((c) => [c.id, c.verdict]));

/** The checks whose verdict changed. */
export function changedBy(subject: Subject, from: Subject): readonly string[] {
  const [before, after] = [verdicts(from), verdicts(subject)];
  return [...new Set([...Object.keys(before), ...Object.keys(after)])].filter((id) => before[id] !== after[id]).sort();
}

/** Curves with every point moved by the same rule. */
export const moved = (curves: readonly Curve[], move: (p: Point) => Point): readonly Curve[] =>
  curves.map((c) => curveMap(c, move));

/** The edges with one of them drawn otherwise. */
export const withCurves = <E extends Edge>(
  edges: readonly E[],
  name: string,
  to: (curves: readonly Curve[]) => readonly Curve[],
): readonly E[] => edges.map((edge) => (edge.name === name ? { ...edge, curves: to(edge.curves) } : edge));

/** The subject with its piece spoilt, as it is cut, as it is printed and as it is sewn. */
export function withPiece(
  s: Subject,
  spoil: (piece: Subject['finished']['piece']) => Subject['finished']['piece'],
): Subject {
  const { piece, sewn, cut } = s.finished;
  const spoilt = { piece: spoil(piece), sewn: spoil(sewn), cut: { ...cut, piece: spoil(cut.piece) } };
  return { ...s, finished: { ...s.finished, ...spoilt } };
}
