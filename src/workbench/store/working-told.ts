import type { WorkingStep } from '../../plane';
import { allowanceStepsOf, type Draft, workingOf } from '../../project';
import { tellSteps } from './told-steps';

/** From now on it is told how a draft came about. That comes late: the first drawing needs none of it. */
export const tellDraftSteps = (): void => tellSteps('draft', stepsOfDraft);

const known = new WeakMap<Draft, readonly WorkingStep[]>();

/** The working, and after it the allowances edge by edge. */
function stepsOfDraft(draft: Draft): readonly WorkingStep[] {
  const steps = known.get(draft) ?? [...workingOf(draft), ...allowanceStepsOf(draft)];
  known.set(draft, steps);
  return steps;
}
