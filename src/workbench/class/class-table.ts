import { create } from 'zustand';
import { emptyTable, type Progress, safeFileName } from '../../files';
import { LARGEST_FILE, type Project } from '../../project';
import { number, own, type PhraseValue, words } from '../../words';
import { download } from '../save/download';
import { isStaleBeyondBody } from '../store/asked';
import { useBench } from '../store/bench';
import type { BenchState } from '../store/state';
import type { LookedThrough } from '../take/files-worker';
import { takeFiles } from '../take/take';

/** The table of a class that was chosen, and what came of looking through it. */
interface ClassState {
  readonly table: { readonly name: string; readonly bytes: Uint8Array } | undefined;
  /** Whose design it was looked through with. */
  readonly project: Project | undefined;
  readonly looked: LookedThrough | undefined;
  readonly problems: readonly string[];
  readonly looking: (Progress & { readonly stop: () => void; readonly since: number }) | undefined;
}

const NOTHING: ClassState = {
  table: undefined,
  project: undefined,
  looked: undefined,
  problems: [],
  looking: undefined,
};

/** Kept while the page is open, so that the sheet may be put away and opened again. */
export const useClass = create<ClassState>()(() => NOTHING);

/** The design that every row is drafted with: what is chosen on the table, whatever its own body still waits for. */
const designOf = ({ project, draft }: BenchState): Project => ({ ...project, body: draft.project.body });

/** Whether the choices can be used for a class: something wrong with the body on the table does not matter to it. */
export const designIsReady = (state: BenchState): boolean => !isStaleBeyondBody(state);

/** Takes a table and looks through it. */
export async function chooseTable(file: File): Promise<void> {
  useClass.getState().looking?.stop();
  if (file.size > LARGEST_FILE) {
    // Told by its size, before it is read.
    const [size, most] = [file.size, LARGEST_FILE].map((bytes) => number(bytes / 1e6, 1)) as [PhraseValue, PhraseValue];
    const told = words`“${own(file.name)}” has ${size} MB; a table of bodies has at most ${most} MB.`;
    useClass.setState({ ...NOTHING, problems: [told] });
    return;
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  useClass.setState({ ...NOTHING, table: { name: file.name, bytes } });
  lookThroughTable();
}

/** Looks through the chosen table, again where the design has changed since. */
export function lookThroughTable(): void {
  const { table, project: before, looking } = useClass.getState();
  const bench = useBench.getState();
  const project = designOf(bench);
  if (!table || looking || !designIsReady(bench) || JSON.stringify(before) === JSON.stringify(project)) return;
  useClass.setState({ project, looked: undefined, problems: [] });
  const since = performance.now();
  const { over, stop } = takeFiles(
    { table: table.bytes, project, kinds: undefined, name: '' },
    {
      onProgress: (progress) => useClass.setState({ looking: { ...progress, stop, since } }),
      onLooked: (looked) => useClass.setState({ looked }),
      onRefused: (problems) => useClass.setState({ problems }),
    },
  );
  useClass.setState({ looking: { share: 0, doing: '', stop, since } });
  void over.then(() => {
    useClass.setState({ looking: undefined });
    // Stopped before its end: the table is put away, or it would look like one without rows.
    const { looked, problems } = useClass.getState();
    if (!looked && problems.length === 0) useClass.setState(NOTHING);
  });
}

/** Hands an empty table to the browser, to fill in. */
export async function saveEmptyTable(): Promise<void> {
  const { project } = useBench.getState();
  download(await emptyTable(project), 'text/csv', `${safeFileName(project.name)}.bodies.csv`);
}
