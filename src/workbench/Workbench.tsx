import { type DragEvent, useEffect } from 'react';
import { Bar } from './bar/Bar';
import { NoticeStrip } from './bar/NoticeStrip';
import { Finished } from './finished/Finished';
import { VerdictNews } from './finished/VerdictNews';
import { openFromFile } from './keep/open';
import { saveToFile } from './keep/save';
import { Path } from './path/Path';
import { useBench } from './store/bench';
import { Table } from './table/Table';
import { Working } from './working/Working';

/** One screen, one drawing, the stations in the order of the work. */
export function Workbench() {
  const workingShown = useBench((state) => state.workingShown);
  useKeys();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped anywhere; the button Open does the same
    <div
      className="bench"
      data-working={workingShown || undefined}
      onDragOver={(event) => event.preventDefault()}
      onDrop={onDrop}
    >
      <Bar />
      <NoticeStrip />
      <Path />
      <Table />
      {workingShown && <Working />}
      <Finished />
      <VerdictNews />
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
      const { undo, redo } = useBench.getState();
      const key = event.key.toLowerCase();
      const action =
        key === 's' ? saveToFile : key === 'z' ? (event.shiftKey ? redo : undo) : key === 'y' ? redo : undefined;
      if (!action) return;
      event.preventDefault();
      action();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
}
