import { printFontName } from '../../drawing';
import type { Progress } from '../../files';
import { printProblem, said, say, spokenName } from '../../words';
import { download } from '../save/download';
import { NOT_FETCHED, tellFault } from '../save/faults';
import { useBench } from '../store/bench';
import type {
  ClassOrder,
  FilesAnswer,
  FilesOrder,
  LookedThrough,
  MadeFile,
  ProjectsOrder,
  WorkerFault,
} from './files-worker';

/** Files that are being made; they can be stopped at any moment. */
export interface Taking {
  /** Settled when all is over: written, stopped, or refused and said so. */
  readonly over: Promise<void>;
  readonly stop: () => void;
}

/** Who hears what became of long work. */
interface Hearer {
  /** Told how far it has come. */
  readonly onProgress: (progress: Progress) => void;
  /** Told under which name the browser was given the file. */
  readonly onSaved?: (fileName: string) => void;
  /** Given the class where it was only looked through. */
  readonly onLooked?: (looked: LookedThrough) => void;
  /** Told why there is nothing; said on the screen's strip where it is left out. */
  readonly onRefused?: (sentences: readonly string[]) => void;
}

/**
 * Makes files beside the screen and hands them to the browser; says so if that fails.
 *
 * @param order projects unlike in their names, or the table of a class
 */
export function takeFiles(order: ProjectsOrder | ClassOrder, hearer: Hearer): Taking {
  const { id } = useBench.getState();
  const worker = new Worker(new URL('./files-worker.ts', import.meta.url), { type: 'module' });
  let settle = () => {};
  const over = new Promise<void>((resolve) => {
    settle = resolve;
  });
  const end = () => {
    // Whatever it is in the midst of: nothing of it is kept.
    worker.terminate();
    settle();
  };
  const refused = hearer.onRefused ?? ((sentences) => refuse(sentences.join(' ')));
  worker.onmessage = ({ data }: MessageEvent<FilesAnswer>) => {
    if ('progress' in data) {
      hearer.onProgress(data.progress);
      return;
    }
    if ('file' in data) {
      handOver(data.file);
      hearer.onSaved?.(data.file.name);
      if (data.lastPrint) useBench.getState().notePrint(id, data.lastPrint);
    } else if ('looked' in data) hearer.onLooked?.(data.looked);
    else if ('problems' in data) {
      const { units } = useBench.getState().project;
      refused(data.problems.map((problem) => printProblem(problem, units)));
    } else failed(faultFrom(data.fault));
    end();
  };
  const failed = (fault: unknown) => {
    // A sheet that lies over the strip says it, too.
    hearer.onRefused?.([tellFault(say`making a file`, fault)]);
  };
  worker.onerror = (event) => {
    // Only a fault of the program has words and a place; a worker that does not come has none.
    if (event instanceof ErrorEvent && event.message) failed(event.error ?? new Error(event.message));
    else refused([said(NOT_FETCHED)]);
    end();
  };
  printFont(order).then(
    (font) => {
      try {
        worker.postMessage({ ...order, font, date: new Date(), language: spokenName() } satisfies FilesOrder);
      } catch (fault) {
        failed(fault);
        end();
      }
    },
    () => {
      refused([said(NOT_FETCHED)]);
      end();
    },
  );
  return { over, stop: end };
}

/** A fault of the worker's, which can't be handed over as it is. */
const faultFrom = ({ name, message, stack }: WorkerFault): Error =>
  Object.assign(new Error(message), { name, stack: stack ?? '' });

const refuse = (text: string) => useBench.getState().tell({ tone: 'refused', text });

const TYPES: Readonly<Record<string, string>> = {
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  json: 'application/json',
  txt: 'text/plain',
  zip: 'application/zip',
};

function handOver({ name, content }: MadeFile): void {
  const type = TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
  download(content as BlobPart, type, name);
}

/** A table as it was read, or as it was mended on the screen. */
const textOfTable = (table: ClassOrder['table']): string =>
  table instanceof Uint8Array ? new TextDecoder().decode(table) : JSON.stringify(table);

async function printFont(order: ProjectsOrder | ClassOrder): Promise<Uint8Array> {
  const names =
    'table' in order ? textOfTable(order.table) + JSON.stringify(order.project) : JSON.stringify(order.projects);
  const font = printFontName(names);
  const answer = await fetch(`${import.meta.env.BASE_URL}fonts/${font}`);
  if (!answer.ok) throw new Error('no print font');
  return new Uint8Array(await answer.arrayBuffer());
}
