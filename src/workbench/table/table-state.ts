import { create } from 'zustand';

/** What is going on at the table, beside what is drawn. */
export interface TableState {
  /** The handle that is held: while it is, the paper under it stays still. */
  readonly held: string | undefined;
  readonly hold: (handle: string | undefined) => void;
}

export const useTable = create<TableState>()((set) => ({
  held: undefined,
  hold: (held) => set({ held }),
}));
