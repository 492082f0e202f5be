import type { Draft } from '../../project';
import { saveProject } from '../../project';
import { writeDxf } from '../dxf/lazy-dxf';
import { writeHandout } from '../guide/handout';
import { writeGuideHtml } from '../guide/html';
import { nestOf } from '../nest/nest';
import { MOST_NESTED } from '../nest/styles';
import { writeNestedSvg } from '../nest/svg';
import type { PdfOptions } from '../pen/options';
import { writeReport } from '../report/report';
import { writeBlocksSvg } from '../svg/blocks';
import { writeSvg } from '../svg/pieces';
import { type Progress, partOf, type Steps } from '../work/steps';
import { zipFiles } from '../zip/lazy-zip';
import type { FinishedFile } from '../zip/zip';
import { FILE_KINDS, type FileKind, SINGLE_FILES, type SingleFile, type TogetherFile } from './kinds';
import {
  nestedLargeWork,
  nestedWork,
  pdfWork,
  projectorWork,
  samplesWork,
  writeFitPdf,
  writeGuidePdf,
  writeLargePdf,
  writePrinterTestPdf,
  writeReferencePdf,
} from './lazy-pdf';

/** One draft to make files of, and what they are called. */
export interface FileJob {
  /** Without an ending; unlike every other job's. */
  readonly name: string;
  readonly draft: Draft;
}

/** How long a kind takes against the quick ones, so that progress runs evenly. */
const WEIGHT: Readonly<Partial<Record<FileKind, number>>> = { pdf: 12, large: 3, projector: 2, samples: 3, nested: 20 };
const weightOf = (kind: FileKind): number => WEIGHT[kind] ?? 1;

const TOGETHER = ['samples', 'nested'] as const satisfies readonly TogetherFile[];

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
  const made = new Map<string, readonly FinishedFile[]>();
  // What goes into the ZIP is made even where it is not written beside it.
  const needed = wanted.includes('zip') ? [...new Set([...wanted, ...all])] : wanted;
  const tasks = [
    ...jobs.flatMap((job) =>
      SINGLE_FILES.filter(({ kind }) => needed.includes(kind)).map(({ kind, ending }) => ({
        key: keyOf(job, kind),
        says: `${job.name}${ending}`,
        weight: weightOf(kind),
        steps: () => singleFile(job, kind, ending, options),
      })),
    ),
    ...TOGETHER.filter((kind) => needed.includes(kind)).map((kind) => ({
      key: kind,
      says: kind,
      weight: weightOf(kind),
      steps: () => togetherFiles(jobs, kind, options),
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
    TOGETHER.filter((kind) => kinds.includes(kind)).flatMap((kind) => made.get(kind) ?? []);
  const files = [...singles, ...together(wanted)];
  if (!wanted.includes('zip')) return files;
  yield { share: 1, doing: 'packing' };
  const folder = (job: FileJob) => (jobs.length > 1 ? `${job.name}/` : '');
  const packed = [
    ...jobs.flatMap((job) => [
      { name: `${folder(job)}${job.name}.legwork.json`, content: saveProject(job.draft.project) },
      ...SINGLE_FILES.flatMap(({ kind }) => written(kind, job)).map((file) => ({
        ...file,
        name: folder(job) + file.name,
      })),
    ]),
    ...together(needed),
  ];
  return [...files, { name: `${groupName(jobs)}.zip`, content: await zipFiles(packed, options.date) }];
}

const keyOf = ({ name }: FileJob, kind: FileKind): string => `${kind} ${name}`;

/** What files of several jobs together are called. */
function groupName(jobs: readonly FileJob[]): string {
  const [first] = jobs;
  const name = first?.name ?? 'pattern';
  return jobs.length > 1 ? `${name}-and-${jobs.length - 1}-more` : name;
}

async function* singleFile(
  { name, draft }: FileJob,
  kind: SingleFile,
  ending: string,
  options: Omit<PdfOptions, 'fileName'>,
): Making {
  const fileName = name + ending;
  const content = yield* contentOf(draft, kind, { ...options, fileName });
  return [{ name: fileName, content }];
}

async function* contentOf(
  draft: Draft,
  kind: SingleFile,
  options: PdfOptions,
): AsyncGenerator<Progress, FinishedFile['content']> {
  switch (kind) {
    case 'pdf':
      return yield* onwards(await pdfWork(draft, options));
    case 'large':
      return await writeLargePdf(draft, options);
    case 'printer-test':
      return await writePrinterTestPdf(draft.project, options);
    case 'reference':
      return await writeReferencePdf(draft.project, options);
    case 'projector':
      return yield* onwards(await projectorWork(draft, options));
    case 'svg':
      return writeSvg(draft);
    case 'blocks':
      return writeBlocksSvg(draft);
    case 'dxf':
      return await writeDxf(draft);
    case 'r12':
      return await writeDxf(draft, 'R12');
    case 'guide':
      return await writeGuidePdf(draft, options);
    case 'guide-html':
      return writeGuideHtml(draft);
    case 'fit':
      return await writeFitPdf(draft, options);
    case 'report':
      return writeReport(draft);
    case 'handout':
      return writeHandout(draft);
  }
}

/** Steps of either kind as asynchronous ones. */
async function* onwards<T>(steps: Steps<T>): AsyncGenerator<Progress, T> {
  return yield* steps;
}

async function* togetherFiles(
  jobs: readonly FileJob[],
  kind: TogetherFile,
  options: Omit<PdfOptions, 'fileName'>,
): Making {
  if (kind === 'nested') return yield* nestedFiles(jobs, options);
  const [first, ...others] = jobs.map(({ draft }) => draft);
  if (!first) return [];
  const content = yield* onwards(await samplesWork([first, ...others], options));
  return [{ name: `${groupName(jobs)}.samples.pdf`, content }];
}

async function* nestedFiles(jobs: readonly FileJob[], options: Omit<PdfOptions, 'fileName'>): Making {
  const nest = nestOf(jobs.map(({ draft }) => draft));
  const name = `${groupName(jobs)}.nested`;
  const fileName = `${name}.pdf`;
  const sheets = yield* partOf(await nestedWork(nest, { ...options, fileName }), 0, 0.8, '');
  const large = yield* partOf(await nestedLargeWork(nest, options), 0.8, 0.95, '');
  return [
    { name: fileName, content: sheets },
    { name: `${name}.large.pdf`, content: large },
    { name: `${name}.svg`, content: writeNestedSvg(nest) },
  ];
}
