import { type ShoppingItem, shoppingList } from '../cloth';
import { clothOf } from './cloth';
import type { Draft } from './draft-types';
import { hemOf } from './hem-of';

/** Everything to buy for a draft. */
export function shoppingOf(draft: Draft): readonly ShoppingItem[] {
  const { project, notions, measures, cautions } = draft;
  const { inseamFront, crotchLengthFinished, waistOpening, hemGirthFinished } = measures;
  return shoppingList({
    plan: clothOf(draft),
    cloth: project.cloth,
    waist: project.waist,
    hem: hemOf(project),
    notions,
    // Two inseams, the crotch seam, the waist stitched above and below, two hems.
    seams: 2 * inseamFront + crotchLengthFinished + 2 * waistOpening + 2 * hemGirthFinished,
    nightwearLabel: cautions.some(({ id }) => id === 'nightwear-label'),
  });
}
