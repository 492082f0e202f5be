import { useEffect } from 'react';
import { type Draft, withFewestSheets } from '../../project';
import { useBench } from '../store/bench';

/** After this long without a change nobody is dragging or typing, milliseconds. */
const QUIET = 250;
const searched = new WeakSet<Draft>();

/** Lays the paper anew by the longer search once nothing has changed for a moment, as the files will have it. */
export function useFewestSheets(): void {
  const draft = useBench((state) => state.draft);
  useEffect(() => {
    if (searched.has(draft)) return;
    const timer = setTimeout(() => {
      const better = withFewestSheets(draft);
      searched.add(better);
      useBench.setState((state) => (state.draft === draft ? { draft: better } : {}));
    }, QUIET);
    return () => clearTimeout(timer);
  }, [draft]);
}
