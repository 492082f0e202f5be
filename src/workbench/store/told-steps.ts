import type { WorkingStep } from '../../plane';
import type { Draft } from '../../project';
import { useBench } from './bench';

type StepsOf = (draft: Draft) => readonly WorkingStep[];

const told: { draft: StepsOf; cloth: StepsOf; paper: StepsOf } = {
  draft: () => [],
  cloth: () => [],
  paper: () => [],
};

/** The steps of a draft up to its pieces; none until what tells them has come, right after the page. */
export const draftSteps: StepsOf = (draft) => told.draft(draft);

/** The steps of the cloth's working; none until the lay is loaded, which every place does that shows them. */
export const clothSteps: StepsOf = (draft) => told.cloth(draft);

/** The steps in which the sheets are joined; none until somebody looks at them. */
export const paperSteps: StepsOf = (draft) => told.paper(draft);

/** Says how they are told, once that is there, and lets everybody look again. */
export function tellSteps(of: keyof typeof told, steps: StepsOf): void {
  if (told[of] === steps) return;
  told[of] = steps;
  useBench.setState({});
}
