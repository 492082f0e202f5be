import { lazy, Suspense } from 'react';
import { useOffered } from './repairs';

const RepairsDialog = lazy(() => import('./RepairsDialog'));

/** The list of repairs, while a broken file waits for an answer. */
export function Repairs() {
  const offered = useOffered((state) => state.offered);
  return offered ? (
    <Suspense>
      <RepairsDialog offered={offered} />
    </Suspense>
  ) : null;
}
