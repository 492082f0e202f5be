import { type ClothPlan, clothPlan, clothWidths, type WidthAnswer } from '../cloth';
import type { Draft } from './draft-types';

/**
 * The lay of a draft. It is made when somebody asks for it, because a drag redraws the leg many times a second and looks
 * at the cloth only at the end; a draft never changes, so its lay is made once.
 */
export const clothOf: (draft: Draft) => ClothPlan = once(({ pieces, project }) => clothPlan(pieces, project.cloth));

/** The same pieces on the widths in which cloth is sold. */
export const clothWidthsOf: (draft: Draft) => readonly WidthAnswer[] = once(({ pieces, project }) =>
  clothWidths(pieces, project.cloth, project.units),
);

function once<Value>(make: (draft: Draft) => Value): (draft: Draft) => Value {
  const made = new WeakMap<Draft, Value>();
  return (draft) => {
    const value = made.get(draft) ?? make(draft);
    made.set(draft, value);
    return value;
  };
}
