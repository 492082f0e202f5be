import { dirname, join, resolve } from 'node:path';
import { own, type Phrase, type Problem, printProblem, say } from '../words';
import type { Disk } from './disk';

/** Where files are written, and what must not be written over. */
export interface Place {
  /** Made where it is missing. */
  readonly folder: string;
  /** The paths of all files that were read. */
  readonly inputs: readonly string[];
  /** Whether a file that is there already is worth more than a new one. */
  readonly keepsFiles?: boolean;
  readonly disk?: Disk | undefined;
  /** Ends the writing, at once and without a trace. */
  readonly signal?: AbortSignal | undefined;
}

/** Thrown where files can't be written. No Refusal: those are of a body, and a class goes on with the next one. */
export class NotWritten extends Error {
  readonly problem: Problem;

  constructor(folder: string, phrase: Phrase) {
    const problem = { field: '--out', value: folder, phrase };
    super(printProblem(problem, 'cm'));
    this.problem = problem;
  }
}

/**
 * What to throw where all is as it was before.
 *
 * @param name the file's, or nothing where it is the folder
 */
export const unchanged = (folder: string, name: string, reason: Phrase): NotWritten =>
  new NotWritten(
    folder,
    name === ''
      ? say`can’t be written to: ${reason}; nothing was changed.`
      : say`${own(name)} can’t be written to: ${reason}; nothing was changed.`,
  );

/**
 * Makes a folder and those that it lies in, as far as they are missing.
 *
 * @param made is given each one that was made, so that they can be removed again also where this fails
 * @throws NotWritten where a file is in the way; what the system says
 */
export function makeFolders(disk: Disk, folder: string, made: string[]): void {
  const missing: string[] = [];
  for (let at = resolve(folder); ; at = dirname(at)) {
    const there = disk.statSync(at, { throwIfNoEntry: false });
    if (there?.isDirectory()) break;
    if (there) throw new NotWritten(folder, say`can’t be written to: there is a file of that name; name a folder.`);
    missing.unshift(at);
    if (at === dirname(at)) break;
  }
  // Another run may be quicker; what it made is not ours to remove.
  for (const at of missing) if (disk.mkdirSync(at, { recursive: true }) !== undefined) made.push(at);
}

/**
 * Whether a file has a name already.
 *
 * @throws NotWritten where what has it is nothing that we would write, or may not be lost; what the system says
 */
export function isThere(disk: Disk, { folder, inputs, keepsFiles }: Place, name: string): boolean {
  const there = disk.lstatSync(join(folder, name), { throwIfNoEntry: false, bigint: true });
  if (!there) return false;
  const refused = (reason: Phrase) => unchanged(folder, name, reason);
  if (there.isDirectory()) throw refused(say`there is a folder of that name`);
  if (there.isSymbolicLink()) throw refused(say`there is a link of that name`);
  if (!there.isFile()) throw refused(say`what has that name isn’t a plain file`);
  if ((there.mode & 0o222n) === 0n) throw refused(say`a file of that name may only be read`);
  if (keepsFiles) throw refused(say`it is there already, and may have been filled in; choose another folder`);
  for (const input of inputs) {
    const read = disk.statSync(input, { throwIfNoEntry: false, bigint: true });
    if (read && read.dev === there.dev && read.ino === there.ino)
      throw refused(say`it is one of the files that were read; choose another folder`);
  }
  return true;
}
