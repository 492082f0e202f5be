import { readFile } from 'node:fs/promises';
import { printFontName, unprintedTold } from '../drawing';
import { carriedOut, type FileJob, makeFiles, readDrawing, safeFileName } from '../files';
import { checksOf, draft, type Project, withFewestSheets } from '../project';
import { blocksTaken } from '../trace';
import { englishOf, number, own, printPhrase, printProblem, type Result, said, speakNamed, words } from '../words';
import { type DraftOrder, parseArguments } from './arguments';
import { baseName, sameName } from './names';
import { DONE, plainSpoken, refuse, refuseError, type Surroundings, tellNotes, WRONG } from './outcome';
import { readProjectFile, readProjectStream, readText } from './read-project';
import { runClass } from './run-class';
import { usage } from './usage';
import { placeOf, writeFiles } from './write-files';

/**
 * The command line: reads projects, drafts them, writes their files, prints their paths.
 *
 * @param given what stands after the command's own name
 * @returns the exit code: 0 written, 1 written but wrong (--strict), 2 refused
 * @throws Stopped where the signal said so; a fault of the program
 */
export async function runDraft(given: readonly string[], surroundings: Surroundings): Promise<number> {
  const around = plainSpoken(surroundings);
  if (around.locale !== undefined) await speakNamed(englishOf(around.locale));
  const parsed = parseArguments(given);
  if (!parsed.ok) return refuse(around, parsed.problems);
  if (parsed.order === 'help') {
    for (const line of usage()) around.say(line);
    return DONE;
  }
  const { order } = parsed;
  if (order.words !== undefined) await speakNamed(order.words);
  if (order.table !== undefined || order.emptyTable) return await runClass(order, around);
  const drafted = await draftedJobs(order, around);
  if (!drafted.ok) return refuse(around, drafted.lines);
  const { jobs } = drafted;
  const units = jobs[0]?.draft.project.units ?? 'cm';
  try {
    const names = jobs.flatMap(({ draft: { project } }) => namesOf(project));
    for (const told of names.flatMap((name) => unprintedTold(name) ?? [])) around.complain(said(told));
    const font = await readFile(new URL(`../../public/fonts/${printFontName(names.join(''))}`, import.meta.url));
    const making = makeFiles(jobs, order.files, { font, date: around.now() });
    const files = await carriedOut(making, { onProgress: around.progress, signal: around.signal });
    for (const path of writeFiles(placeOf(order, around), files)) around.say(path);
  } catch (error) {
    return refuseError(around, error, units);
  }
  const wrong = jobs.some((job) => checksOf(job.draft).some((check) => check.verdict === 'wrong'));
  return order.strict && wrong ? WRONG : DONE;
}

type Drafted =
  | { readonly ok: true; readonly jobs: readonly FileJob[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** Every project drafted, or every reason against any of them; where there are several, each says which it is of. */
async function draftedJobs({ projects, blocks }: DraftOrder, around: Surroundings): Promise<Drafted> {
  const jobs: FileJob[] = [];
  const lines: string[] = [];
  const brought = blocks === undefined ? undefined : await blocksFrom(blocks, around);
  if (brought && !brought.ok)
    return { ok: false, lines: brought.problems.map((problem) => `${blocks}: ${printProblem(problem, 'cm')}`) };
  for (const [i, path] of projects.entries()) {
    around.progress?.({ share: 0, doing: words`drafting ${number(i + 1)} of ${number(projects.length)}` });
    const which = projects.length > 1 ? `${path}: ` : '';
    const opened = path === '-' ? await readProjectStream(around.input) : await readProjectFile(path);
    if (opened.ok) tellNotes(around, path, opened.notes);
    const result = opened.ok ? draft({ ...opened.value, ...brought?.value }) : opened;
    if (!result.ok) {
      lines.push(...result.problems.map((problem) => which + printProblem(problem, unitsOf(opened))));
      continue;
    }
    const name = path === '-' ? safeFileName(result.value.project.name) : baseName(path);
    if (jobs.some((job) => sameName(job.name, name)))
      lines.push(
        words`project: ${own(JSON.stringify(path))}: another project is called "${own(name)}" too; rename one of them`,
      );
    jobs.push({ name, draft: withFewestSheets(result.value) });
  }
  return lines.length > 0 ? { ok: false, lines } : { ok: true, jobs };
}

/** The blocks of a drawing, as the part of a project that holds them; what was found by shapes alone is told. */
async function blocksFrom(path: string, around: Surroundings): Promise<Result<Pick<Project, 'block'>>> {
  const text = await readText(path);
  const read = text.ok ? await readDrawing(text.value) : text;
  if (!read.ok) return read;
  const taken =
    'pair' in read.value ? { ok: true as const, value: { ...read.value, told: [] } } : blocksTaken(read.value.drawing);
  if (!taken.ok) return taken;
  for (const note of taken.value.told) around.complain(`${path}: ${printPhrase(note, 'cm')}`);
  return { ok: true, value: { block: { source: 'drawn', ...taken.value.pair } } };
}

/** What people wrote that is printed. */
const namesOf = ({ name, body }: Project): readonly string[] => [...new Set([name, body.label])];

const unitsOf = (opened: Result<Project>) => (opened.ok ? opened.value.units : 'cm');
