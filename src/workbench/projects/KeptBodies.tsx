import { useState } from 'react';
import { mm, own, printPhrase, say, words } from '../../words';
import type { KeptBody } from '../shelf/read-body';
import type { ShelvedBody } from '../shelf/shelf';
import { onThisPage } from '../shelf/start';
import { useBench } from '../store/bench';
import { newId } from '../store/new-id';
import { KeptRow, NamedButton, RawRow } from './KeptRow';
import { changeShelf, useShelved } from './use-shelved';

/** Bodies kept apart from the projects, to draft for the same person again. */
export function KeptBodies({ onDone }: { readonly onDone: () => void }) {
  const units = useBench((state) => state.project.units);
  const body = useBench((state) => state.project.body);
  const { shelf } = onThisPage();
  const bodies = useShelved(shelf.bodies) ?? [];
  const [label, setLabel] = useState(body.label);
  const keep = async () => {
    const { label: _old, ...figures } = useBench.getState().draft.project.body;
    const id = newId();
    await changeShelf(() => shelf.putBody({ id, label: label.trim() || words`A body`, figures, savedAt: Date.now() }));
  };
  const remove = (id: string) => void changeShelf(() => shelf.removeBody(id));
  const put = ({ label: name, figures }: KeptBody) => {
    useBench.getState().choose('body', { label: name, ...figures });
    useBench.getState().tell({ tone: 'told', text: words`This project is now drafted for “${own(name)}”.` });
    onDone();
  };
  const hip = (figures: KeptBody['figures']) =>
    typeof figures.hipGirth === 'number' ? printPhrase(say`hip ${mm(figures.hipGirth)}`, units) : '';
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
          {words`Whose body this project is for`}
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
            {words`Keep this body`}
          </button>
        </span>
      </form>
      {bodies.length === 0 && (
        <p className="field-help">{words`A body that is kept apart can be put into any project. None is kept yet.`}</p>
      )}
      <ul className="kept-list">
        {sorted(bodies).map((one) =>
          one.readable ? (
            <KeptRow key={one.body.id} name={one.body.label} about={hip(one.body.figures)}>
              <NamedButton name={words`put into this project ${own(one.body.label)}`} onPress={() => put(one.body)}>
                {words`put into this project`}
              </NamedButton>
              <NamedButton name={words`remove ${own(one.body.label)}`} onPress={() => remove(one.body.id)}>
                {words`remove`}
              </NamedButton>
            </KeptRow>
          ) : (
            <RawRow
              key={one.id}
              name={words`A body that can’t be read here`}
              about={words`It is left as it is.`}
              raw={one.raw}
              onRemove={() => remove(one.id)}
            />
          ),
        )}
      </ul>
    </>
  );
}

/** The newest first, and what can't be read last. */
const sorted = (bodies: readonly ShelvedBody[]): readonly ShelvedBody[] =>
  bodies.toSorted((a, b) => timeOf(b) - timeOf(a));
const timeOf = (one: ShelvedBody): number => (one.readable ? one.body.savedAt : Number.NEGATIVE_INFINITY);
