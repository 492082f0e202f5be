import { blockWorking, correctionsWorking, tracedWorking } from '../block';
import { type Body, bodyWorking } from '../body';
import { type EdgeChoices, edgesWorking, type FinishedLeg, type Notions } from '../edges';
import { centresOf, type JoinedBlocks, LENGTH_NAMES, type Leg, type LegChoices, legWorking, sideWorking } from '../leg';
import type { WorkingStep } from '../plane';
import type { Measures, ProjectBlocks } from './draft-types';
import { type CutLeg, differencesOf } from './sides';
import type { Project } from './types';

interface Story {
  readonly project: Project;
  readonly body: Body;
  readonly drafted: ProjectBlocks;
  readonly joined: JoinedBlocks;
  /** The leg that fits both sides. */
  readonly leg: Leg;
  readonly legs: readonly CutLeg[];
  readonly legChoices: LegChoices;
  readonly finished: FinishedLeg;
  readonly choices: EdgeChoices;
  readonly notions: Notions;
  readonly measures: Measures;
}

/** The working of the whole draft, in the order of work: the one explanation that screen, handout and help all show. */
export function workingOf(s: Story): readonly WorkingStep[] {
  const { length, raiseWaist } = s.project.leg;
  return [
    ...bodyWorking(s.body),
    ...blocksTold(s),
    ...legWorking({
      joined: s.joined,
      leg: s.leg,
      choices: s.legChoices,
      leaning: centresOf(s.joined, 0, raiseWaist),
      opening: s.measures.waistOpening,
      needed: s.measures.pullOnNeeded,
      hem: s.measures.hemGirthFinished,
      lengthWords: typeof length === 'string' ? LENGTH_NAMES[length] : 'as chosen',
    }),
    ...s.legs.flatMap(({ side, leg }) =>
      side ? sideWorking(side, differencesOf(s.project.sides, side), { before: s.leg, after: leg }) : [],
    ),
    ...edgesWorking(s.finished, s.choices, s.notions, s.body.waistGirth),
    ...correctionsTold(s),
  ];
}

function correctionsTold({ drafted: { uncorrected, blocks, corrections }, project: { fit } }: Story) {
  return fit && corrections ? correctionsWorking(uncorrected, blocks, fit, corrections) : [];
}

function blocksTold({ drafted: { blocks, proportions }, body, project: { block } }: Story): readonly WorkingStep[] {
  if (proportions === undefined || block.source === 'traced') return tracedWorking(blocks);
  return blockWorking({ blocks, proportions }, body, block);
}
