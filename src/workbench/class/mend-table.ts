import { loadMending, type Member } from '../../files';
import { number, said, say, words } from '../../words';
import { sayAloud } from '../aloud/say-aloud';
import { withLate } from '../faults/late';
import { download } from '../save/download';
import { useBench } from '../store/bench';
import { type Returned, remember, stepBack, stepForward } from '../store/history';
import type { ClassFile } from './class-file';
import { lookThroughTable, useClass } from './class-table';

type Mending = Awaited<ReturnType<typeof loadMending>>;
type Cell = Parameters<Mending['mended']>[1][number];

const MENDING = say`The table of a class`;
const withMending = (work: (mending: Mending) => void) => withLate(said(MENDING), loadMending, work);

/** How long rows are judged in a row before the screen may be drawn, ms. */
const A_WHILE = 30;

/** Types cells anew, and judges their rows at once. */
export function typeCells(cells: readonly Cell[]): void {
  withMending((mending) => change(({ records }) => mending.mended(records, cells)));
}

/** Puts pasted cells into the table, from a cell to the right and down its rows. */
export function pasteCells(text: string, at: number, cell: number): void {
  withMending((mending) => {
    const rows = (useClass.getState().looked?.members ?? []).map(({ row }) => row - 1).filter((row) => row >= at);
    typeCells(mending.pasted(text, rows, cell));
  });
}

/** Adds a learner at the end of the table, or to a new one. */
export function addLearner(): void {
  withMending((mending) => {
    const { table, looked } = useClass.getState();
    const { units } = useBench.getState().project;
    const before = table ?? newFile(mending, units);
    const name = words`Learner ${number((looked?.members.length ?? 0) + 1, 0)}`;
    const records = mending.withLearner(before.records, name);
    if (!table) {
      useClass.setState({ table: { ...before, records, first: records } });
      lookThroughTable(true);
    } else change(() => records);
  });
}

function newFile({ newTable }: Mending, units: 'cm' | 'inch'): ClassFile {
  const records = newTable(units);
  return { name: words`class.csv`, records, first: records };
}

/** Hands the table with its cells mended to the browser. */
export function saveTable(): void {
  const { table } = useClass.getState();
  if (table)
    withMending(({ writeRecords }) =>
      download(writeRecords(table.records), 'text/csv', table.name.replace(/(\.[a-z]{1,4})?$/i, '.csv')),
    );
}

/** One step back in the table: cells, or the table that was there before. */
export const undoTable = (): void => step(stepBack, words`Undone in the table.`);
export const redoTable = (): void => step(stepForward, words`Redone in the table.`);

function step(go: typeof stepBack, told: string): void {
  const { table, history } = useClass.getState();
  const returned: Returned<ClassFile> | undefined = table && go(history, () => table);
  if (!table || !returned) return;
  useClass.setState({ table: returned.to, history: returned.history, refused: undefined });
  sayAloud(told);
  if (returned.to.first === table.first) judgeAgain(table);
  else lookThroughTable(true);
}

function change(make: (table: ClassFile) => ClassFile['records']): void {
  const { table, history } = useClass.getState();
  if (!table) return;
  const records = make(table);
  useClass.setState({ table: { ...table, records }, history: remember(history, table) });
  judgeAgain(table);
}

/** Judges the rows that are not as they were. */
function judgeAgain({ records: before }: ClassFile): void {
  const { table } = useClass.getState();
  const changed = (table?.records.records ?? []).flatMap((cells, at) => (cells === before.records[at] ? [] : [at + 1]));
  withMending((mending) => void judgeRows(mending, changed));
}

/** Row by row, with the table as it stands by then; many of them leave the screen time in between. */
async function judgeRows({ lookAtRow }: Mending, rows: readonly number[]): Promise<void> {
  const { first } = useClass.getState().table ?? {};
  let judged = new Map<number, Member>();
  let since = performance.now();
  const show = () => {
    useClass.setState(({ looked, table }) => {
      if (!looked) return {};
      const known = new Set(looked.members.map(({ row }) => row));
      const added = [...judged.values()].filter(({ row }) => !known.has(row));
      const there = looked.members.filter(({ row }) => row <= (table?.records.records.length ?? 0));
      const members = [...there.map((member) => judged.get(member.row) ?? member), ...added];
      return { looked: { ...looked, members: members.sort((a, b) => a.row - b.row) } };
    });
    judged = new Map();
    since = performance.now();
  };
  for (const row of rows) {
    const { table, project } = useClass.getState();
    if (!table || !project || table.first !== first) return;
    judged.set(row, lookAtRow(table.records, row, project));
    if (performance.now() - since < A_WHILE) continue;
    show();
    await new Promise((go) => setTimeout(go));
  }
  show();
}
