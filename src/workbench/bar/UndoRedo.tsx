import { useBench } from '../store/bench';

/** Back and forth, each with the name of what it takes back. */
export function UndoRedo() {
  const back = useBench((state) => state.history.past.at(-1)?.label);
  const forward = useBench((state) => state.history.future[0]?.label);
  const { undo, redo } = useBench.getState();
  return (
    <>
      <button type="button" className="bar-button" disabled={back === undefined} onClick={undo}>
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
