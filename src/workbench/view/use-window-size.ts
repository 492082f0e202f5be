import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './view';

/** The size of an element in pixels, kept up to date. */
export function useWindowSize(element: RefObject<Element | null>): Size {
  const [size, setSize] = useState<Size>({ width: 800, height: 600 });
  useLayoutEffect(() => {
    const target = element.current;
    if (!target || typeof ResizeObserver === 'undefined') return;
    const measure = () => {
      const { width, height } = target.getBoundingClientRect();
      setSize((old) => (old.width === width && old.height === height ? old : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
