import { useEffect, useRef, useState } from 'react';
import { CLASS_KINDS, type ClassKind } from '../../files';
import { number, own, type Phrase, said, say, words } from '../../words';
import { FileInput } from '../fields/FileInput';
import { Dialog } from '../look/Dialog';
import { useBench } from '../store/bench';
import { TakeProgress } from '../take/TakeProgress';
import { takeClass, useTaking } from '../take/taking';
import { ClassProgress } from './ClassProgress';
import { ClassRows } from './ClassRows';
import { chooseTable, designIsReady, lookThroughTable, saveEmptyTable, useClass } from './class-table';
import { keepClassTable } from './keep-class';
import { addLearner } from './mend-table';
import { useHeads } from './use-heads';

/** What may lie in the set, in the words of a teacher; the summary always does. */
const PARTS: readonly { readonly kind: ClassKind; readonly name: Phrase; readonly what: Phrase }[] = [
  { kind: 'pdf', name: say`Patterns`, what: say`each on the paper chosen here` },
  { kind: 'fit', name: say`Fit sheets`, what: say`a page each: body, finished garment, what to buy` },
  { kind: 'guide', name: say`Sewing guides`, what: say`steps with pictures, for each` },
  { kind: 'handout', name: say`Handouts`, what: say`the working of each pattern, to read in class` },
  { kind: 'samples', name: say`Samples at a quarter`, what: say`all of them, several to a page` },
  { kind: 'nested', name: say`Bodies on one drawing`, what: say`up to twelve of like size on each` },
];

/** A class from one table: what was read is looked through before anything is made. */
export default function ClassDialog({ onClose }: { readonly onClose: () => void }) {
  const name = useBench((state) => state.project.name);
  const ready = useBench(designIsReady);
  const { table, looked, refused, looking } = useClass();
  const heads = useHeads(table);
  const opener = useRef<HTMLInputElement>(null);
  // What was chosen on the table may have changed since the sheet was closed.
  useEffect(() => {
    void keepClassTable();
    lookThroughTable();
  }, []);
  return (
    <Dialog
      wide
      title={words`A class from a table`}
      about={words`Each row of a table brings a body; cloth, leg, edges and paper are those of “${own(name)}”.`}
      onClose={onClose}
    >
      <div className="sheet-actions">
        <button
          type="button"
          className={table ? 'button' : 'button button-main'}
          disabled={!ready}
          onClick={() => opener.current?.click()}
        >
          {table ? words`Choose another table` : words`Choose a table`}
        </button>
        <button type="button" className="button" onClick={() => void saveEmptyTable()}>
          {words`Save an empty table`}
        </button>
        {!table && (
          <button type="button" className="button" disabled={!ready} onClick={addLearner}>
            {words`Type a table here`}
          </button>
        )}
        <FileInput
          opener={opener}
          label={words`Table of bodies`}
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values"
          onFiles={([file]) => file && void chooseTable(file)}
        />
      </div>
      {!ready && (
        <p className="field-help">{words`Fix the marked fields first: every row is drafted with these choices.`}</p>
      )}
      {!table && (
        <p className="field-help">
          {words`A CSV file, as every spreadsheet saves it. The empty one says which measurements there are and where the tape goes. A row that can’t be drafted is named, and the rest is made.`}
        </p>
      )}
      {looking && <TakeProgress {...looking} name={words`How far the table is looked through`} onStop={looking.stop} />}
      {refused && (
        <div className="class-problems" role="alert">
          <p>{words`“${own(refused.name)}” can’t be used as it stands:`}</p>
          <ul>
            {refused.problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
          {table && looked && <p>{words`The table before it, “${own(table.name)}”, is still here.`}</p>}
        </div>
      )}
      {table && !looked && !looking && ready && (
        <button type="button" className="button" onClick={() => lookThroughTable(true)}>
          {words`Look through “${own(table.name)}”`}
        </button>
      )}
      {looked && table && heads && (
        <>
          <ClassRows table={table} heads={heads} looked={looked} />
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
        <legend>{words`Include, besides the summary`}</legend>
        {PARTS.map(({ kind, name, what }) => (
          <label key={kind} className="class-part">
            <input
              type="checkbox"
              checked={kinds.includes(kind)}
              onChange={({ currentTarget }) => turn(kind, currentTarget.checked)}
            />
            <span>
              {said(name)} <span className="field-help">{said(what)}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <div className="take-one">
        <button
          type="button"
          className="button button-main"
          disabled={busy || count === 0}
          onClick={() => table && project && takeClass(table.records, project, kinds)}
        >
          <span className="take-name">{words`Make the set, ZIP`}</span>
          <span className="take-what">
            {count === 0
              ? words`no row can be drafted yet`
              : words`a folder for each of ${number(count, 0)}, and the summary`}
          </span>
        </button>
        <ClassProgress />
      </div>
    </>
  );
}
