import { useState } from 'react';
import { printPhrase, words } from '../../words';
import { Guarded } from '../faults/Guarded';
import { useBench } from '../store/bench';
import { goToTopic } from './go-to-topic';
import { TopicPicture } from './TopicPicture';
import type { Topic } from './topics';

interface TopicToldProps {
  readonly topic: Topic;
  readonly onClose: () => void;
}

/** One topic: its title, and when that is opened its sentences, its picture and the way to its place. */
export function TopicTold({ topic, onClose }: TopicToldProps) {
  const units = useBench((state) => state.project.units);
  const [open, setOpen] = useState(false);
  return (
    <details className="help-topic" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{printPhrase(topic.title, units)}</summary>
      {open && (
        <div className="help-told">
          <div className="help-words">
            {topic.sentences.map((sentence) => (
              <p key={printPhrase(sentence, units)}>{printPhrase(sentence, units)}</p>
            ))}
            <button
              type="button"
              className="plain-link"
              onClick={() => {
                onClose();
                goToTopic(topic.subject);
              }}
            >
              {words`Show me where`}
            </button>
          </div>
          <Guarded what={words`The picture`} place="bit">
            <TopicPicture topic={topic} />
          </Guarded>
        </div>
      )}
    </details>
  );
}
