import {
  type ClassKind,
  type ClassTable,
  carriedOut,
  classOf,
  classWork,
  type FileJob,
  type FileKind,
  type FinishedFile,
  loadMending,
  lookWork,
  type Member,
  makeFiles,
  type Progress,
  readRecords,
  type TableRecords,
  zipFiles,
} from '../../files';
import { draft, type LastPrint, type Project, withFewestSheets, withLastPrint } from '../../project';
import { number, type Problem, Refusal, type Result, speakNamed, words } from '../../words';

/** Files of one project, or of several. */
export interface ProjectsOrder {
  /** The first one's paper and units count where they are drawn together. */
  readonly projects: readonly { readonly name: string; readonly project: Project }[];
  readonly kinds: readonly FileKind[];
}

/** A class of a table: its set of files, or only a look through it where no kinds are named. */
export interface ClassOrder {
  /** The bytes of the CSV file, or its records where it was read before. */
  readonly table: Uint8Array | TableRecords;
  readonly project: Project;
  readonly kinds: readonly ClassKind[] | undefined;
  /** What the set is called. */
  readonly name: string;
}

/** What is asked of the worker. */
export type FilesOrder = (ProjectsOrder | ClassOrder) & {
  readonly font: Uint8Array;
  readonly date: Date;
  /** The page's, by its name: the worker speaks none before it is told. */
  readonly language: string;
};

/** A class as it was looked through. */
export interface LookedThrough extends Pick<ClassTable, 'unused' | 'leftOut'> {
  /** As they were read, with the columns that every body needs. */
  readonly records: TableRecords;
  readonly members: readonly Member[];
}

/** A file to be taken away. */
export interface MadeFile {
  readonly name: string;
  readonly content: FinishedFile['content'] | Blob;
}

/** What the worker says: how far it has come, then one of the others. */
export type FilesAnswer =
  | { readonly progress: Progress }
  | { readonly file: MadeFile; readonly lastPrint?: LastPrint | undefined }
  | { readonly looked: LookedThrough }
  | { readonly problems: readonly Problem[] }
  | { readonly fault: WorkerFault };

/** What can be told of a fault of the program. */
export interface WorkerFault {
  readonly name: string;
  readonly message: string;
  readonly stack: string | undefined;
}

const answer = (message: FilesAnswer) => postMessage(message);
const onlooker = { onProgress: (progress: Progress) => answer({ progress }) };

addEventListener('message', ({ data }: MessageEvent<FilesOrder>) => {
  void speakNamed(data.language)
    .then(() => ('table' in data ? classed(data, data) : filled(data, data)))
    .then(answer)
    .catch((error: unknown) =>
      answer(error instanceof Refusal ? { problems: error.problems } : { fault: faultOf(error) }),
    );
});

function faultOf(error: unknown): WorkerFault {
  if (!(error instanceof Error)) return { name: 'thrown', message: String(error), stack: undefined };
  return { name: error.name, message: error.message, stack: error.stack };
}

type Options = Pick<FilesOrder, 'font' | 'date'>;

/** One file: what was asked for, or all of it in a ZIP where it is several. */
async function filled({ projects, kinds }: ProjectsOrder, { font, date }: Options): Promise<FilesAnswer> {
  const jobs: FileJob[] = [];
  for (const [i, { name, project }] of projects.entries()) {
    answer({
      progress: {
        share: 0,
        doing:
          projects.length > 1 ? words`drafting ${number(i + 1, 0)} of ${number(projects.length, 0)}` : words`drafting`,
      },
    });
    const result = draft(project);
    if (!result.ok) throw new Refusal(result.problems);
    jobs.push({ name, draft: withFewestSheets(result.value) });
  }
  const files = await carriedOut(makeFiles(jobs, kinds, { font, date }), onlooker);
  const [first, ...others] = files;
  if (!first) throw new Error('nothing was made');
  const lastPrint = printedBy(kinds, jobs, date);
  if (others.length === 0) return { file: first, lastPrint };
  return { file: { name: first.name.replace(/\.[^.]+$/, '.zip'), content: zipFiles(files, date) }, lastPrint };
}

/** What lies on the table once the files are printed: of one project whose sheets are in them. */
function printedBy(kinds: readonly FileKind[], jobs: readonly FileJob[], date: Date): LastPrint | undefined {
  const [job, ...others] = jobs;
  if (!job || others.length > 0 || !kinds.some((kind) => WITH_SHEETS.includes(kind))) return undefined;
  return withLastPrint(job.draft, date).lastPrint;
}

const WITH_SHEETS: readonly FileKind[] = ['pdf', 'changed', 'zip'];

/** This much of a ZIP is held before the browser is given it, which may put it away on the disk. */
const HELD = 4_000_000;

/** What was read, or the refusal that says why it could not be. */
function wholeOf<T>(read: Result<T>): T {
  if (read.ok) return read.value;
  throw new Refusal(read.problems);
}

/** A look through a table: columns that every body needs and that are missing are there to be filled in. */
async function lookedThrough(read: TableRecords, project: Project): Promise<LookedThrough> {
  const { withNeededColumns } = await loadMending();
  const records = withNeededColumns(read, project.units);
  const table = wholeOf(await classOf(records, project));
  const members = await carriedOut(await lookWork(table, project.units), onlooker);
  return { records, members, unused: table.unused, leftOut: table.leftOut };
}

/** A look through a class, or its whole set. */
async function classed({ table, project, kinds, name }: ClassOrder, { font, date }: Options): Promise<FilesAnswer> {
  const records = 'records' in table ? table : wholeOf(await readRecords(table));
  if (!kinds) return { looked: await lookedThrough(records, project) };
  const read = wholeOf(await classOf(records, project));
  const put: Blob[] = [];
  let held: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const putAway = () => {
    put.push(new Blob(held));
    held = [];
    size = 0;
  };
  const write = (bytes: Uint8Array) => {
    held.push(bytes as Uint8Array<ArrayBuffer>);
    size += bytes.length;
    if (size > HELD) putAway();
  };
  await carriedOut(await classWork({ table: read, project, kinds }, { font, date }, write), onlooker);
  putAway();
  return { file: { name: `${name}.class.zip`, content: new Blob(put, { type: 'application/zip' }) } };
}
