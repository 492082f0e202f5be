import { Suspense, useEffect } from 'react';
import { say, words } from '../words';
import { Aloud } from './aloud/Aloud';
import { redoAloud, undoAloud } from './aloud/say-aloud';
import { Bar } from './bar/Bar';
import { Class } from './bar/Class';
import { Help } from './bar/Help';
import { NoticeStrip } from './bar/NoticeStrip';
import { PrintHead } from './bar/PrintHead';
import { Projects } from './bar/Projects';
import { Guarded } from './faults/Guarded';
import { late } from './faults/late';
import { OutsideFault } from './faults/OutsideFault';
import { Finished } from './finished/Finished';
import { VerdictNews } from './finished/VerdictNews';
import { openHelp } from './help/help-open';
import { HINT_COUNT } from './hints/hint-count';
import { useManner } from './look/manner';
import { useMannerOnPage } from './look/use-manner-on-page';
import { Dropping } from './open/Dropping';
import { Repairs } from './open/Repairs';
import { Outlines } from './outlines/Outlines';
import { Path } from './path/Path';
import { Photo } from './photo/Photo';
import { saveToFile } from './save/save';
import { BenchShown, useBench } from './store/bench';
import { beside } from './table/beside';
import { Table } from './table/Table';
import { useJoining } from './table/use-joining';
import { Anew } from './ways/Anew';
import { WayIn } from './ways/WayIn';

const Hints = late(() => import('./hints/Hints'), { what: say`The hints`, place: 'bit' });
const ShowMode = late(() => import('./show/ShowMode'), {
  what: say`Show mode`,
  place: 'working',
  leave: () => useManner.getState().show(false),
});
const Working = late(() => import('./working/Working'), {
  what: say`The working`,
  place: 'working',
  leave: () => useBench.getState().showWorking(false),
});

/** One screen, one drawing, the stations in the order of the work; before there is a project, how to begin one. */
export function Workbench() {
  const begun = useBench((state) => state.begun);
  const workingShown = useBench((state) => state.workingShown);
  const joining = useJoining();
  const showing = useManner((state) => state.showing);
  const inputsAway = useManner((state) => state.inputsAway);
  const hinted = useManner((state) => state.hintsGone.length < HINT_COUNT);
  useMannerOnPage();
  useKeys();
  if (!begun)
    return (
      <div className="way-page">
        <Strips />
        <WayIn />
        <Aloud />
        <Dropping />
        <Repairs />
        <Photo />
        <Outlines />
      </div>
    );
  return (
    <div
      className="bench"
      data-working={(workingShown && !showing) || undefined}
      data-joining={joining || undefined}
      data-inputs-away={inputsAway || undefined}
    >
      <PrintHead />
      {!showing && (
        <Guarded what={words`The bar`} place="bar">
          <Bar />
        </Guarded>
      )}
      <Strips />
      {!showing && (
        <BenchShown value={beside}>
          <Guarded what={words`The stations`} place="path">
            <Path />
          </Guarded>
        </BenchShown>
      )}
      <Guarded what={words`The drawing`} place="table">
        <Table />
      </Guarded>
      <BenchShown value={beside}>
        <Suspense>
          {showing ? <ShowMode /> : workingShown && <Working />}
          {hinted && !showing && <Hints />}
        </Suspense>
        {!showing && (
          <Guarded what={words`What is finished`} place="finished">
            <Finished />
          </Guarded>
        )}
        <Guarded what={words`News of changed verdicts`} place="bit">
          <VerdictNews />
        </Guarded>
      </BenchShown>
      <Aloud />
      <Dropping />
      <Help />
      <Repairs />
      <Photo />
      <Outlines />
    </div>
  );
}

/** What is told above all else, and the list of projects and the ways to begin while they are asked for. */
function Strips() {
  const showing = useManner((state) => state.showing);
  return (
    <section className="strips" aria-label={words`News`}>
      {!showing && <NoticeStrip />}
      <OutsideFault />
      <Projects />
      <Class />
      <Anew />
    </section>
  );
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof Element && target.matches('input, textarea, select');

/** The keys that every program has for help, undo, redo and save, once there is something to work on. */
function useKeys() {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!useBench.getState().begun) return;
      if (event.key === '?' && !isTyping(event.target)) {
        event.preventDefault();
        openHelp();
        return;
      }
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const action =
        key === 's'
          ? saveToFile
          : key === 'z'
            ? event.shiftKey
              ? redoAloud
              : undoAloud
            : key === 'y'
              ? redoAloud
              : undefined;
      if (!action) return;
      event.preventDefault();
      action();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
}
