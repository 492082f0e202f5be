import { create } from 'zustand';
import { useManner } from '../look/manner';

/** Steps that a class is not shown, chosen before: they are left out until they are chosen again. */
interface LeftOut {
  readonly ids: ReadonlySet<string>;
  /** Shows some steps, or leaves them out. */
  readonly leave: (ids: readonly string[], out: boolean) => void;
}

const KEY = 'legwork.left-out';

function kept(): ReadonlySet<string> {
  try {
    const ids: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return new Set(Array.isArray(ids) ? ids.map(String) : []);
  } catch {
    return new Set();
  }
}

export const useLeftOut = create<LeftOut>()((set, get) => ({
  ids: kept(),
  leave(some, out) {
    const ids = new Set(get().ids);
    for (const id of some) {
      if (out) ids.add(id);
      else ids.delete(id);
    }
    set({ ids });
    try {
      localStorage.setItem(KEY, JSON.stringify([...ids]));
    } catch {
      // Storage is full or forbidden: the choice lasts as long as the page.
    }
  },
}));

/** The steps that are gone through: all of them at work, and before a class those that were not left out. */
export const stepsToGo = <Step extends { readonly id: string }>(steps: readonly Step[]): readonly Step[] =>
  useManner.getState().showing ? steps.filter(({ id }) => !useLeftOut.getState().ids.has(id)) : steps;
