import { type KeyboardEvent, useEffect } from 'react';
import { Dialog } from '../look/Dialog';
import '../look/photo-look.css';
import { type Phrase, said, say, words } from '../../words';
import { BlockBoard } from './BlockBoard';
import { BlockStep } from './BlockStep';
import { ChooseStep } from './ChooseStep';
import { CornerBoard } from './CornerBoard';
import { CornerStep } from './CornerStep';
import { flatsOfWork } from './flat';
import { followEdges } from './follow-edges';
import { usePhotoOpen } from './opened';
import { keepMarks } from './photo-keep';
import { goTo, type PhotoStep, redo, STEPS, shotAt, takePicture, undo, usePhoto } from './photo-store';
import { UseStep } from './UseStep';

const STEP_NAMES: Readonly<Record<PhotoStep, Phrase>> = {
  choose: say`Photograph`,
  corners: say`Corners`,
  front: say`Front`,
  back: say`Back`,
  use: say`Use`,
};

/** Both blocks traced from a photograph: chosen, flattened by four corners, marked, used. */
export default function PhotoScreen() {
  const step = usePhoto((state) => state.step);
  const picture = usePhoto((state) => state.pictures[shotAt(state)]);
  const file = usePhotoOpen((state) => state.file);
  useEffect(() => {
    void keepMarks().then(() => {
      if (!file) return;
      usePhotoOpen.setState({ file: undefined });
      void takePicture(file);
    });
  }, [file]);
  useEffect(followEdges, []);
  // Without its picture every step but the last asks for the photograph.
  const shown = step !== 'use' && !picture ? 'choose' : step;
  return (
    <Dialog
      whole
      title={words`Blocks from a photograph`}
      about={words`The photograph stays on this computer. The marks are kept here as you set them; the picture is not.`}
      onClose={() => usePhotoOpen.setState({ open: false, file: undefined })}
    >
      {/* biome-ignore lint/a11y/noStaticElementInteractions: only the keys for undo and redo, which the buttons do, too */}
      <div className="photo" data-step={shown} onKeyDown={onKeyDown}>
        <Steps />
        <div className="photo-panel">
          {shown === 'choose' ? (
            <ChooseStep />
          ) : shown === 'corners' ? (
            <CornerStep />
          ) : shown === 'use' ? (
            <UseStep />
          ) : (
            <BlockStep key={shown} part={shown} />
          )}
        </div>
        {picture && shown === 'corners' && <CornerBoard picture={picture} />}
        {picture && (shown === 'front' || shown === 'back') && (
          <BlockBoard key={shown} part={shown} picture={picture} />
        )}
      </div>
    </Dialog>
  );
}

function Steps() {
  const step = usePhoto((state) => state.step);
  const work = usePhoto((state) => state.work);
  const past = usePhoto((state) => state.history.past.length);
  const future = usePhoto((state) => state.history.future.length);
  const flat = flatsOfWork(work).some((one) => one !== undefined);
  return (
    <nav className="photo-steps" aria-label={words`Steps`}>
      <ol>
        {STEPS.map((one) => (
          <li key={one}>
            <button
              type="button"
              className="tool"
              aria-current={one === step ? 'step' : undefined}
              disabled={one === 'choose' ? false : one === 'corners' ? !work.shots[0] : !flat}
              onClick={() => goTo(one)}
            >
              {said(STEP_NAMES[one])}
            </button>
          </li>
        ))}
      </ol>
      <span className="photo-undo">
        <button type="button" className="tool" disabled={past === 0} onClick={undo}>
          {words`Undo`}
        </button>
        <button type="button" className="tool" disabled={future === 0} onClick={redo}>
          {words`Redo`}
        </button>
      </span>
    </nav>
  );
}

/** The keys that every program has: here they mean the marks, and not the project behind them. */
function onKeyDown(event: KeyboardEvent) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const action = key === 'z' ? (event.shiftKey ? redo : undo) : key === 'y' ? redo : undefined;
  if (!action) return;
  // In a field they undo what was typed.
  if (event.target instanceof HTMLInputElement && event.target.type === 'text') {
    event.stopPropagation();
    return;
  }
  event.preventDefault();
  event.stopPropagation();
  action();
}
