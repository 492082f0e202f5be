import { create } from 'zustand';

/** What is going on at the table, beside what is drawn. */
export interface TableState {
  /** The handle that is held: while it is, the paper under it stays still. */
  readonly held: string | undefined;
  /** How far the join is shown: 0 apart, 1 joined, 2 spread, 3 straightened, 4 the leg; undefined while it is not. */
  readonly join: number | undefined;
  readonly joinPlaying: boolean;
  /** How much of the table its player takes, pixels: more where its sentence needs more lines. */
  readonly playerHeight: number;
  /** How much of it the tools take: two rows where they don't fit in one. */
  readonly toolsHeight: number;
  readonly hold: (handle: string | undefined) => void;
  readonly showJoin: (join: number | undefined) => void;
  readonly playJoin: (playing: boolean) => void;
}

/** The tools in one row, pixels. */
export const ONE_ROW = 34;

/** Where the join ends: the finished leg. */
export const JOIN_END = 4;

export const useTable = create<TableState>()((set, get) => ({
  held: undefined,
  join: undefined,
  joinPlaying: false,
  playerHeight: 88,
  toolsHeight: ONE_ROW,
  hold: (held) => set({ held }),
  showJoin: (join) => set({ join, joinPlaying: false }),
  playJoin(joinPlaying) {
    const { join } = get();
    set({ joinPlaying, join: joinPlaying && (join === undefined || join >= JOIN_END) ? 0 : join });
  },
}));
