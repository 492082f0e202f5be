import { useDeferredValue, useId, useMemo, useState } from 'react';
import { number, printPhrase, said, words } from '../../words';
import { Dialog } from '../look/Dialog';
import { useBench } from '../store/bench';
import { KeyList } from './KeyList';
import { found } from './search';
import { TopicTold } from './TopicTold';
import { helpTopics, type Subject, TOPIC_KINDS, type Topic } from './topics';

/** The keys, and what the screens say, to search and to look at. */
export default function HelpDialog({ onClose }: { readonly onClose: () => void }) {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const topics = useMemo(() => helpTopics(draft), [draft]);
  const [typed, setTyped] = useState('');
  const sought = useDeferredValue(typed.trim());
  const field = useId();
  const textOf = ({ title, sentences }: Topic) =>
    [printPhrase(title, units), sentences.map((one) => printPhrase(one, units)).join(' ')] as const;
  const matching = sought === '' ? [] : found(topics, textOf, sought);
  return (
    <Dialog
      wide
      title={words`Help`}
      about={words`In the same words as on the screens, about your own pattern.`}
      onClose={onClose}
    >
      <label htmlFor={field}>{words`Look for`}</label>
      <input
        id={field}
        type="search"
        className="wide-text"
        value={typed}
        maxLength={80}
        autoComplete="off"
        onChange={(event) => setTyped(event.target.value)}
      />
      <p className="field-help" role="status">
        {sought !== '' && (matching.length === 0 ? words`Nothing found.` : words`${number(matching.length, 0)} found`)}
      </p>
      {sought === '' ? (
        <>
          <KeyList />
          {(Object.keys(TOPIC_KINDS) as readonly Subject['kind'][]).map((kind) => (
            <details key={kind} className="help-kind">
              <summary>{said(TOPIC_KINDS[kind])}</summary>
              <Topics topics={topics.filter(({ subject }) => subject.kind === kind)} onClose={onClose} />
            </details>
          ))}
        </>
      ) : (
        <Topics topics={matching} onClose={onClose} />
      )}
    </Dialog>
  );
}

interface TopicsProps {
  readonly topics: readonly Topic[];
  readonly onClose: () => void;
}

const Topics = ({ topics, onClose }: TopicsProps) => (
  <ul className="help-topics">
    {topics.map((topic) => (
      <li key={topic.id}>
        <TopicTold topic={topic} onClose={onClose} />
      </li>
    ))}
  </ul>
);
