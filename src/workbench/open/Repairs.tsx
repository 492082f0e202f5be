import { Suspense } from 'react';
import { say } from '../../words';
import { late } from '../faults/late';
import { useOffered } from './repairs';

const RepairsDialog = late(() => import('./RepairsDialog'), {
  what: say`The list of repairs`,
  place: 'dialog',
  leave: () => useOffered.setState({ offered: undefined }),
});

/** The list of repairs, while a broken file waits for an answer. */
export function Repairs() {
  const offered = useOffered((state) => state.offered);
  return offered ? (
    <Suspense>
      <RepairsDialog offered={offered} />
    </Suspense>
  ) : null;
}
