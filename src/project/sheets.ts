import { type SheetPlan, tilePieces } from '../sheets';
import type { Draft } from './draft-types';
import { remembered } from './remembered';

/** A draft's sheets. Laid when they are first asked for: the dearest part, and a drag has no use for it. */
export const sheetsOf: (draft: Draft) => SheetPlan = remembered(({ printed, project, search }) =>
  tilePieces(printed, project.paper, search),
);

/**
 * The same draft on as few sheets as a longer search finds: for paper that is printed, and for the screen once nothing
 * has changed for a while.
 */
export const withFewestSheets = (draft: Draft): Draft => ({ ...draft, search: 'thorough' });
