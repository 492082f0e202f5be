import { type ShoppingItem, shoppingList } from '../cloth';
import type { Notions } from '../edges';
import { checksOf } from './checks';
import { clothOf } from './cloth';
import type { Draft } from './draft-types';
import { hemOf } from './hem-of';
import { ofBoth } from './sides';

/** What is cut to length beside the cloth, without cords that a check says wrong of: nobody should buy those. */
export function notionsToBuy(draft: Draft): Notions {
  const { notions } = draft;
  const wrong = (id: string) => checksOf(draft).some((check) => check.id === id && check.verdict === 'wrong');
  return {
    ...notions,
    cordLength: wrong('waist-cord') ? undefined : notions.cordLength,
    hemCordLength: wrong('hem-cord') ? undefined : notions.hemCordLength,
  };
}

/** Everything to buy for a draft. */
export function shoppingOf(draft: Draft): readonly ShoppingItem[] {
  const { project, measures, cautions, legs } = draft;
  const { crotchLengthFinished, waistOpening } = measures;
  const inseams = 2 * ofBoth(legs, (leg) => leg.measures.inseamFront);
  const hems = 2 * ofBoth(legs, (leg) => leg.measures.hemGirthFinished);
  return shoppingList({
    plan: clothOf(draft),
    cloth: project.cloth,
    waist: project.waist,
    hem: hemOf(project),
    notions: notionsToBuy(draft),
    // Two inseams, the crotch seam, the waist stitched above and below, two hems.
    seams: inseams + crotchLengthFinished + 2 * waistOpening + hems,
    overlocker: project.sewing.machine === 'serger',
    nightwearLabel: cautions.some(({ id }) => id === 'nightwear-label'),
  });
}
