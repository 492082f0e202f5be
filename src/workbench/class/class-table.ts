import { create } from 'zustand';
import { emptyTable, type Progress, safeFileName } from '../../files';
import { LARGEST_FILE, type Project } from '../../project';
import { number, own, type PhraseValue, words } from '../../words';
import { download } from '../save/download';
import { isStaleBeyondBody } from '../store/asked';
import { useBench } from '../store/bench';
import { type History, noHistory, remember } from '../store/history';
import type { BenchState } from '../store/state';
import type { ClassOrder, LookedThrough } from '../take/files-worker';
import { takeFiles } from '../take/take';
import type { ClassFile } from './class-file';

/** The table of a class, what came of looking through it, and why another one could not be taken. */
export interface ClassState {
  readonly table: ClassFile | undefined;
  /** Tables and cells that can be come back to: a wrong file, too. */
  readonly history: History<ClassFile>;
  /** Whose design it was looked through with. */
  readonly project: Project | undefined;
  readonly looked: Omit<LookedThrough, 'records'> | undefined;
  readonly refused: Refused | undefined;
  readonly looking: (Progress & { readonly stop: () => void; readonly since: number }) | undefined;
}

/** A table that can't be used, and all reasons why. */
interface Refused {
  readonly name: string;
  readonly problems: readonly string[];
}

/** Kept while the page is open, so that the sheet may be put away and opened again; and over a reload by {@link keepClassTable}. */
export const useClass = create<ClassState>()(() => ({
  table: undefined,
  history: noHistory,
  project: undefined,
  looked: undefined,
  refused: undefined,
  looking: undefined,
}));

/** The design that every row is drafted with: what is chosen on the table, whatever its own body still waits for. */
const designOf = ({ project, draft }: BenchState): Project => ({ ...project, body: draft.project.body });

/** Whether the choices can be used for a class: something wrong with the body on the table does not matter to it. */
export const designIsReady = (state: BenchState): boolean => !isStaleBeyondBody(state);

/** Takes a table and looks through it; one that can't be used leaves the one before as it is. */
export async function chooseTable(file: File): Promise<void> {
  useClass.getState().looking?.stop();
  const { name } = file;
  if (file.size > LARGEST_FILE) {
    // Told by its size, before it is read.
    const [size, most] = [file.size, LARGEST_FILE].map((bytes) => number(bytes / 1e6, 1)) as [PhraseValue, PhraseValue];
    const told = words`“${own(name)}” has ${size} MB; a table of bodies has at most ${most} MB.`;
    useClass.setState({ refused: { name, problems: [told] } });
    return;
  }
  lookThrough(name, new Uint8Array(await file.arrayBuffer()), (looked) => {
    const { table, history } = useClass.getState();
    const { records } = looked;
    useClass.setState({ table: { name, records, first: records } });
    if (table) useClass.setState({ history: remember(history, table) });
  });
}

/** Looks through the table, again where the design has changed since; or, where it was opened anew, in any case. */
export function lookThroughTable(anyhow = false): void {
  const { table, project: before, looking } = useClass.getState();
  const bench = useBench.getState();
  const same = !anyhow && JSON.stringify(before) === JSON.stringify(designOf(bench));
  if (!table || looking || !designIsReady(bench) || same) return;
  useClass.setState({ looked: undefined });
  lookThrough(table.name, table.records, () => undefined);
}

/** Looks through a table beside the screen; what is found is shown once `taken` has made the table the one on the sheet. */
function lookThrough(name: string, table: ClassOrder['table'], taken: (looked: LookedThrough) => void): void {
  const project = designOf(useBench.getState());
  useClass.setState({ refused: undefined });
  const since = performance.now();
  const { over, stop } = takeFiles(
    { table, project, kinds: undefined, name: '' },
    {
      onProgress: (progress) => useClass.setState({ looking: { ...progress, stop, since } }),
      onLooked: (looked) => {
        taken(looked);
        const { members, unused, leftOut } = looked;
        useClass.setState({ project, looked: { members, unused, leftOut } });
      },
      onRefused: (problems) => useClass.setState({ refused: { name, problems } }),
    },
  );
  useClass.setState({ looking: { share: 0, doing: '', stop, since } });
  void over.then(() => useClass.setState({ looking: undefined }));
}

/** Hands an empty table to the browser, to fill in. */
export async function saveEmptyTable(): Promise<void> {
  const { project } = useBench.getState();
  download(await emptyTable(project), 'text/csv', `${safeFileName(project.name)}.bodies.csv`);
}
