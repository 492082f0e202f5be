import { type SheetPlan, tilePieces } from '../sheets';
import type { Draft } from './draft-types';
import { remembered } from './remembered';

/** A draft's sheets, laid as if nothing had been printed before. */
export const freshSheetsOf: (draft: Draft) => SheetPlan = remembered((draft) =>
  tilePieces(draft.printed, draft.project.paper, draft.search),
);

/**
 * The same draft on as few sheets as a longer search finds: for paper that is printed, and for the screen once nothing
 * has changed for a while.
 */
export const withFewestSheets = (draft: Draft): Draft => ({ ...draft, search: 'thorough' });
