import { type KeyboardEvent, useEffect } from 'react';
import '../look/photo-look.css';
import '../look/outlines.css';
import { own, words } from '../../words';
import { Dialog } from '../look/Dialog';
import { closeSheet, type OpenedSheet } from './opened';
import { beginWith, redo, undo, useOutlines } from './outlines-store';
import { PickBoard } from './PickBoard';
import { PickPanel } from './PickPanel';
import { PlacesBoard } from './PlacesBoard';
import { PlacesPanel } from './PlacesPanel';

/** Both blocks picked from a drawing whose lines have no names of ours: the outlines, then their places, then used. */
export default function OutlinesScreen({ opened }: { readonly opened: OpenedSheet }) {
  const { sheet, fileName } = opened;
  const here = useOutlines((state) => state.sheet === sheet);
  const step = useOutlines((state) => state.step);
  useEffect(() => beginWith(sheet), [sheet]);
  return (
    <Dialog
      whole
      title={words`Blocks from a drawing`}
      about={words`“${own(fileName)}” stays on this computer.`}
      onClose={closeSheet}
    >
      {here && (
        // biome-ignore lint/a11y/noStaticElementInteractions: only the keys for undo and redo, which the buttons do, too
        <div className="photo outlines" data-step={step} onKeyDown={onKeyDown}>
          <Steps />
          <div className="photo-panel">{step === 'pick' ? <PickPanel sheet={sheet} /> : <PlacesPanel />}</div>
          <div className="outlines-window">{step === 'pick' ? <PickBoard sheet={sheet} /> : <PlacesBoard />}</div>
        </div>
      )}
    </Dialog>
  );
}

function Steps() {
  const { step, work, history } = useOutlines();
  const both = work.front !== undefined && work.back !== undefined;
  return (
    <nav className="photo-steps" aria-label={words`Steps`}>
      <ol>
        <li>
          <button
            type="button"
            className="tool"
            aria-current={step === 'pick' ? 'step' : undefined}
            onClick={() => useOutlines.setState({ step: 'pick', hand: undefined })}
          >
            {words`Outlines`}
          </button>
        </li>
        <li>
          <button
            type="button"
            className="tool"
            aria-current={step === 'places' ? 'step' : undefined}
            disabled={!both}
            onClick={() => useOutlines.setState({ step: 'places', hand: undefined })}
          >
            {words`Corners and edges`}
          </button>
        </li>
      </ol>
      <span className="photo-undo">
        <button type="button" className="tool" disabled={history.past.length === 0} onClick={undo}>
          {words`Undo`}
        </button>
        <button type="button" className="tool" disabled={history.future.length === 0} onClick={redo}>
          {words`Redo`}
        </button>
      </span>
    </nav>
  );
}

/** The keys that every program has: here they mean what was picked, and not the project behind it. */
function onKeyDown(event: KeyboardEvent) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const action = key === 'z' ? (event.shiftKey ? redo : undo) : key === 'y' ? redo : undefined;
  if (!action) return;
  event.stopPropagation();
  // In a field they undo what was typed.
  if (event.target instanceof HTMLInputElement) return;
  event.preventDefault();
  action();
}
