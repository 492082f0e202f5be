import { type Draft, garmentOf } from '../../project';
import { type SewingStep, type StepPicture, sewingSteps, stepPicture } from '../../sewing';
import { useBench } from '../store/bench';
import { useSewingShown } from './sewing-shown';

interface Sewing {
  readonly steps: readonly SewingStep[];
  readonly pictures: Map<string, StepPicture>;
}

const made = new WeakMap<Draft, Sewing>();

/** A draft's order of work, made when somebody asks for it, and once. */
function sewingOf(draft: Draft): Sewing {
  const before = made.get(draft);
  if (before) return before;
  const sewing = { steps: sewingSteps(garmentOf(draft)), pictures: new Map<string, StepPicture>() };
  made.set(draft, sewing);
  return sewing;
}

export const stepsOf = (draft: Draft): readonly SewingStep[] => sewingOf(draft).steps;

/** The step that is shown; the first one where it is gone. */
export function stepShown(draft: Draft, shown: string | undefined): SewingStep {
  const steps = stepsOf(draft);
  return steps.find((step) => step.id === shown) ?? (steps[0] as SewingStep);
}

/** Its picture. */
export function pictureShown(draft: Draft, shown: string | undefined): StepPicture {
  const { pictures } = sewingOf(draft);
  const { id, scene } = stepShown(draft, shown);
  const picture = pictures.get(id) ?? stepPicture(garmentOf(draft), scene);
  pictures.set(id, picture);
  return picture;
}

/** To the next step, or the one before. */
export function moveSewing(by: 1 | -1): void {
  const { draft } = useBench.getState();
  const { shown, show } = useSewingShown.getState();
  const steps = stepsOf(draft);
  const next = steps[steps.indexOf(stepShown(draft, shown)) + by];
  if (next) show(next.id);
}
