import { useState } from 'react';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { TAKEABLE, takeFile } from './take';

/** The pattern's files, to take away. */
export function Take() {
  const stale = useBench(isStale);
  const [busy, setBusy] = useState<string>();
  return (
    <div className="take">
      {TAKEABLE.map(({ kind, name, what }) => (
        <button
          key={kind}
          type="button"
          className={kind === 'pdf' ? 'button button-main' : 'button'}
          disabled={stale || busy !== undefined}
          onClick={() => {
            setBusy(kind);
            void takeFile(kind).finally(() => setBusy(undefined));
          }}
        >
          <span className="take-name">{busy === kind ? 'Writing…' : name}</span>
          <span className="take-what">{what}</span>
        </button>
      ))}
      {stale && (
        <p className="field-help">Put right what is asked for first: a pattern is only taken from a good draft.</p>
      )}
    </div>
  );
}
