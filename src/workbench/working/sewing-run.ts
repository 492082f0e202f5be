import { type Draft, pictureOf, sewingOf } from '../../project';
import type { SewingStep, StepPicture } from '../../sewing';
import { useBench } from '../store/bench';
import { stepsToGo } from './left-out';
import { useSewingShown } from './sewing-shown';

/** The step that is shown; the first one where it is gone. */
export function stepShown(draft: Draft, shown: string | undefined): SewingStep {
  const steps = sewingOf(draft);
  return steps.find((step) => step.id === shown) ?? (steps[0] as SewingStep);
}

/** Its picture. */
export const pictureShown = (draft: Draft, shown: string | undefined): StepPicture =>
  pictureOf(draft, stepShown(draft, shown));

/** To the next step that is gone through, or the one before; whether there was one. */
export function moveSewing(by: 1 | -1): boolean {
  const { draft } = useBench.getState();
  const { shown, show } = useSewingShown.getState();
  const here = stepShown(draft, shown);
  const all = sewingOf(draft);
  const go = stepsToGo(all);
  const way = by > 0 ? all.slice(all.indexOf(here) + 1) : all.slice(0, Math.max(0, all.indexOf(here))).reverse();
  const next = way.find((step) => go.includes(step));
  if (next) show(next.id);
  return next !== undefined;
}
