import { focusOn } from '../aloud/focus-on';
import { redoAloud, undoAloud } from '../aloud/say-aloud';
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
        <span aria-hidden="true">↶</span> undo<span className="bar-what"> {lower(back)}</span>
      </button>
      {forward !== undefined && (
        <button type="button" className="bar-button" onClick={redo}>
          <span aria-hidden="true">↷</span> redo<span className="bar-what"> {lower(forward)}</span>
        </button>
      )}
    </>
  );
}

const lower = (label = ''): string => label.charAt(0).toLowerCase() + label.slice(1);
