import { createStore } from 'zustand';
import { pageStore } from '../store/page-store';

/** How the screen looks and behaves for whoever sits before it: nothing of this belongs to a project. */
export interface Manner {
  readonly theme: Theme;
  /** Shown to a class: large type, thick lines, panels away, keys only. */
  readonly showing: boolean;
  /** The hints that were put away, for ever. */
  readonly hintsGone: readonly string[];
  /** Whether the open station's inputs are folded away, where the path is only its stops. */
  readonly inputsAway: boolean;
  readonly wear: (theme: Theme) => void;
  readonly show: (showing: boolean) => void;
  readonly putAway: (hints: readonly string[]) => void;
  readonly foldInputs: (away: boolean) => void;
}

export type Theme = 'daylight' | 'chalkboard';

const THEME = 'legwork.theme';
const HINTS = 'legwork.hints';

/** Storage may be forbidden or full: then the choice lasts as long as the page. */
export function kept(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

export function keep(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Nothing to be done, and nothing lost but the choice.
  }
}

const createManner = () =>
  createStore<Manner>()((set) => ({
    theme: kept(THEME) === 'chalkboard' ? 'chalkboard' : 'daylight',
    showing: false,
    hintsGone: (kept(HINTS) ?? '').split(' ').filter((hint) => hint !== ''),
    inputsAway: false,
    wear(theme) {
      keep(THEME, theme);
      set({ theme });
    },
    show: (showing) => set({ showing }),
    putAway: (hints) =>
      set((state) => {
        const hintsGone = [...new Set([...state.hintsGone, ...hints])];
        keep(HINTS, hintsGone.join(' '));
        return { hintsGone };
      }),
    foldInputs: (inputsAway) => set({ inputsAway }),
  }));

export const useManner = pageStore(createManner);
