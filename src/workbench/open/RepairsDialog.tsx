import { fieldName, type Repair } from '../../project';
import { printPhrase, said } from '../../words';
import { Dialog } from '../look/Dialog';
import { useBench } from '../store/bench';
import { broughtIn, withNotes } from '../store/changes';
import { sentence } from '../store/refusal';
import { type Offered, useOffered } from './repairs';

/** What had to be repaired in a file that could not be opened as it stood; nothing is opened before it is agreed to. */
export default function RepairsDialog({ offered }: { readonly offered: Offered }) {
  const units = useBench((state) => state.project.units);
  const { fileName, salvaged } = offered;
  const close = () => useOffered.setState({ offered: undefined });
  const open = () => {
    const told = `“${fileName}” is open, with ${salvaged.repairs.length} repaired; the file itself is as it was.`;
    useBench.setState((state) =>
      broughtIn(state, salvaged.project, 'opening a file', withNotes(told, salvaged.notes), salvaged.missing),
    );
    close();
  };
  return (
    <Dialog
      title="This file needs repair"
      about={`“${fileName}” can’t be opened as it stands. Everything else in it is kept.`}
      onClose={close}
    >
      <ul className="kept-list">
        {salvaged.cutShort && <li>The file ends in the middle: what came after is missing.</li>}
        {salvaged.repairs.map((repair) => {
          const why = sentence(printPhrase(repair.problem.phrase, units));
          return (
            <li key={`${repair.problem.field} ${why}`} className="repair">
              <strong>{said(fieldName(repair.problem.field))}</strong> {why}{' '}
              <span className="field-help">{doneAbout(repair)}</span>
            </li>
          );
        })}
      </ul>
      <div className="sheet-actions">
        <button type="button" className="button button-main" onClick={open}>
          Open it so
        </button>
        <button type="button" className="button" onClick={close}>
          Leave it
        </button>
      </div>
    </Dialog>
  );
}

/** What stood there, and what is used instead. */
function doneAbout({ problem, now }: Repair): string {
  const was = problem.value === undefined ? 'Nothing stood there' : `There stood ${shown(problem.value, 'a group')}`;
  return now === undefined
    ? `${was}; it is left to be measured, or out.`
    : `${was}; ${shown(now, 'the usual choice')} is used.`;
}

function shown(value: unknown, group: string): string {
  const text = Array.isArray(value)
    ? 'a list'
    : typeof value === 'object' && value !== null
      ? group
      : typeof value === 'number'
        ? String(value)
        : JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
