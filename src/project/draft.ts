import type { Piece } from '../edges';
import type { Mm } from '../length';
import { mapTuple } from '../plane';
import { paperWays } from '../sheets';
import { Refusal, type Result } from '../words';
import { cautionsOf } from './cautions';
import { type CutOut, cutOut, withAllowances } from './cut-out';
import type { Draft, Measures } from './draft-types';
import { measuresOf } from './measures';
import { allRefusals } from './refusals';
import { checkedProject } from './schema';
import { type CutLeg, ofBoth } from './sides';
import type { Project } from './types';

/** Called when a stage is done: for measuring, never for drafting. */
type StageWatch = (stage: 'project' | 'leg' | 'edges') => void;

/**
 * The whole job: from a project to the finished, checked pattern on its sheets. Pure; the same project always gives
 * the same draft.
 *
 * @param input the project; defaults are filled in
 * @param watch told of each finished stage
 * @returns the draft, or every reason why there can be none
 */
export function draft(input: Project, watch: StageWatch = () => {}): Result<Draft> {
  const { project, problems } = checkedProject(input);
  if (problems.length > 0) return { ok: false, problems };
  watch('project');
  try {
    return { ok: true, value: drafted(project, watch) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: allRefusals(project, error.problems) };
    throw error;
  }
}

function drafted(project: Project, watch: StageWatch): Draft {
  // A paper that can't be is refused now; the sheets are laid when somebody asks for them, which a drag never does.
  paperWays(project.paper);
  const cut = cutOut(project, () => watch('leg'));
  const { fitted, choices, notions, opening, pieces } = cut;
  const { body, heights, needed, drafted, joined, choices: legChoices } = fitted;
  watch('edges');
  const { legs, measures } = legsMeasured(cut.legs, (one) =>
    measuresOf({ ...one, blocks: drafted.blocks, notions, heights, opening, needed }),
  );
  const { leg, finished } = legs.at(-1) ?? legs[0];
  const cautions = cautionsOf(project, body, legs, notions, opening);
  return {
    project,
    body,
    blocks: drafted.blocks,
    proportions: drafted.proportions,
    legs,
    leg,
    joined,
    legChoices,
    finished,
    pieces,
    printed: printedPieces(project, pieces, cut),
    notions,
    measures,
    cautions,
    search: 'quick',
    origin: { drafted, leg: fitted.leg, edges: choices },
  };
}

/** The legs with their measures, and those of the pair: girths of both, and for the rest the last one's. */
function legsMeasured(legs: CutOut['legs'], measured: (leg: CutLeg) => Measures): Pick<Draft, 'legs' | 'measures'> {
  const each = mapTuple(legs, (one) => ({ ...one, measures: measured(one) }));
  const { measures } = each.at(-1) ?? each[0];
  return {
    legs: each,
    measures: { ...measures, hipGirthFinished: ofBoth(each, (one) => one.measures.hipGirthFinished) },
  };
}

/** A sample below true size may keep its allowances full: then they are drawn wider, and come out true on the paper. */
function printedPieces({ paper, allowances }: Project, pieces: readonly Piece[], cut: CutOut): readonly Piece[] {
  if (paper.scale === 1 || paper.allowances === 'scaled') return pieces;
  const { inseam, crotch, waist, hem } = allowances;
  const wide = (width: Mm) => width / paper.scale;
  return withAllowances(cut, { inseam: wide(inseam), crotch: wide(crotch), waist: wide(waist), hem: wide(hem) });
}
