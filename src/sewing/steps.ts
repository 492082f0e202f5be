import { say } from '../words';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import type { EdgeWork, SewingStep } from './step';
import { flatSteps } from './steps-flat';
import { flatHemSteps, hemSteps } from './steps-hem';
import { preparingSteps } from './steps-prepare';
import { seamSteps } from './steps-seams';
import { tipSteps } from './steps-tip';
import { waistSteps } from './steps-waist';
import { timeOf } from './time';

/**
 * The order of work for exactly these choices: what is easier flat first, then the two main seams, the waist, the hems,
 * and the last press. Every edge of every piece is sewn once and finished once.
 *
 * @param garment the finished pattern and what was chosen
 * @source practice, where a step does not name another one
 */
export const sewingSteps = (garment: Garment): readonly SewingStep[] =>
  [
    ...preparingSteps(garment),
    ...tipSteps(garment),
    ...flatSteps(garment),
    ...flatHemSteps(garment),
    ...seamSteps(garment),
    ...waistSteps(garment),
    ...hemSteps(garment),
    lastStep(garment),
  ].map((step) => ofBothSides(step, garment));

/** Where left and right differ, what is done to a piece is done to the left one and to the right one. */
function ofBothSides(step: SewingStep, { sides }: Garment): SewingStep {
  if (!sides) return step;
  const each = <How extends string>(work: EdgeWork<How>): readonly EdgeWork<How>[] =>
    sides.pieces.filter(({ kind }) => kind === work.piece).map(({ side }) => ({ ...work, side }));
  return { ...step, sews: step.sews.flatMap(each), finishes: step.finishes.flatMap(each) };
}

function lastStep(g: Garment): SewingStep {
  return makeStep({
    id: 'last',
    part: 'finish',
    title: say`Check it over and press it`,
    tasks: [
      say`Trim all thread ends, turn the trousers right side out, and count the pins.`,
      say`Press both legs, the inseams first, then waist and hems.`,
      ...(g.notions.elasticLength !== undefined || g.notions.hemElasticLength !== undefined
        ? [say`Over elastic let the iron hover and steam only: heat and weight harm it.`]
        : []),
      say`Write the date and the measurements on the paper pattern, and what you would change.`,
    ],
    check: g.sides
      ? say`Pull every seam once, gently: none opens. The left leg is on the wearer’s left, and the centre seams stand upright.`
      : say`Pull every seam once, gently: none opens. Both legs are equally long, and the centre seams stand upright.`,
    care: say`A forgotten pin ends up in somebody’s skin: count them.`,
    time: timeOf(15),
    scene: { view: 'finished' },
  });
}
