import { useState } from 'react';
import { own, said, words } from '../../words';
import { ago, useKept } from '../shelf/kept';
import { onThisPage } from '../shelf/start';
import { TROUBLE_WORDS } from '../shelf/trouble';
import { useBench } from '../store/bench';
import { KeptRow, NamedButton, RawRow } from './KeptRow';
import { SetAside } from './SetAside';
import { changeShelf, useShelved } from './use-shelved';

/** The projects on this computer, the newest first. */
export function KeptProjects({ onDone }: { readonly onDone: () => void }) {
  const { keeper, shelf } = onThisPage();
  const here = useBench((state) => state.id);
  const state = useKept((kept) => kept.state);
  const projects = useShelved(shelf.list);
  const [again, setAgain] = useState<{ name: string; putBack: () => Promise<void> }>();
  const remove = async (id: string, name: string) => {
    const putBack = await changeShelf(() => shelf.remove(id), id);
    if (putBack) setAgain({ name, putBack });
  };
  const open = async (id: string) => {
    try {
      if (await keeper.open(id)) onDone();
    } catch (fault) {
      keeper.tellTrouble(fault);
    }
  };
  if (!projects) return null;
  const others = projects.filter(({ id }) => id !== here);
  return (
    <section aria-label={words`Other projects`}>
      {again && (
        <p className="field-help" role="status">
          {words`“${own(again.name)}” is off the list.`}{' '}
          <button
            type="button"
            className="plain-link"
            onClick={() => {
              void changeShelf(again.putBack);
              setAgain(undefined);
            }}
          >
            {words`put it back`}
          </button>
        </p>
      )}
      {others.length === 0 && (
        <p className="field-help">
          {state === 'off' ? said(TROUBLE_WORDS.off) : words`No other project is kept here yet.`}
        </p>
      )}
      <ul className="kept-list">
        {others.map((one) =>
          one.readable ? (
            <KeptRow key={one.id} name={one.name} about={words`kept ${own(ago(Date.now() - one.savedAt))}`}>
              <NamedButton name={words`open ${own(one.name)}`} onPress={() => void open(one.id)}>
                {words`open`}
              </NamedButton>
              <NamedButton name={words`remove ${own(one.name)}`} onPress={() => void remove(one.id, one.name)}>
                {words`remove`}
              </NamedButton>
            </KeptRow>
          ) : (
            <RawRow
              key={one.id}
              name={words`A project that can’t be read here`}
              about={words`It may come from a newer Legwork. It is left as it is.`}
              raw={one.raw}
              onRemove={() => void remove(one.id, words`A project`)}
            />
          ),
        )}
      </ul>
      <SetAside />
    </section>
  );
}
