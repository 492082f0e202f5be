import { blockWorking, correctionsWorking, tracedWorking } from '../block';
import { bodyWorking } from '../body';
import { edgesWorking } from '../edges';
import { centresOf, LENGTH_NAMES, legWorking, sideWorking } from '../leg';
import type { WorkingStep } from '../plane';
import { isBrought } from '../trace';
import { say } from '../words';
import type { Draft } from './draft-types';
import { remembered } from './remembered';
import { differencesOf } from './sides';

/**
 * The working of the whole draft, in the order of work: the one explanation that screen, handout and help all show. Told
 * when it is first asked for.
 */
export const workingOf = remembered((draft: Draft): readonly WorkingStep[] => {
  const { project, body, joined, legChoices, measures, legs, finished, notions, origin } = draft;
  const { length, raiseWaist } = project.leg;
  return [
    ...bodyWorking(body),
    ...blocksTold(draft),
    ...legWorking({
      joined,
      leg: origin.leg,
      choices: legChoices,
      leaning: centresOf(joined, 0, raiseWaist),
      opening: measures.waistOpening,
      needed: measures.pullOnNeeded,
      hem: measures.hemGirthFinished,
      lengthWords: typeof length === 'string' ? LENGTH_NAMES[length] : say`as chosen`,
    }),
    ...legs.flatMap(({ side, leg }) =>
      side ? sideWorking(side, differencesOf(project.sides, side), { before: origin.leg, after: leg }) : [],
    ),
    ...edgesWorking(finished, origin.edges, notions, body.waistGirth),
    ...correctionsTold(draft),
  ];
});

function correctionsTold({ origin, blocks, project: { fit } }: Draft) {
  const { uncorrected, corrections } = origin.drafted;
  return fit && corrections ? correctionsWorking(uncorrected, blocks, fit, corrections) : [];
}

function blocksTold({ blocks, proportions, body, project: { block } }: Draft): readonly WorkingStep[] {
  if (proportions === undefined || isBrought(block)) return tracedWorking(blocks);
  return blockWorking({ blocks, proportions }, body, block);
}
