import { Suspense } from 'react';
import { say, words } from '../../words';
import { late } from '../faults/late';
import { usePrinting } from '../look/use-printing';
import { isStale, isUnmeasured } from '../store/asked';
import { useBench } from '../store/bench';
import { FinishedChecks } from './FinishedChecks';
import { FinishedMeasures } from './FinishedMeasures';

const ChalkCards = late(() => import('./ChalkCards'), { what: say`The chalk lines`, place: 'inside' });

/** What the pair will measure, and whether it is good. */
export function Finished() {
  const stale = useBench(isStale);
  // There the whole list stands already; it is not printed.
  const printing = usePrinting();
  const checked = useBench(({ station }) => station === 'check') && !printing;
  const unmeasured = useBench(isUnmeasured);
  if (unmeasured)
    return (
      <aside className="finished" aria-label={words`Finished`}>
        <section className="finished-part">
          <h2>{words`Finished`}</h2>
          <p className="field-help">{words`What the pair will measure, and whether it is good, stands here once the measurements are in.`}</p>
        </section>
      </aside>
    );
  return (
    <aside className="finished" data-stale={stale || undefined} aria-label={words`Finished`}>
      <section className="finished-part">
        <h2>{words`Finished`}</h2>
        <FinishedMeasures />
      </section>
      {!checked && (
        <section className="finished-part">
          <h2>{words`Checks`}</h2>
          <FinishedChecks />
        </section>
      )}
      <section className="finished-part">
        <h2>{words`Chalk lines`}</h2>
        <Suspense>
          <ChalkCards />
        </Suspense>
      </section>
    </aside>
  );
}
