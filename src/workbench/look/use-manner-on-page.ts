import { useLayoutEffect } from 'react';
import { useManner } from './manner';

/** Writes theme and show mode onto the page, where the style sheets read them. */
export function useMannerOnPage(): void {
  const theme = useManner((state) => state.theme);
  const showing = useManner((state) => state.showing);
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    dataset.theme = theme;
    if (showing) dataset.show = 'on';
    else delete dataset.show;
  }, [theme, showing]);
}
