import { Suspense } from 'react';
import { say } from '../../words';
import { late } from '../faults/late';
import { usePhotoOpen } from './opened';

const PhotoScreen = late(() => import('./PhotoScreen'), {
  what: say`The screen for a photograph`,
  place: 'dialog',
  leave: () => usePhotoOpen.setState({ open: false, file: undefined }),
});

/** The screen on which blocks are traced from a photograph, while it is open. */
export function Photo() {
  const open = usePhotoOpen((state) => state.open);
  return open ? (
    <Suspense>
      <PhotoScreen />
    </Suspense>
  ) : null;
}
