import { fieldName, type Repair } from '../../project';
import { number, own, type Phrase, printPhrase, said, say, words } from '../../words';
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
    const told = words`“${own(fileName)}” is open, with ${number(salvaged.repairs.length, 0)} repaired; the file itself is as it was.`;
    useBench.setState((state) =>
      broughtIn(state, salvaged.project, words`opening a file`, withNotes(told, salvaged.notes), salvaged.missing),
    );
    close();
  };
  return (
    <Dialog
      title={words`This file needs repair`}
      about={words`“${own(fileName)}” can’t be opened as it stands. Everything else in it is kept.`}
      onClose={close}
    >
      <ul className="kept-list">
        {salvaged.cutShort && <li>{words`The file ends in the middle: what came after is missing.`}</li>}
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
          {words`Open with these repairs`}
        </button>
        <button type="button" className="button" onClick={close}>
          {words`Leave it`}
        </button>
      </div>
    </Dialog>
  );
}

/** What stood there, and what is used instead. */
function doneAbout({ problem, now }: Repair): string {
  const was = problem.value === undefined ? say`Was empty` : say`Was ${shown(problem.value, say`a group`)}`;
  return now === undefined
    ? words`${was}; it is left out, or still to be measured.`
    : words`${was}; ${shown(now, say`the usual choice`)} is used.`;
}

function shown(value: unknown, group: Phrase): Phrase {
  if (Array.isArray(value)) return say`a list`;
  if (typeof value === 'object' && value !== null) return group;
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return say`${own(text.length > 40 ? `${text.slice(0, 39)}…` : text)}`;
}
