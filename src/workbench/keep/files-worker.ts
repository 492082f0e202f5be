import {
  carriedOut,
  type FileJob,
  type FileKind,
  type FinishedFile,
  makeFiles,
  type Progress,
  zipFiles,
} from '../../files';
import { type Problem, Refusal } from '../../length';
import { draft, type Project, withFewestSheets } from '../../project';

/** What is asked of the worker. */
export interface FilesOrder {
  /** The first one's paper and units count where they are drawn together. */
  readonly projects: readonly { readonly name: string; readonly project: Project }[];
  readonly kinds: readonly FileKind[];
  readonly font: Uint8Array;
  readonly date: Date;
}

/** What the worker says: how far it has come, then one of the others. */
export type FilesAnswer =
  | { readonly progress: Progress }
  | { readonly file: FinishedFile }
  | { readonly problems: readonly Problem[] }
  | { readonly fault: string };

const answer = (message: FilesAnswer) => postMessage(message);

addEventListener('message', ({ data }: MessageEvent<FilesOrder>) => {
  void filled(data)
    .then((file) => answer({ file }))
    .catch((error: unknown) =>
      answer(error instanceof Refusal ? { problems: error.problems } : { fault: String(error) }),
    );
});

/** One file: what was asked for, or all of it in a ZIP where it is several. */
async function filled({ projects, kinds, font, date }: FilesOrder): Promise<FinishedFile> {
  const jobs: FileJob[] = [];
  for (const [i, { name, project }] of projects.entries()) {
    answer({
      progress: { share: 0, doing: projects.length > 1 ? `drafting ${i + 1} of ${projects.length}` : 'drafting' },
    });
    const result = draft(project);
    if (!result.ok) throw new Refusal(result.problems);
    jobs.push({ name, draft: withFewestSheets(result.value) });
  }
  const files = await carriedOut(makeFiles(jobs, kinds, { font, date }), {
    onProgress: (progress) => answer({ progress }),
  });
  const [first, ...others] = files;
  if (!first) throw new Error('nothing was made');
  if (others.length === 0) return first;
  return { name: first.name.replace(/\.[^.]+$/, '.zip'), content: await zipFiles(files, date) };
}
