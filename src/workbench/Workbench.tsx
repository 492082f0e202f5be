import { type DragEvent, lazy, Suspense, useEffect } from 'react';
import { Aloud } from './aloud/Aloud';
import { redoAloud, undoAloud } from './aloud/say-aloud';
import { Bar } from './bar/Bar';
import { NoticeStrip } from './bar/NoticeStrip';
import { Finished } from './finished/Finished';
import { VerdictNews } from './finished/VerdictNews';
import { HINT_COUNT } from './hints/hint-count';
import { openFromFile } from './keep/open';
import { Repairs } from './keep/Repairs';
import { saveToFile } from './keep/save';
import { useManner } from './look/manner';
import { useMannerOnPage } from './look/use-manner-on-page';
import { Path } from './path/Path';
import { Photo } from './photo/Photo';
import { BenchShown, useBench } from './store/bench';
import { beside } from './table/beside';
import { Table } from './table/Table';
import { useJoining } from './table/use-joining';

const Hints = lazy(() => import('./hints/Hints'));
const ShowMode = lazy(() => import('./show/ShowMode'));
const Working = lazy(() => import('./working/Working'));

/** One screen, one drawing, the stations in the order of the work. */
export function Workbench() {
  const workingShown = useBench((state) => state.workingShown);
  const joining = useJoining();
  const showing = useManner((state) => state.showing);
  const inputsAway = useManner((state) => state.inputsAway);
  const hinted = useManner((state) => state.hintsGone.length < HINT_COUNT);
  useMannerOnPage();
  useKeys();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped anywhere; the button Open does the same
    <div
      className="bench"
      data-working={(workingShown && !showing) || undefined}
      data-joining={joining || undefined}
      data-inputs-away={inputsAway || undefined}
      onDragOver={(event) => event.preventDefault()}
      onDrop={onDrop}
    >
      {!showing && <Bar />}
      {!showing && <NoticeStrip />}
      <BenchShown value={beside}>{!showing && <Path />}</BenchShown>
      <Table />
      <BenchShown value={beside}>
        <Suspense>
          {showing ? <ShowMode /> : workingShown && <Working />}
          {hinted && !showing && <Hints />}
        </Suspense>
        {!showing && <Finished />}
        <VerdictNews />
      </BenchShown>
      <Aloud />
      <Repairs />
      <Photo />
    </div>
  );
}

function onDrop(event: DragEvent) {
  event.preventDefault();
  const [file] = event.dataTransfer.files;
  if (file) void openFromFile(file);
}

/** The keys that every program has for undo, redo and save. */
function useKeys() {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
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
