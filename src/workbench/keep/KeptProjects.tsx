import { useEffect, useState } from 'react';
import { openProject } from '../../project';
import { useBench } from '../store/bench';
import { download } from './download';
import { ago, useKept } from './kept';
import type { Shelved } from './shelf';
import { keeper, shelf } from './start';

/** The projects on this computer, the newest first. */
export function KeptProjects({ onDone }: { readonly onDone: () => void }) {
  const changes = useKept((kept) => kept.changes);
  const here = useBench((state) => state.id);
  const [projects, setProjects] = useState<readonly Shelved[]>();
  const [again, setAgain] = useState<{ name: string; putBack: () => Promise<void> }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of the shelf is a reason to read it again
  useEffect(() => {
    let gone = false;
    shelf.list().then(
      (list) => !gone && setProjects(list),
      () => !gone && setProjects([]),
    );
    return () => {
      gone = true;
    };
  }, [changes]);
  const remove = async (id: string, name: string) => {
    const putBack = await shelf.remove(id);
    setAgain({ name, putBack });
    keeper.tellChange(id);
  };
  const open = async (id: string) => {
    if (await keeper.open(id)) onDone();
  };
  if (!projects) return null;
  const others = projects.filter(({ id }) => id !== here);
  return (
    <section aria-label="Other projects">
      {again && (
        <p className="field-help" role="status">
          “{again.name}” is off the list.{' '}
          <button
            type="button"
            className="plain-link"
            onClick={() => {
              void again.putBack().then(() => keeper.tellChange(''));
              setAgain(undefined);
            }}
          >
            put it back
          </button>
        </p>
      )}
      {others.length === 0 && <p className="field-help">No other project is kept here yet.</p>}
      <ul className="kept-list">
        {others.map((one) =>
          one.readable ? (
            <Row key={one.id} name={nameOf(one.copy.text)} about={`kept ${ago(Date.now() - one.copy.savedAt)}`}>
              <button type="button" className="plain-link" onClick={() => void open(one.id)}>
                open<span className="unseen"> {nameOf(one.copy.text)}</span>
              </button>
              <button type="button" className="plain-link" onClick={() => void remove(one.id, nameOf(one.copy.text))}>
                remove<span className="unseen"> {nameOf(one.copy.text)}</span>
              </button>
            </Row>
          ) : (
            <Row
              key={one.id}
              name="A project that can’t be read here"
              about="Perhaps a newer Legwork kept it. It is left as it is."
            >
              <button type="button" className="plain-link" onClick={() => takeRaw(one.raw)}>
                save what is there
              </button>
              <button type="button" className="plain-link" onClick={() => void remove(one.id, 'A project')}>
                remove
              </button>
            </Row>
          ),
        )}
      </ul>
    </section>
  );
}

function Row(props: { readonly name: string; readonly about: string; readonly children: React.ReactNode }) {
  return (
    <li className="kept-row">
      <span className="kept-name">
        {props.name}
        <span className="field-help">{props.about}</span>
      </span>
      <span className="kept-actions">{props.children}</span>
    </li>
  );
}

function nameOf(text: string): string {
  const result = openProject(text);
  if (result.ok) return result.value.name;
  const { name } = JSON.parse(text) as { name?: unknown };
  return typeof name === 'string' ? name : 'A project';
}

/** What can't be read may still be of use to somebody who can. */
function takeRaw(raw: unknown): void {
  const { text } = (raw ?? {}) as { text?: unknown };
  download(typeof text === 'string' ? text : JSON.stringify(raw), 'application/json', 'unread.legwork.json');
}
