import { Suspense, useEffect } from 'react';
import { STATION_NAMES, STATIONS } from '../../project';
import { isSaid, number, type Phrase, printPhrase, said, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { late, withLate } from '../faults/late';
import { useManner } from '../look/manner';
import { useBench } from '../store/bench';
import { stepsInOrder } from '../store/working-at';
import { useTable } from '../table/table-state';
import { usePlaying } from '../working/RunButtons';
import { useRun } from '../working/run';

const ShowSewing = late(() => import('./ShowSewing'), { what: say`The step of the sewing`, place: 'bit' });

/** For a class: the drawing, one sentence in large type, and keys. */
export default function ShowMode() {
  const station = useBench((state) => state.station);
  const units = useBench((state) => state.project.units);
  const draft = useBench((state) => state.draft);
  const lit = useBench((state) => state.step);
  const playing = useRun((state) => state.playing);
  const joining = useTable((state) => state.join !== undefined) && station === 'leg';
  const steps = stepsInOrder(draft);
  const here = steps.findIndex((step) => step.id === lit);
  const step = steps[here];
  usePlaying();
  useShowKeys();
  return (
    <section className="show" aria-label={words`Show mode`}>
      <h1 className="show-station">
        {said(STATION_NAMES[station])}
        {step && ` · ${words`${number(here + 1, 0)} of ${number(steps.length, 0)}`}`}
        {playing && ` · ${words`playing`}`}
      </h1>
      <p className="show-step" role="status">
        {station === 'sew' && (
          <Suspense>
            <ShowSewing />
          </Suspense>
        )}
        {step && !joining && <span className="show-sentence">{printPhrase(step.sentence, units)}</span>}
        {step && !joining && isSaid(step.formula) && (
          <span className="show-formula">{printPhrase(step.formula, units)}</span>
        )}
      </p>
      <ul className="show-keys" aria-label={words`Keys`}>
        {KEYS.filter(({ at }) => at === undefined || at === station).map(({ key, what }) => (
          <li key={key.template}>
            <kbd>{said(key)}</kbd> {said(what)}
          </li>
        ))}
        <li>
          <button type="button" className="plain-link" onClick={leave}>
            <kbd>{words`Esc`}</kbd> {words`leave`}
          </button>
        </li>
      </ul>
    </section>
  );
}

/** What the strip says; the digits and the rest are answered below. */
const KEYS: readonly { readonly key: Phrase; readonly what: Phrase; readonly at?: string }[] = [
  { key: say`→`, what: say`next` },
  { key: say`←`, what: say`back` },
  { key: say`space`, what: say`play` },
  { key: say`1–${number(STATIONS.length, 0)}`, what: say`station` },
  { key: say`W`, what: say`whole drawing` },
  { key: say`J`, what: say`the join`, at: 'leg' },
  { key: say`C`, what: say`chalkboard` },
  { key: say`U`, what: say`unit` },
  { key: say`+ − F`, what: say`zoom, fit` },
];

function leave(): void {
  useRun.getState().end();
  useTable.getState().showJoin(undefined);
  useManner.getState().show(false);
  focusOn('.bar-show');
}

/** On or back: through the steps of the sewing where it is shown, and through the working everywhere else. */
function move(by: 1 | -1): void {
  if (useBench.getState().station === 'sew')
    withLate(
      words`The sewing`,
      () => import('../working/sewing-run'),
      (run) => run.moveSewing(by),
    );
  else useRun.getState().move(by);
}

const ACTIONS: Readonly<Record<string, () => void>> = {
  arrowright: () => move(1),
  arrowleft: () => move(-1),
  ' ': () => useRun.getState().play(!useRun.getState().playing),
  w: () => useRun.getState().end(),
  c: () => useManner.getState().wear(useManner.getState().theme === 'chalkboard' ? 'daylight' : 'chalkboard'),
  u: () => useBench.getState().showUnits(useBench.getState().project.units === 'cm' ? 'inch' : 'cm'),
  escape: leave,
  j() {
    if (useBench.getState().station !== 'leg') return;
    const { join, playJoin, showJoin } = useTable.getState();
    if (join === undefined) playJoin(true);
    else {
      showJoin(undefined);
      focusOn('.table-window');
    }
  },
};

function onKeyDown(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
  // What has the focus and answers to the key keeps it.
  if (event.target instanceof HTMLInputElement) return;
  if (event.key === ' ' && event.target instanceof HTMLButtonElement) return;
  const station = STATIONS[Number(event.key) - 1];
  const action = ACTIONS[event.key.toLowerCase()];
  if (station) {
    useRun.getState().end();
    useBench.getState().goTo(station);
  } else if (action) action();
  else return;
  event.preventDefault();
}

function useShowKeys(): void {
  useEffect(() => {
    // Zoom and fit are the table's own keys, so it has the focus.
    document.querySelector<HTMLElement>('.table-window')?.focus();
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
}
