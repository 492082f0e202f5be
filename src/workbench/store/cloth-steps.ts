import type { WorkingStep } from '../../plane';
import type { Draft } from '../../project';

type StepsOf = (draft: Draft) => readonly WorkingStep[];

let known: StepsOf = () => [];

/** The steps of the cloth's working; none until the lay is loaded, which every place does that shows them. */
export const clothSteps: StepsOf = (draft) => known(draft);

/** Tells how they are made, once the lay is there. */
export function knowClothSteps(steps: StepsOf): void {
  known = steps;
}
