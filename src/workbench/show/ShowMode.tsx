import { Suspense, useEffect } from 'react';
import { STATION_NAMES } from '../../project';
import { isSaid, number, printPhrase, said, say, words } from '../../words';
import { late } from '../faults/late';
import { useBench } from '../store/bench';
import { stepsInOrder } from '../store/working-at';
import { useTable } from '../table/table-state';
import { useLeftOut } from '../working/left-out';
import { usePlaying } from '../working/RunButtons';
import { useRun } from '../working/run';
import { ShowSaid } from './ShowSaid';
import { ShowDifferences, ShowVerdicts } from './ShowSight';
import { choose, darkWords, leave, move, turnBlank, turnJoin, turnPlaying } from './show-moves';
import { useShow } from './show-state';
import { useShowKeys } from './use-show-keys';

const ShowSewing = late(() => import('./ShowSewing'), { what: say`The step of the sewing`, place: 'bit' });
const ShowSteps = late(() => import('./ShowSteps'), {
  what: say`The list of steps`,
  place: 'dialog',
  leave: () => useShow.setState({ choosing: false }),
});

/** For a class: the drawing, one sentence in large type, and what leads through it, by keys, a clicker or touch. */
export default function ShowMode() {
  const station = useBench((state) => state.station);
  const units = useBench((state) => state.project.units);
  const draft = useBench((state) => state.draft);
  const lit = useBench((state) => state.step);
  const joining = useTable((state) => state.join !== undefined) && station === 'leg';
  const leftOut = useLeftOut((state) => state.ids);
  const { blank, choosing } = useShow();
  const steps = stepsInOrder(draft).filter(({ id }) => !leftOut.has(id) || id === lit);
  const here = steps.findIndex((step) => step.id === lit);
  const step = steps[here];
  usePlaying();
  useShowKeys();
  return (
    <section className="show" aria-label={words`Show mode`}>
      <div className="show-line">
        <h1 className="show-station">
          {said(STATION_NAMES[station])}
          {step && ` · ${words`${number(here + 1, 0)} of ${number(steps.length, 0)}`}`}
        </h1>
        <ShowVerdicts />
        <ShowButtons />
      </div>
      <ShowSaid>
        {station === 'sew' && (
          <Suspense>
            <ShowSewing />
          </Suspense>
        )}
        {step && !joining && <span className="show-sentence">{printPhrase(step.sentence, units)}</span>}
        {step && !joining && isSaid(step.formula) && (
          <span className="show-formula">{printPhrase(step.formula, units)}</span>
        )}
      </ShowSaid>
      <ShowDifferences />
      {choosing && (
        <Suspense>
          <ShowSteps />
        </Suspense>
      )}
      {blank && <Dark />}
    </section>
  );
}

/** What the keys do most, for a finger or a mouse. */
function ShowButtons() {
  const station = useBench((state) => state.station);
  const playing = useRun((state) => state.playing);
  return (
    <span className="show-buttons">
      <button type="button" onClick={() => move(-1)}>
        {words`Back`}
      </button>
      <button type="button" onClick={() => move(1)}>
        {words`Next`}
      </button>
      <button type="button" aria-pressed={playing} onClick={turnPlaying}>
        {playing ? words`Pause` : words`Play`}
      </button>
      {station === 'leg' && (
        <button type="button" onClick={turnJoin}>
          {words`Join`}
        </button>
      )}
      <button type="button" onClick={turnBlank}>
        {words`Dark`}
      </button>
      <button type="button" onClick={choose}>
        {words`Steps`}
      </button>
      <button type="button" onClick={leave}>
        {words`Leave`}
      </button>
    </span>
  );
}

/** Nothing to look at but the teacher, until a key or a press. */
function Dark() {
  useEffect(() => document.querySelector<HTMLElement>('.show-dark')?.focus(), []);
  return <button type="button" className="show-dark" aria-label={darkWords()} onClick={turnBlank} />;
}
