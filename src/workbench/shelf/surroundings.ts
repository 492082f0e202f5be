import type { StoreApi } from 'zustand';
import type { Bench } from '../store/state';
import type { OpenNews } from './holding';
import type { Kept } from './kept';
import type { Notes } from './notes';
import type { Shelf } from './shelf';

/** All that keeping has to do with: in the page what the browser has, in a test a tab of its own. */
export interface Surroundings {
  readonly shelf: Shelf;
  readonly bench: StoreApi<Bench>;
  readonly kept: StoreApi<Kept>;
  /** Undefined where the browser has none: then the shelf's revisions alone keep two tabs apart. */
  readonly locks: LockManager | undefined;
  readonly openNews: OpenNews;
  /** Notes that are gone with the tab. */
  readonly ofTab: Notes;
  /** Notes that stay on this computer. */
  readonly onComputer: Notes;
  /** Milliseconds since 1970, which may jump when somebody sets the clock. */
  readonly date: () => number;
  /** Milliseconds that only ever go on. */
  readonly clock: () => number;
  /** Does something later; the function gives it up. */
  readonly after: (milliseconds: number, act: () => void) => () => void;
  /** Is told when the page may be gone the next moment; the function puts an end to it. */
  readonly onLeave: (act: () => void) => () => void;
  /** Says a fault of the program. */
  readonly tellFault: (fault: unknown) => void;
}
