import type { WorkingStep } from '../../plane';
import { type Draft, STATIONS } from '../../project';
import { clothSteps, draftSteps } from './told-steps';

/** The steps of a station's working, in order. The cloth's are made with its lay, when somebody looks at it. */
export const workingAt = (draft: Draft, station: WorkingStep['station']): readonly WorkingStep[] =>
  station === 'cloth' ? clothSteps(draft) : draftSteps(draft).filter((step) => step.station === station);

/** All steps in the order of the work, station by station. */
export const stepsInOrder = (draft: Draft): readonly WorkingStep[] =>
  STATIONS.flatMap((station) => workingAt(draft, station));

/** A step by its id, which begins with its station's name. */
export const stepOf = (draft: Draft, id: string): WorkingStep | undefined =>
  (id.startsWith('cloth.') ? clothSteps(draft) : draftSteps(draft)).find((step) => step.id === id);
