import { type Draft, pictureOf, sewingOf } from '../../project';
import type { SewingStep, StepPicture } from '../../sewing';
import { useBench } from '../store/bench';
import { useSewingShown } from './sewing-shown';

/** The step that is shown; the first one where it is gone. */
export function stepShown(draft: Draft, shown: string | undefined): SewingStep {
  const steps = sewingOf(draft);
  return steps.find((step) => step.id === shown) ?? (steps[0] as SewingStep);
}

/** Its picture. */
export const pictureShown = (draft: Draft, shown: string | undefined): StepPicture =>
  pictureOf(draft, stepShown(draft, shown));

/** To the next step, or the one before. */
export function moveSewing(by: 1 | -1): void {
  const { draft } = useBench.getState();
  const { shown, show } = useSewingShown.getState();
  const steps = sewingOf(draft);
  const next = steps[steps.indexOf(stepShown(draft, shown)) + by];
  if (next) show(next.id);
}
