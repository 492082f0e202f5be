import { blocksCorrected, blocksFromTrace, draftBlocks, NO_CORRECTIONS } from '../block';
import { type Body, prepareBody } from '../body';
import { pullOnNeeded } from '../check';
import { type CasingHeights, casingHeights, casingLines, hemPlan, waistOpening } from '../edges';
import {
  centresOf,
  finishedInseam,
  type JoinedBlocks,
  joinBlocks,
  type Leg,
  type LegChoices,
  leastStraightening,
  legCrotchLength,
  legDrawn,
  refuseLeg,
  spreadLeg,
} from '../leg';
import { type Mm, mm, Refusal, say } from '../length';
import type { ProjectBlocks } from './draft-types';
import type { Project } from './types';

/** The crotch length of the finished leg is brought this close to the wanted one. */
const CROTCH_REACHED = 0.05;
const MOST_ROUNDS = 6;

/** A leg, net, with all that it was made from. */
export interface FittedLeg {
  readonly body: Body;
  readonly heights: CasingHeights;
  readonly drafted: ProjectBlocks;
  readonly joined: JoinedBlocks;
  readonly choices: LegChoices;
  readonly leg: Leg;
  /** The waist opening, and what must pass it. */
  readonly opening: Mm;
  readonly needed: Mm;
}

/**
 * Blocks and leg together: where the crotch length was measured it is the finished leg's that must come out right, so
 * the blocks aim by as much past it as straightening and the leg's own inseams will take back.
 *
 * @param project checked, its defaults filled in
 * @throws Refusal naming what can't be drafted
 */
export function legFitted(project: Project): FittedLeg {
  const body = prepareBody(project.body);
  const asked: Asked = {
    project,
    body,
    heights: casingHeights(project.waist),
    needed: pullOnNeeded(body, project.cloth),
  };
  const found = legReached(asked);
  // What can be said of waist and hem is said of the leg that came out, not of one on the way to it.
  refuseLeg(found.joined, found.choices);
  return found;
}

function legReached(asked: Asked): FittedLeg {
  let aim = 0;
  let found = legAimed(asked, aim);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { crotchWanted: wanted, crotchFit } = found.drafted.blocks;
    if (wanted === undefined) return found;
    const miss = legCrotchLength(found.leg.front, found.leg.back) - wanted;
    const spent = crotchFit * miss <= -Math.abs(miss); // λ is ±1 and would have to go further
    if (spent || Math.abs(miss) <= CROTCH_REACHED) return found;
    aim -= miss;
    found = legAimed(asked, aim);
  }
  return found;
}

/** What a leg is asked for. */
interface Asked extends Pick<FittedLeg, 'body' | 'heights' | 'needed'> {
  readonly project: Project;
}

/** @param aim how much longer than wanted the blocks' crotch is drafted */
function legAimed({ project, body, heights, needed }: Asked, aim: Mm): FittedLeg {
  const { spread, straighten, raiseWaist, lowerCrotch, length, shape } = project.leg;
  const drafted = blocksOf(project, body, aim);
  const { blocks } = drafted;
  const joined = spreadLeg(joinBlocks(blocks), spread);
  const openingAt = (t: number): Mm => waistOpening(casingLines(centresOf(joined, t, raiseWaist), heights));
  const automatic = straighten === 'auto';
  const chosen = automatic ? leastStraightening(openingAt, needed).straighten : straighten;
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
  const leg = legDrawn(joined, choices);
  return { body, heights, drafted, joined, choices, leg, opening: openingAt(chosen), needed };
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
