import { useEffect, useState } from 'react';
import { formatLength } from '../../length';
import { useBench } from '../store/bench';
import { newId } from '../store/new-id';
import { useKept } from './kept';
import type { KeptBody } from './shelf';
import { keeper, shelf } from './start';

/** Bodies kept apart from the projects, to draft for the same person again. */
export function KeptBodies({ onDone }: { readonly onDone: () => void }) {
  const changes = useKept((kept) => kept.changes);
  const units = useBench((state) => state.project.units);
  const body = useBench((state) => state.project.body);
  const [bodies, setBodies] = useState<readonly KeptBody[]>([]);
  const [label, setLabel] = useState(body.label);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the shelf is a reason to read it again
  useEffect(() => {
    let gone = false;
    shelf.bodies().then(
      (list) => !gone && setBodies([...list].sort((a, b) => b.savedAt - a.savedAt)),
      () => !gone && setBodies([]),
    );
    return () => {
      gone = true;
    };
  }, [changes]);
  const keep = async () => {
    const { label: _old, ...figures } = useBench.getState().draft.project.body;
    const id = newId();
    await shelf.putBody({ id, label: label.trim() || 'A body', figures, savedAt: Date.now() });
    keeper.tellChange('');
  };
  const put = ({ label: name, figures }: KeptBody) => {
    useBench.getState().choose('body', { label: name, ...figures });
    useBench.getState().tell({ tone: 'told', text: `This project is now drafted for “${name}”.` });
    onDone();
  };
  const hip = (figures: KeptBody['figures']) =>
    typeof figures.hipGirth === 'number' ? `hip ${formatLength(figures.hipGirth, units)}` : '';
  return (
    <>
      <form
        className="keep-body"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <label className="field-label" htmlFor="body-label">
          Whose body this project is for
        </label>
        <span className="sheet-actions">
          <span className="field-box">
            <input
              id="body-label"
              className="wide-text"
              value={label}
              maxLength={80}
              autoComplete="off"
              onChange={(event) => setLabel(event.target.value)}
            />
          </span>
          <button type="submit" className="button">
            Keep this body
          </button>
        </span>
      </form>
      {bodies.length === 0 && (
        <p className="field-help">A body that is kept apart can be put into any project. None is kept yet.</p>
      )}
      <ul className="kept-list">
        {bodies.map((one) => (
          <li key={one.id} className="kept-row">
            <span className="kept-name">
              {one.label}
              <span className="field-help">{hip(one.figures)}</span>
            </span>
            <span className="kept-actions">
              <button type="button" className="plain-link" onClick={() => put(one)}>
                put into this project<span className="unseen"> {one.label}</span>
              </button>
              <button
                type="button"
                className="plain-link"
                onClick={() => void shelf.removeBody(one.id).then(() => keeper.tellChange(''))}
              >
                remove<span className="unseen"> {one.label}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
