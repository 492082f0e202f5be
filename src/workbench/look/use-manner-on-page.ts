import { useEffect, useLayoutEffect } from 'react';
import { useManner } from './manner';
import { keepSeenHeight } from './seen-height';

/** Writes theme, show mode and how much is seen of the page onto it, where the style sheets read them. */
export function useMannerOnPage(): void {
  const theme = useManner((state) => state.theme);
  const showing = useManner((state) => state.showing);
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    dataset.theme = theme;
    if (showing) dataset.show = 'on';
    else delete dataset.show;
  }, [theme, showing]);
  useEffect(keepSeenHeight, []);
}
