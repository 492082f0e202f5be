import { inside, own, say, words } from '../../words';
import { undoAloud } from '../aloud/say-aloud';
import { useBench } from '../store/bench';
import { reloadPage } from './leaving';
import { useProjectsOpen } from './projects-open';
import { saveAnyhow } from './save-anyhow';

/** What can be done about a fault: one step back, the project as a file, another one, the page anew. */
export function WaysOut({ onLeave }: { readonly onLeave?: (() => void) | undefined }) {
  const last = lastChange();
  return (
    <div className="fault-ways">
      {last !== undefined && (
        <button type="button" className="button" onClick={undoAloud}>
          {words`Undo ${inside(say`${own(last)}`)}`}
        </button>
      )}
      <button type="button" className="button" onClick={saveAnyhow}>
        {words`Save the project as a file`}
      </button>
      <button
        type="button"
        className="button"
        onClick={() => {
          onLeave?.();
          useProjectsOpen.setState({ open: true });
        }}
      >
        {words`Another project`}
      </button>
      <button type="button" className="button" onClick={() => void reloadPage()}>
        {words`Reload the page`}
      </button>
      {onLeave && (
        <button type="button" className="button" onClick={onLeave}>
          {words`Close`}
        </button>
      )}
    </div>
  );
}

/** The name of what can be undone. The history may be what is broken. */
function lastChange(): string | undefined {
  const last: unknown = useBench.getState().history?.past?.at(-1)?.label;
  return typeof last === 'string' ? last : undefined;
}
