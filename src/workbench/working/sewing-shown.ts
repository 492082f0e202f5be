import { create } from 'zustand';

interface SewingShown {
  /** The step that is shown, by its id: it stays where the choices change the steps before it. */
  readonly shown: string | undefined;
  readonly show: (id: string) => void;
}

/** Which step of the sewing lies on the table: known to the table before the sewing itself is loaded. */
export const useSewingShown = create<SewingShown>()((set) => ({
  shown: undefined,
  show: (shown) => set({ shown }),
}));
