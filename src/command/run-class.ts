import { closeSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
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
import { printProblem } from '../length';
import type { DraftOrder } from './arguments';
import { baseName, DONE, refuse, refuseError, type Surroundings, WRONG } from './outcome';
import { readBytes, readProjectFile, readProjectStream } from './read-project';
import { writeFiles } from './write-files';

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
  const project = opened.value;
  const { units } = project;
  const name = path === '-' ? safeFileName(project.name) : baseName(path);
  try {
    if (order.table === undefined) {
      const table = { name: `${name}.bodies.csv`, content: await emptyTable(project) };
      for (const written of await writeFiles(order.out, [table])) around.say(written);
      return DONE;
    }
    const bytes = await readBytes(order.table);
    const read = bytes.ok ? await readClass(bytes.value, project) : bytes;
    if (!read.ok)
      return refuse(
        around,
        read.problems.map((problem) => `${order.table}: ${printProblem(problem, units)}`),
      );
    const font = await readFile(new URL('../../public/fonts/legwork-print.ttf', import.meta.url));
    const members = await writtenPiecewise(order.out, `${name}.class.zip`, async (write) => {
      const work = await classWork(
        { table: read.value, project, kinds: kindsOf(order) },
        { font, date: around.now() },
        write,
      );
      const made = await carriedOut(work, { onProgress: around.progress });
      return { made, keep: made.some(({ figures }) => figures !== undefined) };
    });
    tellUnmade(members, around);
    if (members.every(({ figures }) => figures === undefined))
      return refuse(around, [`${order.table}: table: no row can be drafted; nothing was written`]);
    around.say(join(order.out, `${name}.class.zip`));
    const wrong = members.some(({ figures }) => figures === undefined || figures.verdict === 'wrong');
    return order.strict && wrong ? WRONG : DONE;
  } catch (error) {
    return refuseError(around, error, order.out, units);
  }
}

/** A ZIP is what a class comes in; it needs no asking for. */
const kindsOf = ({ files }: DraftOrder): readonly ClassKind[] =>
  files === 'all' ? CLASS_KINDS : files.filter((kind): kind is ClassKind => kind !== 'zip');

/** Each row that was not made, a line for each reason. */
function tellUnmade(members: readonly MadeMember[], around: Surroundings): void {
  for (const { row, name, figures, look } of members)
    if (!figures)
      for (const reason of look) around.complain(`row ${row} (${name}): ${reason}`.replace(/\s*\n\s*/g, ' '));
}

interface Written {
  readonly made: readonly MadeMember[];
  /** Whether the file is worth its place. */
  readonly keep: boolean;
}

/** Writes a file as it comes, beside its place until it is whole; what is stopped or goes wrong leaves nothing behind. */
async function writtenPiecewise(
  folder: string,
  name: string,
  work: (write: (bytes: Uint8Array) => void) => Promise<Written>,
): Promise<readonly MadeMember[]> {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, name);
  const begun = `${path}.part`;
  const file = openSync(begun, 'w');
  const away = () => rmSync(begun, { force: true });
  const stopped = () => {
    away();
    process.exit(130);
  };
  process.once('SIGINT', stopped);
  try {
    const { made, keep } = await work((bytes) => {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    });
    if (keep) renameSync(begun, path);
    return made;
  } finally {
    process.removeListener('SIGINT', stopped);
    closeSync(file);
    away();
  }
}
