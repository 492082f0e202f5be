import { useSyncExternalStore } from 'react';

const query = () => window.matchMedia?.('print');

function listen(changed: () => void): () => void {
  const print = query();
  print?.addEventListener('change', changed);
  return () => print?.removeEventListener('change', changed);
}

/** Whether the page is being printed: then it says things that the screen says elsewhere. */
export const usePrinting = (): boolean => useSyncExternalStore(listen, () => query()?.matches ?? false);
