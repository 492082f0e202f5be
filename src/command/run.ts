import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { safeFileName, writeHandout, writeLargePdf, writePdf, writeReport, writeSvg } from '../files';
import { type Problem, printProblem, Refusal, type Units } from '../length';
import { type Draft, draft } from '../project';
import { type DraftOrder, type FileKind, parseArguments, USAGE } from './arguments';
import { readProjectFile, readProjectStream } from './read-project';
import { type FinishedFile, writeFiles } from './write-files';

/** What the command touches of the world outside. */
export interface Surroundings {
  readonly input: AsyncIterable<Uint8Array | string>;
  readonly say: (line: string) => void;
  readonly complain: (line: string) => void;
  readonly now: () => Date;
}

/** Written. */
const DONE = 0;
/** Written, but a check says wrong and the caller is strict. */
const WRONG = 1;
/** Refused, nothing written. */
const REFUSED = 2;

/**
 * The command line: reads a project, drafts it, writes its files, prints their paths.
 *
 * @param words what stands after the command's own name
 * @returns the exit code: 0 written, 1 written but wrong (--strict), 2 refused
 */
export async function runDraft(words: readonly string[], around: Surroundings): Promise<number> {
  const parsed = parseArguments(words);
  if (!parsed.ok) return refuse(around, parsed.problems);
  if (parsed.order === 'help') {
    around.say(USAGE);
    return DONE;
  }
  const { order } = parsed;
  const opened = order.project === '-' ? await readProjectStream(around.input) : await readProjectFile(order.project);
  if (!opened.ok) return refuse(around, lines(opened.problems, 'cm'));
  const { units } = opened.value;
  const drafted = draft(opened.value);
  if (!drafted.ok) return refuse(around, lines(drafted.problems, units));
  const name = order.project === '-' ? safeFileName(opened.value.name) : baseName(order.project);
  try {
    const files = await finishedFiles(drafted.value, order, name, around.now());
    for (const path of await writeFiles(order.out, files)) around.say(path);
  } catch (error) {
    if (error instanceof Refusal) return refuse(around, lines(error.problems, units));
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return refuse(around, [
      `--out: ${JSON.stringify(order.out)}: can't be written to (${code}); choose another folder`,
    ]);
  }
  return order.strict && drafted.value.checks.some((check) => check.verdict === 'wrong') ? WRONG : DONE;
}

const lines = (problems: readonly Problem[], units: Units) => problems.map((problem) => printProblem(problem, units));

function refuse(around: Surroundings, sentences: readonly string[]): number {
  for (const sentence of sentences) around.complain(sentence.replace(/\s*\n\s*/g, ' '));
  return REFUSED;
}

/** A project file's name without what says that it is one. */
function baseName(path: string): string {
  const name = basename(path);
  const short = name.replace(/\.legwork\.json$/i, '');
  return short === name ? name.replace(/\.json$/i, '') || 'pattern' : short || 'pattern';
}

async function finishedFiles(
  drafted: Draft,
  { files }: DraftOrder,
  name: string,
  date: Date,
): Promise<readonly FinishedFile[]> {
  const needsFont = files.includes('pdf') || files.includes('large');
  const font = needsFont
    ? await readFile(new URL('../../public/fonts/legwork-print.ttf', import.meta.url))
    : new Uint8Array();
  const make: Readonly<Record<FileKind, () => Promise<FinishedFile>>> = {
    pdf: async () => {
      const fileName = `${name}.pdf`;
      return { name: fileName, content: await writePdf(drafted, { font, date, fileName }) };
    },
    large: async () => ({ name: `${name}.large.pdf`, content: await writeLargePdf(drafted, { font, date }) }),
    svg: async () => ({ name: `${name}.svg`, content: writeSvg(drafted) }),
    handout: async () => ({ name: `${name}.handout.txt`, content: writeHandout(drafted) }),
    report: async () => ({ name: `${name}.report.json`, content: writeReport(drafted) }),
  };
  const finished: FinishedFile[] = [];
  for (const kind of files) finished.push(await make[kind]());
  return finished;
}
