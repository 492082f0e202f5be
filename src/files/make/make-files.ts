import type { Draft } from '../../project';
import { saveProject, withLastPrint } from '../../project';
import { words } from '../../words';
import { MOST_NESTED } from '../nest/styles';
import type { PdfOptions } from '../pen/options';
import { type LongWork, type Progress, partOf } from '../work/long-work';
import { type FinishedFile, zipFiles } from '../zip/zip';
import {
  FILE_KINDS,
  type FileKind,
  type Kind,
  SINGLE_FILES,
  type SingleKind,
  TOGETHER_FILES,
  type TogetherKind,
} from './kinds';

/** One draft to make files of, and what they are called. */
export interface FileJob {
  /** Without an ending; unlike every other job's. */
  readonly name: string;
  readonly draft: Draft;
}

type Making = AsyncGenerator<Progress, readonly FinishedFile[]>;

/**
 * Makes files: every kind that is asked for of every job, what is made of all jobs together, and all of it in one ZIP.
 *
 * The same drafts and options give the same bytes.
 *
 * @param jobs at least one
 * @param asked the kinds, or `all` for every kind that these jobs can have
 * @returns the files in the order of the kinds, job by job
 * @throws Refusal where a kind can't be made of these drafts
 */
export async function* makeFiles(
  jobs: readonly FileJob[],
  asked: readonly FileKind[] | 'all',
  options: Omit<PdfOptions, 'fileName'>,
): Making {
  const several = jobs.length > 1;
  const all = FILE_KINDS.filter(
    (kind) => (kind !== 'nested' || (several && jobs.length <= MOST_NESTED)) && (kind !== 'samples' || several),
  );
  const wanted = asked === 'all' ? all : asked;
  // What is asked for by its name and can't be made is refused; of everything it is left out.
  const asks: readonly FileKind[] = asked === 'all' ? [] : asked;
  const made = new Map<string, readonly FinishedFile[]>();
  // What goes into the ZIP is made even where it is not written beside it.
  const needed = wanted.includes('zip') ? [...new Set([...wanted, ...all])] : wanted;
  const tasks = [
    ...jobs.flatMap((job) =>
      SINGLE_FILES.filter(
        (entry) => asks.includes(entry.kind) || (needed.includes(entry.kind) && isOf(entry, job.draft)),
      ).map((entry) => ({
        key: keyOf(job, entry.kind),
        says: `${job.name}${entry.ending}`,
        weight: weightOf(entry),
        steps: () => singleFile(job, entry, options),
      })),
    ),
    ...TOGETHER_FILES.filter(({ kind }) => needed.includes(kind)).map((entry) => ({
      key: entry.kind,
      says: entry.kind,
      weight: weightOf(entry),
      steps: () => togetherFiles(jobs, entry, options),
    })),
  ];
  const whole = tasks.reduce((sum, { weight }) => sum + weight, 0) || 1;
  let done = 0;
  for (const { key, says, weight, steps } of tasks) {
    yield { share: done / whole, doing: says };
    made.set(key, yield* partOf(steps(), done / whole, (done + weight) / whole, says));
    done += weight;
  }
  const written = (kind: FileKind, job: FileJob) => made.get(keyOf(job, kind)) ?? [];
  const singles = jobs.flatMap((job) =>
    SINGLE_FILES.filter(({ kind }) => wanted.includes(kind)).flatMap(({ kind }) => written(kind, job)),
  );
  const together = (kinds: readonly FileKind[]) =>
    TOGETHER_FILES.filter(({ kind }) => kinds.includes(kind)).flatMap(({ kind }) => made.get(kind) ?? []);
  const files = [...singles, ...together(wanted)];
  if (!wanted.includes('zip')) return files;
  yield { share: 1, doing: words`packing` };
  const folder = (job: FileJob) => (jobs.length > 1 ? `${job.name}/` : '');
  const packed = [
    ...jobs.flatMap((job) => [
      { name: `${folder(job)}${job.name}.legwork.json`, content: saveProject(withLastPrint(job.draft, options.date)) },
      ...SINGLE_FILES.flatMap(({ kind }) => written(kind, job)).map((file) => ({
        ...file,
        name: folder(job) + file.name,
      })),
    ]),
    ...together(needed),
  ];
  return [...files, { name: `${groupName(jobs)}.zip`, content: zipFiles(packed, options.date) }];
}

const keyOf = ({ name }: FileJob, kind: FileKind): string => `${kind} ${name}`;

/** What files of several jobs together are called. */
function groupName(jobs: readonly FileJob[]): string {
  const [first] = jobs;
  const name = first?.name ?? 'pattern';
  return jobs.length > 1 ? `${name}-and-${jobs.length - 1}-more` : name;
}

const isOf = ({ of }: SingleKind, draft: Draft): boolean => of?.(draft) ?? true;

const weightOf = ({ weight = 1 }: Kind): number => weight;

async function* singleFile(
  { name, draft }: FileJob,
  { ending, load }: SingleKind,
  options: Omit<PdfOptions, 'fileName'>,
): Making {
  const fileName = name + ending;
  const write = await load();
  const made = write(draft, { ...options, fileName });
  const content = isLong(made) ? yield* onwards(made) : made;
  return [{ name: fileName, content }];
}

const isLong = <T extends FinishedFile['content']>(made: T | LongWork<T>): made is LongWork<T> =>
  typeof made === 'object' && 'next' in made;

/** Steps of either kind as asynchronous ones. */
async function* onwards<T>(steps: LongWork<T>): AsyncGenerator<Progress, T> {
  return yield* steps;
}

async function* togetherFiles(
  jobs: readonly FileJob[],
  { load }: TogetherKind,
  options: Omit<PdfOptions, 'fileName'>,
): Making {
  const [first, ...others] = jobs.map(({ draft }) => draft);
  if (!first) return [];
  const write = await load();
  return yield* write([first, ...others], groupName(jobs), options);
}
