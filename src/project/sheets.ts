import { type Reprint, reprint, type SheetPlan } from '../sheets';
import type { Draft } from './draft-types';
import { freshSheetsOf } from './fresh-sheets';
import { remembered } from './remembered';

/**
 * A draft on the sheets of its last print; undefined where nothing was printed, or where going on with them saves no
 * paper: then it is laid anew.
 */
export const reprintOf: (draft: Draft) => Reprint | undefined = remembered(({ project, printed }) => {
  const again = project.lastPrint && reprint(printed, project.paper, project.lastPrint);
  return again && again.anew.length < again.plan.lowerBound ? again : undefined;
});

/** A draft's sheets. Laid when they are first asked for: the dearest part, and a drag has no use for it. */
export const sheetsOf: (draft: Draft) => SheetPlan = remembered(
  (draft) => reprintOf(draft)?.plan ?? freshSheetsOf(draft),
);
