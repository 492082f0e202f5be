import { type ClothPlan, clothPlan, clothWidths, type LayAnswer, type WidthAnswer } from '../cloth';
import type { Draft } from './draft-types';
import { remembered } from './remembered';

/**
 * The lay of a draft. It is made when somebody asks for it, because a drag redraws the leg many times a second and looks
 * at the cloth only at the end; a draft never changes, so its lay is made once.
 */
export const clothOf: (draft: Draft) => ClothPlan = remembered(({ pieces, project }) =>
  clothPlan(pieces, project.cloth),
);

/** The same pieces on the widths in which cloth is sold. */
export const clothWidthsOf: (draft: Draft) => readonly WidthAnswer[] = remembered(({ pieces, project }) =>
  clothWidths(pieces, project.cloth, project.units),
);

/** The lay of the same pieces on cloth with a nap or a direction: what it would take if the cloth turned out to have one. */
export const oneWayClothOf: (draft: Draft) => LayAnswer = remembered(
  ({ pieces, project }) => clothPlan(pieces, { ...project.cloth, oneWay: true }).answer,
);
