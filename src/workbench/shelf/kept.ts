import { createStore } from 'zustand';
import { own, timeAgo, words } from '../../words';
import { pageStore } from '../store/page-store';
import type { Trouble } from './trouble';

/** How it stands with keeping the project on this computer. */
export interface Kept {
  readonly state: /** Nothing of one's own yet. */
    | 'example'
    /** Changed, and about to be kept. */
    | 'waiting'
    | 'kept'
    /** Another tab holds this project; nothing here is written over it. */
    | 'elsewhere'
    /** Nothing is kept, and why; what was kept before stays. */
    | Trouble;
  /** When it was last kept, milliseconds since 1970. */
  readonly at: number | undefined;
  /** Whether everything that is needed without a network is on this computer. */
  readonly offline: boolean;
  /** Counts what happened to the shelf, here or in another tab, so that lists are read again. */
  readonly changes: number;
}

/** How it stands at the start. */
export const createKept = () =>
  createStore<Kept>()(() => ({ state: 'example', at: undefined, offline: false, changes: 0 }));

/** How it stands with keeping on this page. */
export const useKept = pageStore(createKept);

/** The state of keeping in a few words, for the bar. */
export function keptWords({ state, at }: Pick<Kept, 'state' | 'at'>, now: number): string {
  if (state === 'example') return words`an example: change it and it is kept`;
  if (state === 'elsewhere') return words`open in another tab`;
  if (state === 'full') return words`not kept: no room on this computer`;
  if (state === 'off' || state === 'fault') return words`not kept: save it as a file`;
  if (at === undefined) return words`about to be kept`;
  return words`kept on this computer, ${own(ago(now - at))}`;
}

/** How long ago, in the largest unit that says enough. */
export function ago(milliseconds: number): string {
  const seconds = Math.max(0, Math.floor(milliseconds / 1000));
  if (seconds < 1) return words`just now`;
  // Longer than there have been such pages: whoever kept it didn't say when.
  if (seconds > 15_000 * 86_400) return words`at some time`;
  return timeAgo(seconds < 10 || seconds >= 60 ? seconds : Math.floor(seconds / 10) * 10);
}
