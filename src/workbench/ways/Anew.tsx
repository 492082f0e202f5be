import { Suspense } from 'react';
import { say } from '../../words';
import { useAnewOpen } from '../faults/anew-open';
import { late } from '../faults/late';

export const AnewDialog = late(() => import('./AnewDialog'), {
  what: say`The ways to begin`,
  place: 'dialog',
  leave: () => useAnewOpen.setState({ open: false }),
});

/** The ways to begin while they are asked for: whatever became of the bar. */
export function Anew() {
  const open = useAnewOpen((state) => state.open);
  return (
    open && (
      <Suspense>
        <AnewDialog />
      </Suspense>
    )
  );
}
