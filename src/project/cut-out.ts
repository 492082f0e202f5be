import {
  type EdgeChoices,
  type FinishedLeg,
  finishLegs,
  legPieces,
  type Notions,
  notionsOf,
  otherPieces,
  type Piece,
  piecesOfSides,
  waistRound,
} from '../edges';
import { growthFor, legFlaw } from '../leg';
import type { Mm } from '../length';
import { mapTuple, outlineCrossings, outlineCurves, pathStart } from '../plane';
import { isBrought } from '../trace';
import { type Problem, Refusal, say } from '../words';
import { type FittedLeg, legFitted } from './fitted-leg';
import { hemOf } from './hem-of';
import { type CutLeg, legsOf, type SideLeg } from './sides';
import type { Project } from './types';

/** A fitted leg, finished, with all pieces that are cut: the leg first. */
export interface CutOut {
  readonly fitted: FittedLeg;
  readonly choices: EdgeChoices;
  /** One leg for both sides, or the left one and the right one. */
  readonly legs: readonly [CutLeg, ...CutLeg[]];
  /** Of both legs. */
  readonly opening: Mm;
  readonly notions: Notions;
  readonly pieces: readonly Piece[];
}

/**
 * From a project to its pieces: what can't be cut is refused here, and nothing after this refuses.
 *
 * @param project checked, its defaults filled in
 * @param legDone told when the net leg is drawn: for measuring
 * @throws Refusal; of the field `leg` where the net leg's lines are no leg, whichever choice it was
 */
export function cutOut(project: Project, legDone: () => void = () => {}): CutOut {
  const fitted = legChecked(project);
  legDone();
  const choices: EdgeChoices = {
    ...project,
    hem: hemOf(project),
    growth: growthFor(project.cloth),
    hipGirth: fitted.body.hipGirth,
    piecedTip: project.cloth.piecedTip,
    words: { title: project.name, label: project.body.label },
  };
  const legs = legsCut(legsOf(fitted, project.sides, inseamsAsBrought(project)), fitted, choices);
  for (const { finished } of legs) {
    // Where nothing grows the two are one, and a drag asks in every frame.
    for (const piece of new Set([finished.sewn, finished.piece])) refuseCrossingTurning(project, finished, piece);
  }
  const round = waistRound(legs.map(({ finished }) => finished.casing));
  return {
    fitted,
    choices,
    legs,
    opening: legs.length === 1 ? fitted.opening : round,
    notions: notionsOfLegs(legs, choices, round),
    pieces: allPieces(legs),
  };
}

function legsCut(legs: readonly [SideLeg, ...SideLeg[]], { heights }: FittedLeg, choices: EdgeChoices): CutOut['legs'] {
  const both = finishLegs(
    legs.map(({ leg }) => leg),
    heights,
    choices,
  );
  return mapTuple(legs, (one, i): CutLeg => {
    const finished = both[i] as FinishedLeg;
    const others = otherPieces(one.leg, finished, choices, one.body, both);
    return { ...one, finished, pieces: [...legPieces(finished), ...others] };
  });
}

/** What is bought to length is long enough for either leg. */
function notionsOfLegs(legs: readonly CutLeg[], choices: EdgeChoices, opening: Mm): Notions {
  const each = legs.map(({ leg, finished, body }) => notionsOf(leg, finished, choices, body, opening));
  return each.reduce((a, b) => ({
    ...b,
    hemElasticLength: longer(a.hemElasticLength, b.hemElasticLength),
    hemCordLength: longer(a.hemCordLength, b.hemCordLength),
  }));
}

const longer = (a: Mm | undefined, b: Mm | undefined): Mm | undefined =>
  a === undefined || b === undefined ? (a ?? b) : Math.max(a, b);

/** The legs themselves, and what is cut beside them. */
const allPieces = (legs: readonly CutLeg[]): readonly Piece[] => legs.map(({ pieces }) => pieces).reduce(piecesOfSides);

/** @throws Refusal of the field `leg` where the net leg's lines are no leg */
function legChecked(project: Project): FittedLeg {
  const fitted = legFitted(project);
  if (legFlaw(fitted.leg, inseamsAsBrought(project)) === undefined) return fitted;
  const phrase = say`together these choices make lines that cross or turn back; set one of them back.`;
  throw new Refusal([{ field: 'leg', value: project.leg, phrase }]);
}

/** Blocks that were brought along may have unequal inseams: that is told by a check. */
const inseamsAsBrought = ({ block, leg }: Project): boolean => isBrought(block) && leg.shape === 'block';

/** The net leg doesn't cross itself: if its stitching line does, a turning is in the way of it, at the hem or at the waist. */
function refuseCrossingTurning({ waist }: Project, { hemPlan }: FinishedLeg, { stitchLine, lines }: Piece): void {
  const [crossing] = outlineCrossings(outlineCurves(stitchLine));
  if (!crossing) return;
  const hip = lines.find(({ name }) => name === 'hip');
  const atHem = !hip || crossing.y > pathStart(hip.curves).y;
  const field = atHem ? `hem.${hemPlan.chosen.key}` : 'waist.finish';
  const phrase = atHem
    ? say`its turning crosses the lines of the leg; a longer leg or a narrower hem would do.`
    : say`its turning crosses the lines of the leg; a narrower elastic, or a casing or band of its own, would do.`;
  throw new Refusal([{ field, value: atHem ? hemPlan.chosen.value : waist.finish, phrase }]);
}

/**
 * The same pieces with other allowances, as a sample below true size draws them.
 *
 * @param cut the pieces
 * @param allowances of each seam
 */
export function withAllowances(
  { fitted, legs, choices }: CutOut,
  allowances: Record<'inseam' | 'crotch' | 'waist' | 'hem', Mm>,
): readonly Piece[] {
  return allPieces(legsCut(legs, fitted, { ...choices, allowances }));
}

/** Why a project's pieces can't be cut; undefined where they can. */
export const refusalOfPieces = (project: Project): readonly Problem[] | undefined => refusalOf(() => cutOut(project));

/** Whether the net leg comes out as one, whatever else may be refused about it. */
export const legIsDrawn = (project: Project): boolean =>
  refusalOf(() => legChecked(project))?.every(({ field }) => field !== 'leg') ?? true;

function refusalOf(work: () => unknown): readonly Problem[] | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    if (error instanceof Refusal) return error.problems;
    throw error;
  }
}
