import { useEffect, useRef, useState } from 'react';
import { CLASS_KINDS, type ClassKind } from '../../files';
import { FileInput } from '../fields/FileInput';
import { Dialog } from '../look/Dialog';
import { useBench } from '../store/bench';
import { TakeProgress } from '../take/TakeProgress';
import { takeClass, useTaking } from '../take/taking';
import { ClassProgress } from './ClassProgress';
import { ClassRows } from './ClassRows';
import { chooseTable, designIsReady, lookThroughTable, saveEmptyTable, useClass } from './class-table';

/** What may lie in the set, in the words of a teacher; the summary always does. */
const PARTS: readonly { readonly kind: ClassKind; readonly name: string; readonly what: string }[] = [
  { kind: 'pdf', name: 'Patterns', what: 'each on the paper chosen here' },
  { kind: 'fit', name: 'Fit sheets', what: 'a page each: body, finished garment, what to buy' },
  { kind: 'guide', name: 'Sewing guides', what: 'steps with pictures, for each' },
  { kind: 'samples', name: 'Samples at a quarter', what: 'all of them, several to a page' },
  { kind: 'nested', name: 'Bodies on one drawing', what: 'up to twelve of like size on each' },
];

/** A class from one table: what was read is looked through before anything is made. */
export default function ClassDialog({ onClose }: { readonly onClose: () => void }) {
  const name = useBench((state) => state.project.name);
  const ready = useBench(designIsReady);
  const { table, looked, problems, looking } = useClass();
  const opener = useRef<HTMLInputElement>(null);
  // What was chosen on the table may have changed since the sheet was closed.
  useEffect(lookThroughTable, []);
  return (
    <Dialog
      wide
      title="A class from a table"
      about={`Each row of a table brings a body; cloth, leg, edges and paper are those of “${name}”.`}
      onClose={onClose}
    >
      <div className="sheet-actions">
        <button
          type="button"
          className={table ? 'button' : 'button button-main'}
          disabled={!ready}
          onClick={() => opener.current?.click()}
        >
          {table ? 'Choose another table' : 'Choose a table'}
        </button>
        <button type="button" className="button" onClick={() => void saveEmptyTable()}>
          Save an empty table
        </button>
        <FileInput
          opener={opener}
          label="Table of bodies"
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values"
          onFiles={([file]) => file && void chooseTable(file)}
        />
      </div>
      {!ready && (
        <p className="field-help">Put right what is asked for first: every row is drafted with these choices.</p>
      )}
      {!table && (
        <p className="field-help">
          A CSV file, as every spreadsheet saves it. The empty one says which measurements there are and where the tape
          goes. A row that can’t be drafted is named, and the rest is made.
        </p>
      )}
      {looking && <TakeProgress {...looking} name="How far the table is looked through" onStop={looking.stop} />}
      {problems.length > 0 && (
        <div className="class-problems" role="alert">
          <p>“{table?.name}” can’t be used as it stands:</p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </div>
      )}
      {looked && table && (
        <>
          <ClassRows fileName={table.name} looked={looked} />
          <ClassSet />
        </>
      )}
    </Dialog>
  );
}

/** What the set shall hold, and the button that makes it. */
function ClassSet() {
  const { table, project, looked } = useClass();
  const busy = useTaking((state) => state.busy !== undefined);
  const [kinds, setKinds] = useState<readonly ClassKind[]>(CLASS_KINDS);
  const count = looked?.members.filter(({ figures }) => figures).length ?? 0;
  const turn = (kind: ClassKind, on: boolean) =>
    setKinds(PARTS.map((part) => part.kind).filter((one) => (one === kind ? on : kinds.includes(one))));
  return (
    <>
      <fieldset className="class-parts">
        <legend>In the set, beside the summary</legend>
        {PARTS.map(({ kind, name, what }) => (
          <label key={kind} className="class-part">
            <input
              type="checkbox"
              checked={kinds.includes(kind)}
              onChange={({ currentTarget }) => turn(kind, currentTarget.checked)}
            />
            <span>
              {name} <span className="field-help">{what}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <div className="take-one">
        <button
          type="button"
          className="button button-main"
          disabled={busy || count === 0}
          onClick={() => table && project && takeClass(table.bytes, project, kinds)}
        >
          <span className="take-name">Make the set, ZIP</span>
          <span className="take-what">
            {count === 0 ? 'no row can be drafted yet' : `a folder for each of ${count}, and the summary`}
          </span>
        </button>
        <ClassProgress />
      </div>
    </>
  );
}
