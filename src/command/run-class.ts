import { readFile } from 'node:fs/promises';
import { printFontName } from '../drawing';
import {
  CLASS_KINDS,
  type ClassKind,
  carriedOut,
  classWork,
  emptyTable,
  type MadeMember,
  readClass,
  safeFileName,
} from '../files';
import { number, own, printProblem, words } from '../words';
import type { DraftOrder } from './arguments';
import { baseName } from './names';
import { DONE, refuse, refuseError, type Surroundings, tellNotes, WRONG } from './outcome';
import { readBytes, readProjectFile, readProjectStream } from './read-project';
import { placeOf, startWriting, writeFiles } from './write-files';

/**
 * A class from one project and a table of bodies, or an empty table to fill in.
 *
 * @returns the exit code, as of the command; refused where no row could be drafted
 */
export async function runClass(order: DraftOrder, around: Surroundings): Promise<number> {
  const [path] = order.projects;
  const opened = path === '-' ? await readProjectStream(around.input) : await readProjectFile(path);
  if (!opened.ok)
    return refuse(
      around,
      opened.problems.map((problem) => printProblem(problem, 'cm')),
    );
  tellNotes(around, path ?? '-', opened.notes);
  const project = opened.value;
  const { units } = project;
  const name = path === '-' ? safeFileName(project.name) : baseName(path);
  try {
    if (order.table === undefined) {
      const table = { name: `${name}.bodies.csv`, content: await emptyTable(project) };
      for (const written of writeFiles({ ...placeOf(order, around), keepsFiles: true }, [table])) around.say(written);
      return DONE;
    }
    const bytes = await readBytes(order.table);
    const read = bytes.ok ? await readClass(bytes.value, project) : bytes;
    if (!read.ok)
      return refuse(
        around,
        read.problems.map((problem) => `${order.table}: ${printProblem(problem, units)}`),
      );
    const fontName = printFontName([...read.value.rows.map((row) => row.name), JSON.stringify(project)].join(' '));
    const font = await readFile(new URL(`../../public/fonts/${fontName}`, import.meta.url));
    const writing = startWriting(placeOf(order, around));
    try {
      const write = writing.begin(`${name}.class.zip`);
      const set = { table: read.value, project, kinds: kindsOf(order) };
      const work = await classWork(set, { font, date: around.now() }, write);
      const members = await carriedOut(work, { onProgress: around.progress, signal: around.signal });
      const none = members.every(({ figures }) => figures === undefined);
      const paths = none ? [] : writing.finish();
      tellUnmade(members, around);
      if (none) return refuse(around, [words`${own(order.table)}: table: no row can be drafted; nothing was written`]);
      for (const written of paths) around.say(written);
      const wrong = members.some(({ figures }) => figures === undefined || figures.verdict === 'wrong');
      return order.strict && wrong ? WRONG : DONE;
    } finally {
      writing.abandon();
    }
  } catch (error) {
    return refuseError(around, error, units);
  }
}

/** A ZIP is what a class comes in; it needs no asking for. */
function kindsOf({ files }: DraftOrder): readonly ClassKind[] {
  const asked = files === 'all' ? [] : files.filter((kind): kind is ClassKind => kind !== 'zip');
  return asked.length === 0 ? CLASS_KINDS : asked;
}

/** Each row that was not made, a line for each reason. */
function tellUnmade(members: readonly MadeMember[], around: Surroundings): void {
  for (const { row, name, figures, look } of members)
    if (!figures)
      for (const reason of look)
        around.complain(words`row ${number(row)} (${own(name)}): ${own(reason)}`.replace(/\s*\n\s*/g, ' '));
}
