import { useEffect, useState } from 'react';
import { keptWords, useKept } from '../shelf/kept';

/** Under the project's name: whether and when it was kept on this computer. Not read out: it would never be quiet. */
export function KeptLine() {
  const state = useKept((kept) => kept.state);
  const at = useKept((kept) => kept.at);
  const now = useNow(at);
  return (
    <span className="bar-kept" data-state={state}>
      {keptWords({ state, at }, now)}
    </span>
  );
}

/** The time, every second at first and every ten seconds later: a clock that ticks beside the work is a nuisance. */
function useNow(at: number | undefined): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    setNow(Date.now());
    if (at === undefined) return;
    const timer = setInterval(() => {
      const age = Date.now() - at;
      if (age < 10_000 || Math.floor(age / 1000) % 10 === 0) setNow(Date.now());
    }, 1000);
    return () => clearInterval(timer);
  }, [at]);
  return Math.max(now, at ?? 0);
}
