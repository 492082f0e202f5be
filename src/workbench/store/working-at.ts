import type { WorkingStep } from '../../plane';
import { type Draft, STATIONS } from '../../project';
import { clothSteps, draftSteps, paperSteps } from './told-steps';

/** The steps that are found late, at their stations: the cloth's with its lay, the paper's with its sheets. */
const LATE: Readonly<Partial<Record<WorkingStep['station'], (draft: Draft) => readonly WorkingStep[]>>> = {
  cloth: clothSteps,
  paper: paperSteps,
};

/** The steps of a station's working, in order. */
export const workingAt = (draft: Draft, station: WorkingStep['station']): readonly WorkingStep[] =>
  LATE[station]?.(draft) ?? draftSteps(draft).filter((step) => step.station === station);

/** All steps in the order of the work, station by station. */
export const stepsInOrder = (draft: Draft): readonly WorkingStep[] =>
  STATIONS.flatMap((station) => workingAt(draft, station));

/** A step by its id, which begins with its station's name. */
export const stepOf = (draft: Draft, id: string): WorkingStep | undefined =>
  (LATE[id.slice(0, id.indexOf('.')) as WorkingStep['station']]?.(draft) ?? draftSteps(draft)).find(
    (step) => step.id === id,
  );
