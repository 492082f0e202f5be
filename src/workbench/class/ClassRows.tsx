import { type KeyboardEvent, useState } from 'react';
import { inRow, number, own, type Phrase, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import type { ClassFile } from './class-file';
import { type ClassState, useClass } from './class-table';
import { type Head, MemberRow } from './MemberRow';
import { addLearner, redoTable, saveTable, undoTable } from './mend-table';

interface ClassRowsProps {
  readonly table: ClassFile;
  readonly heads: readonly Head[];
  readonly looked: NonNullable<ClassState['looked']>;
}

/** Shorter tables are seen at a glance. */
const FEW = 8;

/** The rows of a table with their verdicts, before anything is made of them. */
export function ClassRows({ table, heads, looked: { members, unused, leftOut } }: ClassRowsProps) {
  const look = members.filter((member) => member.look.length > 0);
  const made = members.filter(({ figures }) => figures).length;
  // Those who were to look at stay there when their cells are mended: nobody loses the row that is being typed in.
  const [only, setOnly] = useState<ReadonlySet<number>>();
  const shown = only ? members.filter((member) => only.has(member.row) || member.look.length > 0) : members;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys that undo, for what is typed in here
    <div className="class-table" onKeyDown={undoByKey}>
      <h3 className="sheet-name">{table.name}</h3>
      <p role="status">{words`${counted(members.length)}: ${drawn(made, members.length)}; ${wanting(look.length)}`}</p>
      {unused.length > 0 && (
        <p className="field-help">{words`Columns not used: ${inRow(unused.map((one) => say`${own(one)}`))}.`}</p>
      )}
      {leftOut.length > 0 && (
        <p className="field-help">{words`Left out, because it belongs to one body: ${inRow(leftOut.map((one) => say`${own(one)}`))}.`}</p>
      )}
      {members.length > FEW && (only || (look.length > 0 && look.length < members.length)) && (
        <Switch
          label={words`Which rows are shown`}
          quiet
          choices={[
            { key: 'all', name: say`all rows` },
            { key: 'look', name: say`those to look at` },
          ]}
          chosen={only ? 'look' : 'all'}
          onPick={(key) => setOnly(key === 'look' ? new Set(look.map(({ row }) => row)) : undefined)}
        />
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className="class-rows" tabIndex={0} aria-label={words`The rows of the table`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words`Row`}</th>
              <th scope="col">{words`Name`}</th>
              <th scope="col" className="class-spare">
                {words`Waist`}
              </th>
              <th scope="col">{words`Hip`}</th>
              <th scope="col" className="class-spare">
                {words`Inside leg`}
              </th>
              <th scope="col">{words`Verdict`}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((member) => (
              <MemberRow
                key={member.row}
                member={member}
                heads={heads}
                cells={table.records.records[member.row - 1] ?? NO_CELLS}
                first={table.first.records[member.row - 1]}
              />
            ))}
          </tbody>
        </table>
      </section>
      <TableActions />
    </div>
  );
}

const NO_CELLS: readonly string[] = [];

/** What is done with the table as a whole. */
function TableActions() {
  const back = useClass((state) => state.history.past.length > 0);
  const forward = useClass((state) => state.history.future.length > 0);
  return (
    <div className="sheet-actions">
      {/* Used up, they keep the focus. */}
      <button type="button" className="button" aria-disabled={!back} onClick={undoTable}>
        {words`undo`}
      </button>
      <button type="button" className="button" aria-disabled={!forward} onClick={redoTable}>
        {words`redo`}
      </button>
      <button type="button" className="button" onClick={addLearner}>
        {words`Add a learner`}
      </button>
      <button type="button" className="button" onClick={saveTable}>
        {words`Save the table, CSV`}
      </button>
    </div>
  );
}

/** Undo and redo of the table; in a cell that is being typed into, of what is typed there. */
function undoByKey(event: KeyboardEvent): void {
  const key = event.key.toLowerCase();
  if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y')) return;
  event.stopPropagation();
  if (event.target instanceof HTMLInputElement && event.target.dataset.typing) return;
  event.preventDefault();
  if (key === 'y' || event.shiftKey) redoTable();
  else undoTable();
}

const counted = (rows: number): Phrase => (rows === 1 ? say`1 row` : say`${number(rows, 0)} rows`);

const drawn = (made: number, rows: number): Phrase =>
  made === rows ? say`all can be drafted` : say`${number(made, 0)} can be drafted, ${number(rows - made, 0)} can’t`;

function wanting(look: number): Phrase {
  if (look === 0) return say`none to look at.`;
  return look === 1 ? say`1 to look at.` : say`${number(look, 0)} to look at.`;
}
