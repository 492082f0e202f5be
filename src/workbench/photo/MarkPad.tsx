import { number, own, said, say, words } from '../../words';
import { isOnPaper, isRemovable } from './board';
import { WHOLE } from './found';
import { moveMark, placeOf } from './move-mark';
import { changeWork, endRun, removeMark, shotAt, usePhoto } from './photo-store';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import { type MarkId, markKey, withCorner } from './work';

const WAYS = [
  { name: say`Left`, sign: '←', x: -1, y: 0 },
  { name: say`Up`, sign: '↑', x: 0, y: -1 },
  { name: say`Down`, sign: '↓', x: 0, y: 1 },
  { name: say`Right`, sign: '→', x: 1, y: 0 },
] as const;

/** One press, in pixels of the picture and in millimetres on the paper. */
export const NUDGE = { picture: 1, paper: 0.5 } as const;

/** The mark in hand, moved by its least steps: for fingers what arrow keys are for a keyboard. */
export function MarkPad() {
  const selected = usePhoto((state) => state.selected);
  const work = usePhoto((state) => state.work);
  const index = usePhoto(shotAt);
  if (!selected)
    return (
      <p className="field-help" id="photo-mark-help">
        {words`Drag a mark, or take it up with Tab and move it by arrow keys; with Shift it moves ten times as far.`}
      </p>
    );
  const onPaper = isOnPaper(selected);
  const step = onPaper ? NUDGE.paper : NUDGE.picture;
  const nudge = (x: number, y: number) => {
    const at = placeOf(work, index, selected);
    if (at) moveMark(selected, { x: at.x + x * step, y: at.y + y * step }, `pad ${markKey(selected)}`);
  };
  const corner = selected.kind === 'point' && work[selected.part].marks.points[selected.edge]?.[selected.index]?.corner;
  return (
    <fieldset className="photo-pad">
      <legend className="field-label">{markName(selected)}</legend>
      <span className="photo-nudges">
        {WAYS.map(({ name, sign, x, y }) => (
          <button
            key={sign}
            type="button"
            className="tool tool-round"
            aria-label={said(name)}
            onClick={() => nudge(x, y)}
            onBlur={endRun}
          >
            {sign}
          </button>
        ))}
      </span>
      {selected.kind === 'point' && (
        <label className="photo-tick">
          <input
            type="checkbox"
            checked={corner ?? false}
            onChange={(event) => changeWork(withCorner(work, selected, event.target.checked))}
          />
          <span>{words`a corner of the edge`}</span>
        </label>
      )}
      {isRemovable(selected) && (
        <button type="button" className="plain-link" onClick={() => removeMark(selected)}>
          {words`take it away`}
        </button>
      )}
      <p className="field-help" id="photo-mark-help">
        {onPaper
          ? words`One press moves it by half a millimetre; arrow keys do the same, with Shift ten times as far. Delete takes it away, and Enter goes on to the next place.`
          : words`One press moves it by one pixel; arrow keys do the same, with Shift ten times as far.`}
      </p>
    </fieldset>
  );
}

function markName(id: MarkId): string {
  if (id.kind === 'corner') return words`Corner ${own('ABCD'.charAt(id.index))}`;
  if (id.kind === 'check') return words`End ${own('EF'.charAt(id.index))}`;
  if (id.kind === 'found')
    return id.index === WHOLE
      ? words`Found mark ${number(id.number, 0)}`
      : words`Corner ${number(id.index + 1, 0)} of found mark ${number(id.number, 0)}`;
  if (id.kind === 'join') return words`Place ${number(id.index, 0)} on two photographs`;
  return id.kind === 'landmark' ? said(LANDMARK_WORDS[id.name].name) : words`A point of: ${EDGE_NAMES[id.edge]}`;
}
