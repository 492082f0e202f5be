import { inside, own, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { redoAloud, undoAloud } from '../aloud/say-aloud';
import { Shortened } from '../look/Shortened';
import { useBench } from '../store/bench';

/** Back and forth, each with the name of what it takes back. */
export function UndoRedo() {
  const back = useBench((state) => state.history.past.at(-1)?.label);
  const forward = useBench((state) => state.history.future[0]?.label);
  const redo = () => {
    redoAloud();
    // With the last step the button is gone.
    if (useBench.getState().history.future.length === 0) focusOn('.bar-undo');
  };
  return (
    <>
      {/* Used up, it keeps the focus: a button that is really disabled would lose it. */}
      <button type="button" className="bar-button bar-undo" aria-disabled={back === undefined} onClick={undoAloud}>
        <span aria-hidden="true">↶</span>{' '}
        <Shortened
          short={words`undo`}
          whole={back === undefined ? words`undo` : words`undo ${inside(say`${own(back)}`)}`}
        />
      </button>
      {forward !== undefined && (
        <button type="button" className="bar-button" onClick={redo}>
          <span aria-hidden="true">↷</span>{' '}
          <Shortened short={words`redo`} whole={words`redo ${inside(say`${own(forward)}`)}`} />
        </button>
      )}
    </>
  );
}
