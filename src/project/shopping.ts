import { type ShoppingItem, shoppingList } from '../cloth';
import type { Notions } from '../edges';
import { clothOf } from './cloth';
import type { Draft } from './draft-types';
import { hemOf } from './hem-of';

/** What is cut to length beside the cloth, without cords that a check says wrong of: nobody should buy those. */
export function notionsToBuy({ checks, notions }: Draft): Notions {
  const wrong = (id: string) => checks.some((check) => check.id === id && check.verdict === 'wrong');
  return {
    ...notions,
    cordLength: wrong('waist-cord') ? undefined : notions.cordLength,
    hemCordLength: wrong('hem-cord') ? undefined : notions.hemCordLength,
  };
}

/** Everything to buy for a draft. */
export function shoppingOf(draft: Draft): readonly ShoppingItem[] {
  const { project, measures, cautions } = draft;
  const { inseamFront, crotchLengthFinished, waistOpening, hemGirthFinished } = measures;
  return shoppingList({
    plan: clothOf(draft),
    cloth: project.cloth,
    waist: project.waist,
    hem: hemOf(project),
    notions: notionsToBuy(draft),
    // Two inseams, the crotch seam, the waist stitched above and below, two hems.
    seams: 2 * inseamFront + crotchLengthFinished + 2 * waistOpening + 2 * hemGirthFinished,
    nightwearLabel: cautions.some(({ id }) => id === 'nightwear-label'),
  });
}
