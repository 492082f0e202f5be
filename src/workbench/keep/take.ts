import type { FileKind, FinishedFile, Progress } from '../../files';
import { printProblem } from '../../length';
import { useBench } from '../store/bench';
import { download } from './download';
import type { FilesAnswer, FilesOrder } from './files-worker';

/** Files that are being made; they can be stopped at any moment. */
export interface Taking {
  /** Settled when all is over: written, stopped, or refused and said so. */
  readonly over: Promise<void>;
  readonly stop: () => void;
}

/**
 * Makes files beside the screen and hands them to the browser; says so if that fails.
 *
 * @param projects unlike in their names; at least one
 * @param onProgress told how far it has come
 */
export function takeFiles(
  projects: FilesOrder['projects'],
  kinds: readonly FileKind[],
  onProgress: (progress: Progress) => void,
): Taking {
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
  worker.onmessage = ({ data }: MessageEvent<FilesAnswer>) => {
    if ('progress' in data) {
      onProgress(data.progress);
      return;
    }
    if ('file' in data) handOver(data.file);
    else if ('problems' in data) {
      const { units } = useBench.getState().project;
      refuse(data.problems.map((problem) => printProblem(problem, units)).join(' '));
    } else refuse(NOT_WRITTEN);
    end();
  };
  worker.onerror = () => {
    refuse(NOT_WRITTEN);
    end();
  };
  printFont()
    .then((font) => worker.postMessage({ projects, kinds, font, date: new Date() } satisfies FilesOrder))
    .catch(() => {
      refuse(NOT_WRITTEN);
      end();
    });
  return { over, stop: end };
}

const NOT_WRITTEN = 'The file could not be written. Nothing here was changed; please try again.';

const refuse = (text: string) => useBench.getState().tell({ tone: 'refused', text });

const TYPES: Readonly<Record<string, string>> = {
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  json: 'application/json',
  txt: 'text/plain',
  zip: 'application/zip',
};

function handOver({ name, content }: FinishedFile): void {
  const type = TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
  download(content as string | Uint8Array<ArrayBuffer>, type, name);
}

async function printFont(): Promise<Uint8Array> {
  const answer = await fetch(`${import.meta.env.BASE_URL}fonts/legwork-print.ttf`);
  if (!answer.ok) throw new Error('no print font');
  return new Uint8Array(await answer.arrayBuffer());
}
