import { type Blocks, blocksCorrected, correctedBy, correctionMoves } from '../block';
import { type Body, prepareBody } from '../body';
import { pullOnNeeded } from '../check';
import { type CasingHeights, casingHeights, casingLines, type HemChoices, hemPlan, waistOpening } from '../edges';
import {
  centresOf,
  finishedInseam,
  fittedBlocks,
  type JoinedBlocks,
  joinBlocks,
  joinedOfSide,
  type Leg,
  type LegChoices,
  leastStraightening,
  legCrotchLength,
  legDrawn,
  referenceLeg,
  refuseLeg,
  spreadLeg,
  tiltRoom,
} from '../leg';
import type { Mm } from '../length';
import { blocksBrought, isBrought } from '../trace';
import { mm, Refusal, say } from '../words';
import type { ProjectBlocks } from './draft-types';
import { hemOf } from './hem-of';
import { differencesOf, SIDES } from './sides';
import { toldToBody } from './told-to-body';
import type { Project } from './types';

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
 * Blocks and leg: the fit is made on the reference leg, then corrected as it was worn, and nothing that is chosen about
 * the leg goes back into it.
 *
 * @param project checked, its defaults filled in
 * @throws Refusal naming what can't be drafted
 */
export function legFitted(project: Project): FittedLeg {
  const body = prepareBody(project.body, toldToBody(project));
  const heights = casingHeights(project.waist);
  const needed = pullOnNeeded(body, project.cloth);
  const { spread, straighten, raiseWaist, lowerCrotch, length, shape } = project.leg;
  const drafted = blocksOf(project, body);
  const { blocks } = drafted;
  const { kneesOut, longer } = drafted.corrections ? correctedBy(drafted.corrections) : UNCORRECTED;
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
    inseam: legInseam(finishedInseam(length, body, blocks.riseEase, lowerCrotch - longer), hemOf(project)),
    ankleInseam: finishedInseam('ankle', body, blocks.riseEase),
    shape,
    hemBody: body,
    kneesOut,
  };
  refuseLeg(joined, choices, sidesLying(joined, project.sides));
  const leg = legDrawn(joined, choices);
  return {
    body,
    heights,
    drafted: { ...drafted, blocks: { ...blocks, crotchWanted: wantedBy(blocks, joined, choices, leg) } },
    joined,
    choices,
    leg,
    opening: openingAt(chosen),
    needed,
  };
}

/** The blocks as they lie for a left and a right leg that differ; none where one pattern does for both. */
const sidesLying = (joined: JoinedBlocks, sides: Project['sides']): readonly JoinedBlocks[] =>
  sides ? SIDES.map((side) => joinedOfSide(joined, differencesOf(sides, side))) : [];

const UNCORRECTED = { kneesOut: 0, longer: 0 };

/** What is raised or lowered on purpose moves the wanted crotch length as much. */
function wantedBy({ crotchWanted: wanted }: Blocks, joined: JoinedBlocks, choices: LegChoices, leg: Leg) {
  const { raiseWaist, lowerCrotch } = choices;
  if (wanted === undefined || (raiseWaist === 0 && lowerCrotch === 0)) return wanted;
  const asItWas = legDrawn(joined, { ...choices, raiseWaist: 0, lowerCrotch: 0 });
  return wanted + crotchOf(leg) - crotchOf(asItWas);
}

const crotchOf = ({ front, back }: Leg): Mm => legCrotchLength(front, back);

/** The leg's own inseam: bands and cuffs count in the finished length. */
function legInseam(finished: Mm, hem: HemChoices): Mm {
  const inseam = finished - hemPlan(hem).added;
  if (inseam >= SHORTEST_LEG) return inseam;
  const phrase = say`leaves ${mm(inseam)} of inseam to the leg; at least ${mm(SHORTEST_LEG)} must stay, so a lower band or a longer leg would do.`;
  throw new Refusal([{ field: 'hem.bandHeight', value: hem.bandHeight, phrase }]);
}

const SHORTEST_LEG = 25;

/** The project's blocks, corrected after wearing. A correction changes the crotch length on purpose, so it moves what is wanted. */
function blocksOf(project: Project, body: Body): ProjectBlocks {
  const { blocks: uncorrected, proportions } = uncorrectedBlocks(project, body);
  if (!project.fit) return { blocks: uncorrected, proportions, uncorrected, corrections: undefined };
  refuseHanging(uncorrected, body);
  const before = referenceLeg(uncorrected, body);
  const corrections = correctionMoves(project.fit, tiltRoom(before));
  const blocks = blocksCorrected(uncorrected, correctedBy(corrections));
  const wanted = blocks.crotchWanted;
  const crotchWanted = wanted && wanted + crotchOf(referenceLeg(blocks, body)) - crotchOf(before);
  return { blocks: { ...blocks, crotchWanted }, proportions, uncorrected, corrections };
}

/** Brought blocks may hang so low under a short leg that no leg of theirs is left to try a correction on. */
function refuseHanging({ riseEase }: Blocks, body: Body): void {
  if (finishedInseam('ankle', body, riseEase) >= SHORTEST_LEG) return;
  const phrase = say`these blocks hang ${mm(riseEase)} below the body’s crotch, and the inside leg is ${mm(body.insideLeg)}: that leaves no leg to correct. Measure rise and inside leg again, or bring the blocks of this body.`;
  throw new Refusal([{ field: 'body.bodyRise', value: body.bodyRise, phrase }]);
}

function uncorrectedBlocks({ block }: Project, body: Body): Omit<ProjectBlocks, 'uncorrected' | 'corrections'> {
  if (isBrought(block)) return { blocks: blocksBrought(block, body.bodyRise), proportions: undefined };
  return fittedBlocks(body, block);
}
