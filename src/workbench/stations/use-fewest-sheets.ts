import { useEffect } from 'react';
import { sheetsOf, withFewestSheets } from '../../project';
import { useBench } from '../store/bench';

/** After this long without a change nobody is dragging or typing, milliseconds. */
const QUIET = 250;

/** Lays the paper anew by the longer search once nothing has changed for a moment, as the files will have it. */
export function useFewestSheets(): void {
  const draft = useBench((state) => state.draft);
  useEffect(() => {
    if (draft.search === 'thorough') return;
    const timer = setTimeout(() => {
      const better = withFewestSheets(draft);
      sheetsOf(better);
      useBench.setState((state) => (state.draft === draft ? { draft: better } : {}));
    }, QUIET);
    return () => clearTimeout(timer);
  }, [draft]);
}
