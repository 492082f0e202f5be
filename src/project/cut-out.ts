import {
  type EdgeChoices,
  type FinishedLeg,
  finishLeg,
  legPieces,
  type Notions,
  notionsOf,
  otherPieces,
  type Piece,
} from '../edges';
import { growthFor, legFlaw } from '../leg';
import { type Mm, type Problem, Refusal, say } from '../length';
import { outlineCrossings, outlineCurves, pathStart } from '../plane';
import { type FittedLeg, legFitted } from './fitted-leg';
import { hemOf } from './hem-of';
import type { Project } from './types';

/** A fitted leg, finished, with all pieces that are cut: the leg first. */
export interface CutOut {
  readonly fitted: FittedLeg;
  readonly choices: EdgeChoices;
  readonly finished: FinishedLeg;
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
    piecedTip: project.cloth.piecedTip,
    words: { title: project.name, label: project.body.label },
  };
  const finished = finishLeg(fitted.leg, fitted.heights, choices);
  // Where nothing grows the two are one, and a drag asks in every frame.
  for (const piece of new Set([finished.sewn, finished.piece])) refuseCrossingTurning(project, finished, piece);
  return {
    fitted,
    choices,
    finished,
    notions: notionsOf(fitted.leg, finished, choices, fitted.body),
    pieces: [...legPieces(finished), ...otherPieces(fitted.leg, finished, choices, fitted.body)],
  };
}

/** @throws Refusal of the field `leg` where the net leg's lines are no leg */
function legChecked(project: Project): FittedLeg {
  const fitted = legFitted(project);
  const inseamsAsBrought = project.block.source === 'traced' && project.leg.shape === 'block';
  if (legFlaw(fitted.leg, inseamsAsBrought) === undefined) return fitted;
  const phrase = say`together these choices make lines that cross or turn back; set one of them back.`;
  throw new Refusal([{ field: 'leg', value: project.leg, phrase }]);
}

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
  { fitted, choices }: CutOut,
  allowances: Record<'inseam' | 'crotch' | 'waist' | 'hem', Mm>,
): readonly Piece[] {
  const wider = { ...choices, allowances };
  const again = finishLeg(fitted.leg, fitted.heights, wider);
  return [...legPieces(again), ...otherPieces(fitted.leg, again, wider, fitted.body)];
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
