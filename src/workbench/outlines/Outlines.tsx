import { Suspense } from 'react';
import { say } from '../../words';
import { late } from '../faults/late';
import { closeSheet, useOpenedSheet } from './opened';

const OutlinesScreen = late(() => import('./OutlinesScreen'), {
  what: say`The screen for a drawing`,
  place: 'dialog',
  leave: closeSheet,
});

/** The screen on which blocks are picked from a drawing, while one is open. */
export function Outlines() {
  const opened = useOpenedSheet((state) => state.opened);
  return opened ? (
    <Suspense>
      <OutlinesScreen opened={opened} />
    </Suspense>
  ) : null;
}
