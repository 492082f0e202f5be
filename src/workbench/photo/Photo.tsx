import { lazy, Suspense } from 'react';
import { usePhotoOpen } from './opened';

const PhotoScreen = lazy(() => import('./PhotoScreen'));

/** The screen on which blocks are traced from a photograph, while it is open. */
export function Photo() {
  const open = usePhotoOpen((state) => state.open);
  return open ? (
    <Suspense>
      <PhotoScreen />
    </Suspense>
  ) : null;
}
