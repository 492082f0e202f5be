import { type RefObject, useLayoutEffect } from 'react';

/** Tells how high an element is, now and whenever that changes. */
export function useHeight(element: RefObject<HTMLElement | null>, tell: (pixels: number) => void): void {
  useLayoutEffect(() => {
    const present = element.current;
    if (!present || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => tell(present.offsetHeight));
    observer.observe(present);
    return () => observer.disconnect();
  }, [element, tell]);
}
