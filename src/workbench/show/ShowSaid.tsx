import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { words } from '../../words';

/** What is said of a step, read out as it comes. Where it is longer than its place, keys reach it and scroll it. */
export function ShowSaid({ children }: { readonly children: ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  const [longer, setLonger] = useState(false);
  useLayoutEffect(() => {
    const { current } = place;
    if (!current || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => setLonger(current.scrollHeight > current.clientHeight));
    for (const one of [current, ...current.children]) observer.observe(one);
    return () => observer.disconnect();
  }, []);
  const reached = longer && ({ role: 'region', tabIndex: 0, 'aria-label': words`The words of the step` } as const);
  return (
    <div ref={place} className="show-step" {...reached}>
      <p role="status">{children}</p>
    </div>
  );
}
