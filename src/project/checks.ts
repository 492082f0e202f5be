import { NO_CORRECTIONS } from '../block';
import { type Check, checksOfLegs } from '../check';
import { isBrought, pairByNumbers } from '../trace';
import type { Draft } from './draft-types';
import { withinLimits } from './remedy';
import { remembered } from './remembered';

/** What is checked on a draft. Run when it is first asked for: a drawing follows the hand before it is judged. */
export const checksOf: (draft: Draft) => readonly Check[] = remembered(
  ({ project, legs, joined, legChoices, measures, notions, origin }) =>
    checksOfLegs(
      legs.map(({ side, body, leg, finished }) => ({
        side,
        body,
        cloth: project.cloth,
        ...origin.drafted,
        traced: isBrought(project.block),
        numbers: project.block.source === 'numbers' ? pairByNumbers(project.block) : undefined,
        corrections: project.fit ?? NO_CORRECTIONS,
        joined,
        leg,
        choices: legChoices,
        finished,
        waist: project.waist,
        hem: origin.edges.hem,
        opening: measures.waistOpening,
        hip: measures.hipGirthFinished,
        elasticLength: notions.elasticLength ?? notions.bandLength,
        cordLength: notions.cordLength,
        ageYears: project.body.ageYears,
      })),
    ).map(withinLimits),
);
