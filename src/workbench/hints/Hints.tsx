import { number, said, say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { useManner } from '../look/manner';
import { useBench } from '../store/bench';
import { HINT_COUNT } from './hint-count';

/** What somebody needs who never saw the table before: short, and never again once put away. */
const HINTS = [
  {
    id: 'button',
    title: say`Drag a yellow button`,
    text: say`Drag it, or move it with the arrow keys: the leg is drafted anew at every step, and undo brings it back.`,
  },
  {
    id: 'how',
    title: say`Ask any number “how?”`,
    text: say`It answers with its formula, its values, and the lines that it drew. Working goes through all of them.`,
  },
  {
    id: 'path',
    title: say`Follow the thread`,
    text: say`This is a finished example. The stations go from the tape measure to the sewing; New begins a pair of your own.`,
  },
] as const;

/** One hint at a time, above the drawing. */
export default function Hints() {
  const gone = useManner((state) => state.hintsGone);
  const station = useBench((state) => state.station);
  const left = HINTS.filter(({ id }) => !gone.includes(id));
  // Of the buttons only where there are some.
  const hint = left.find(({ id }) => id !== 'button' || station === 'leg' || station === 'edges');
  if (!hint) return null;
  const at = HINTS.indexOf(hint);
  const last = left.length === 1;
  const putAway = (ids: readonly string[]) => {
    useManner.getState().putAway(ids);
    if (useManner.getState().hintsGone.length >= HINT_COUNT) focusOn('.table-window');
  };
  return (
    <aside
      className="hint"
      data-hint={hint.id}
      aria-label={words`Hint ${number(at + 1, 0)} of ${number(HINT_COUNT, 0)}`}
    >
      <p className="hint-words">
        <strong>{said(hint.title)}.</strong> {said(hint.text)}
      </p>
      <p className="hint-do">
        <button type="button" className="tool" onClick={() => putAway([hint.id])}>
          {last ? words`Got it` : words`Next hint`}
        </button>
        {!last && (
          <button type="button" className="plain-link" onClick={() => putAway(HINTS.map(({ id }) => id))}>
            {words`no more hints`}
          </button>
        )}
      </p>
    </aside>
  );
}
