import { say } from '../../words';
import { tellFaultOnce } from '../save/faults';
import { useBench } from '../store/bench';
import { openNews } from './holding';
import { useKept } from './kept';
import { notesIn } from './notes';
import type { Shelf } from './shelf';
import type { Surroundings } from './surroundings';

/** Notes that are gone with the tab, and notes that stay on this computer. */
const ofTab = notesIn(() => sessionStorage);
const onComputer = notesIn(() => localStorage);
/** In an embedded page even asking for them may be refused. */
function pageLocks(): LockManager | undefined {
  try {
    return (navigator as { locks?: LockManager }).locks;
  } catch {
    return undefined;
  }
}

/** What the keeper of this page works with. */
export const surroundingsOfPage = (shelf: Shelf): Surroundings => ({
  shelf,
  bench: useBench,
  kept: useKept,
  locks: pageLocks(),
  openNews,
  ofTab,
  onComputer,
  date: Date.now,
  clock: () => performance.now(),
  after(milliseconds, act) {
    const timer = setTimeout(act, milliseconds);
    return () => clearTimeout(timer);
  },
  onLeave(act) {
    const ending = new AbortController();
    const { signal } = ending;
    const onHide = () => document.visibilityState === 'hidden' && act();
    document.addEventListener('visibilitychange', onHide, { signal });
    window.addEventListener('pagehide', act, { signal });
    return () => ending.abort();
  },
  tellFault: (fault) =>
    tellFaultOnce(say`keeping your work`, fault, say`Save the project as a file now, then load the page again.`),
});
