import { changedSince, type LastPrint, printDay, reprintOf } from '../../../project';
import { type Reprint, STILL } from '../../../sheets';
import { all, dated, mm, number, own, printPhrase, say, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { Group } from '../../fields/Group';
import { useBench } from '../../store/bench';
import { useTaking } from '../../take/taking';
import { TakeFile } from './TakeFile';

/** What was printed before of this project, what has changed since, and which of its sheets are kept; nothing where nothing was. */
export function PrintedBefore() {
  const draft = useBench((state) => state.draft);
  // What was said beside the button stays in sight.
  const saved = useTaking((state) => (state.busy ?? state.saved)?.kind === 'changed');
  const { lastPrint, units } = draft.project;
  if (!lastPrint) return null;
  const again = reprintOf(draft);
  const changes = changedSince(draft);
  const count = number(lastPrint.sheets.length, 0);
  return (
    <Group name={words`Printed before`}>
      <p className="field-help">
        {words`Last saved for printing on ${dayOf(lastPrint)}, ${count} sheets in all.`}{' '}
        {changes.length > 0 && printPhrase(say`Changed since: ${all(changes)}.`, units)}
      </p>
      <p className="field-help">{printPhrase(sheetsTold(again), units)}</p>
      {again && (again.anew.length > 0 || saved) && (
        <TakeFile
          kind="changed"
          name={
            again.anew.length > 0
              ? words`Only changed sheets: ${number(again.anew.length, 0)}`
              : words`Only changed sheets: none`
          }
          what={words`To exchange, with a first page that says what to throw away and what to keep.`}
          disabled={again.anew.length === 0}
        />
      )}
      <button type="button" className="button" onClick={() => takeBack(lastPrint)}>
        {words`That was never printed`}
      </button>
    </Group>
  );
}

const dayOf = (print: Pick<LastPrint, 'on'>) => own(dated(printDay(print)));

function sheetsTold(again: Reprint | undefined) {
  if (!again)
    return say`Too few of them can be kept with what is chosen now, so the sheets are laid out afresh. Print them all.`;
  const { anew, plan, moved } = again;
  if (anew.length === 0)
    return say`All of them can be kept; there is nothing to print again. If one is missing, print it from the file of all sheets.`;
  const [few, whole] = [number(anew.length, 0), number(plan.sheets.length, 0)];
  const labels = own(anew.join(', '));
  return moved < STILL
    ? say`Print again ${few} of ${whole} sheets, coloured on the drawing: ${labels}. Keep the others: no line on them has moved. If one is missing, print it from the file of all sheets.`
    : say`Print again ${few} of ${whole} sheets, coloured on the drawing: ${labels}. Keep the others: no line on them has moved by more than ${mm(moved)}. If one is missing, print it from the file of all sheets.`;
}

/** What was saved last doesn't count as printed, until it is said that it does. */
function takeBack(lastPrint: LastPrint): void {
  const { id, takeBackPrint, notePrint, tell } = useBench.getState();
  takeBackPrint();
  focusOn('.notice-actions button');
  const { before } = lastPrint;
  tell({
    tone: 'told',
    text: before
      ? words`The sheets of ${dayOf(before)} count as the last print again.`
      : words`Nothing counts as printed any more, so the sheets are laid out afresh.`,
    remedies: [{ name: words`It was printed`, act: () => notePrint(id, lastPrint) }],
  });
}
