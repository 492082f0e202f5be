import { blocksCorrected, blocksFromTrace, draftBlocks, NO_CORRECTIONS } from '../block';
import { type Body, prepareBody } from '../body';
import { pullOnNeeded, runChecks } from '../check';
import {
  type CasingHeights,
  casingHeights,
  casingLines,
  finishLeg,
  growthFor,
  hemPlan,
  notionsOf,
  otherPieces,
  type Piece,
  waistOpening,
} from '../edges';
import {
  centresOf,
  finishedInseam,
  type JoinedBlocks,
  joinBlocks,
  type Leg,
  type LegChoices,
  leastStraightening,
  legCrotchLength,
  legFrom,
  spreadLeg,
} from '../leg';
import { type Mm, mm, Refusal, type Result, say } from '../length';
import { paperWays, tilePieces } from '../sheets';
import { cautionsOf } from './cautions';
import type { Draft, ProjectBlocks } from './draft-types';
import { measuresOf } from './measures';
import { checkedProject } from './schema';
import type { Project } from './types';
import { workingOf } from './working';

/** The crotch length of the finished leg is brought this close to the wanted one. */
const CROTCH_REACHED = 0.05;
const MOST_ROUNDS = 6;

/** Called when a stage is done: for measuring, never for drafting. */
export type StageWatch = (stage: 'project' | 'leg' | 'edges' | 'checks' | 'working') => void;

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
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}

function drafted(project: Project, watch: StageWatch): Draft {
  const body = prepareBody(project.body);
  const heights = casingHeights(project.waist);
  const needed = pullOnNeeded(body, project.cloth);
  const { drafted, joined, choices: legChoices, leg } = legFitted(project, body, heights, needed);
  const opening = openingAt(joined, project, heights)(leg.straighten);
  watch('leg');

  const choices = {
    ...project,
    growth: growthFor(project.cloth),
    words: { title: project.name, label: project.body.label },
  };
  const finished = finishLeg(leg, heights, choices);
  watch('edges');

  const notions = notionsOf(finished, choices, body);
  const measures = measuresOf({ blocks: drafted.blocks, leg, finished, notions, heights, opening, needed });
  const checks = runChecks({
    body,
    cloth: project.cloth,
    blocks: drafted.blocks,
    traced: project.block.source === 'traced',
    corrections: project.fit ?? NO_CORRECTIONS,
    joined,
    leg,
    choices: legChoices,
    finished,
    waist: project.waist,
    hem: project.hem,
    opening,
    elasticLength: notions.elasticLength ?? notions.bandLength,
  });
  watch('checks');

  const pieces = [finished.piece, ...otherPieces(leg, finished, choices, body)];
  const printed = printedPieces(project, pieces, (allowances) => {
    const wider = { ...choices, allowances };
    const again = finishLeg(leg, heights, wider);
    return [again.piece, ...otherPieces(leg, again, wider, body)];
  });
  // A paper that can't be is refused now; the sheets are laid when somebody asks for them, which a drag never does.
  paperWays(project.paper);
  const sheets = once(() => tilePieces(printed, project.paper));

  const working = workingOf({ project, body, drafted, joined, leg, legChoices, finished, choices, notions, measures });
  watch('working');
  const cautions = cautionsOf(project, body, finished, notions, opening);
  return {
    project,
    body,
    blocks: drafted.blocks,
    leg,
    joined,
    legChoices,
    finished,
    pieces,
    printed,
    notions,
    measures,
    checks,
    cautions,
    get sheets() {
      return sheets();
    },
    working,
  };
}

/** What a costly question is answered, found when it is first asked. */
function once<Answer>(find: () => Answer): () => Answer {
  let found: { readonly answer: Answer } | undefined;
  return () => {
    found ??= { answer: find() };
    return found.answer;
  };
}

/** A sample below true size may keep its allowances full: then they are drawn wider, and come out true on the paper. */
function printedPieces(
  { paper, allowances }: Project,
  pieces: readonly Piece[],
  finished: (allowances: Project['allowances']) => readonly Piece[],
): readonly Piece[] {
  if (paper.scale === 1 || paper.allowances === 'scaled') return pieces;
  const { inseam, crotch, waist, hem } = allowances;
  const wide = (width: Mm) => width / paper.scale;
  return finished({ inseam: wide(inseam), crotch: wide(crotch), waist: wide(waist), hem: wide(hem) });
}

/**
 * The same draft on as few sheets as a longer search finds: for paper that is printed, and for the screen once nothing
 * has changed for a while.
 */
export function withFewestSheets(drafted: Draft): Draft {
  return { ...drafted, sheets: tilePieces(drafted.printed, drafted.project.paper, 'thorough') };
}

interface FittedLeg {
  readonly drafted: ProjectBlocks;
  readonly joined: JoinedBlocks;
  readonly choices: LegChoices;
  readonly leg: Leg;
}

/**
 * Blocks and leg together: where the crotch length was measured it is the finished leg's that must come out right, so
 * the blocks aim by as much past it as straightening and the leg's own inseams will take back.
 */
function legFitted(project: Project, body: Body, heights: CasingHeights, needed: Mm): FittedLeg {
  let aim = 0;
  let found = legAimed(project, body, heights, needed, aim);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { crotchWanted: wanted, crotchFit } = found.drafted.blocks;
    if (wanted === undefined) return found;
    const miss = legCrotchLength(found.leg.front, found.leg.back) - wanted;
    const spent = crotchFit * miss <= -Math.abs(miss); // λ is ±1 and would have to go further
    if (spent || Math.abs(miss) <= CROTCH_REACHED) return found;
    aim -= miss;
    found = legAimed(project, body, heights, needed, aim);
  }
  return found;
}

function legAimed(project: Project, body: Body, heights: CasingHeights, needed: Mm, aim: Mm): FittedLeg {
  const { spread, straighten, raiseWaist, lowerCrotch, length, shape } = project.leg;
  const drafted = blocksOf(project, body, aim);
  const { blocks } = drafted;
  const joined = spreadLeg(joinBlocks(blocks), spread);
  const automatic = straighten === 'auto';
  const chosen = automatic ? leastStraightening(openingAt(joined, project, heights), needed).straighten : straighten;
  const choices: LegChoices = {
    spread,
    straighten: chosen,
    straightenAutomatic: automatic,
    raiseWaist,
    lowerCrotch,
    inseam: legInseam(finishedInseam(length, body.insideLeg, blocks.riseEase), project.hem),
    ankleInseam: finishedInseam('ankle', body.insideLeg, blocks.riseEase),
    shape,
    footEntryGirth: body.footEntryGirth,
    kneesOut: project.fit?.knockKnees ?? 0,
  };
  return { drafted, joined, choices, leg: legFrom(joined, choices) };
}

/** The leg's own inseam: bands and cuffs count in the finished length. */
function legInseam(finished: Mm, hem: Project['hem']): Mm {
  const inseam = finished - hemPlan(hem).added;
  if (inseam >= SHORTEST_LEG) return inseam;
  const phrase = say`leaves ${mm(inseam)} of inseam to the leg; at least ${mm(SHORTEST_LEG)} must stay, so a lower band or a longer leg would do.`;
  throw new Refusal([{ field: 'hem.bandHeight', value: hem.bandHeight, phrase }]);
}

const SHORTEST_LEG = 25;

/** The project's blocks, corrected after wearing. A correction changes the crotch length on purpose, so it moves what is wanted. */
function blocksOf(project: Project, body: Body, aim: Mm): ProjectBlocks {
  const { blocks: uncorrected, proportions } = uncorrectedBlocks(project, body, aim);
  const { blocks, crotchChange } = blocksCorrected(uncorrected, project.fit ?? NO_CORRECTIONS);
  const wanted = blocks.crotchWanted;
  return {
    blocks: { ...blocks, crotchWanted: wanted === undefined ? undefined : wanted + crotchChange },
    proportions,
    uncorrected,
  };
}

function uncorrectedBlocks({ block }: Project, body: Body, aim: Mm): Omit<ProjectBlocks, 'uncorrected'> {
  if (block.source === 'traced')
    return { blocks: blocksFromTrace(block.front, block.back, body.bodyRise), proportions: undefined };
  return draftBlocks(body, block, aim);
}

const openingAt =
  (joined: JoinedBlocks, project: Project, heights: CasingHeights) =>
  (straighten: number): Mm =>
    waistOpening(casingLines(centresOf(joined, straighten, project.leg.raiseWaist), heights));
