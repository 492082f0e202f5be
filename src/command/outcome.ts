import type { Progress } from '../files';
import { spelledOut, type Units } from '../length';
import { own, type Phrase, printProblem, Refusal, said, words } from '../words';
import type { Disk } from './disk';
import { faultPlaces } from './fault-places';
import { NotWritten } from './places';

/** What the command touches of the world outside. */
export interface Surroundings {
  readonly input: AsyncIterable<Uint8Array | string>;
  readonly say: (line: string) => void;
  readonly complain: (line: string) => void;
  readonly now: () => Date;
  /** Where who reads the terminal lives, as the system says it: `en_US.UTF-8`. */
  readonly locale?: string | undefined;
  /** Shows how far the work has come, where somebody looks on. */
  readonly progress?: (progress: Progress) => void;
  /** Where files are written, if not on the real disk. */
  readonly disk?: Disk;
  /** Stops the work; what was begun is removed at once. */
  readonly signal?: AbortSignal;
}

/** The same surroundings, to which nothing is said that could steer a terminal. */
export const plainSpoken = (around: Surroundings): Surroundings => ({
  ...around,
  say: (line) => around.say(spelledOut(line)),
  complain: (line) => around.complain(spelledOut(line)),
});

/** Written. */
export const DONE = 0;
/** Written, but a check says wrong and the caller is strict. */
export const WRONG = 1;
/** Refused, nothing written. */
const REFUSED = 2;

/** Says why there is nothing, a line for each reason. */
export function refuse(around: Surroundings, sentences: readonly string[]): number {
  for (const sentence of sentences) around.complain(sentence.replace(/\s*\n\s*/g, ' '));
  return REFUSED;
}

/**
 * Says what kept files from being made or written.
 *
 * @throws what is neither a refusal nor the disk's: a fault of the program
 */
export function refuseError(around: Surroundings, error: unknown, units: Units): number {
  const problems =
    error instanceof Refusal ? error.problems : error instanceof NotWritten ? [error.problem] : undefined;
  if (problems === undefined) throw error;
  return refuse(
    around,
    problems.map((problem) => printProblem(problem, units)),
  );
}

/** Says what a person should know about a file that was opened, a line for each. */
export function tellNotes(around: Surroundings, path: string, notes: readonly Phrase[]): void {
  for (const note of notes) around.complain(`${path}: ${said(note)}`);
}

/** The places of a fault in our own files, the innermost first; more of them help nobody. */
const PLACES = 3;

/** What to say of a fault of the program, in one line: what happened, and what to do about it. */
export function faultSentence(error: unknown): string {
  const { message, stack = '' } = error instanceof Error ? error : new Error(String(error));
  const places = faultPlaces(stack).slice(0, PLACES);
  const where = places.length > 0 ? ` (${places.join(' < ')})` : '';
  const what = message.trim().replace(/\s*\n\s*/g, ' ');
  return spelledOut(
    words`program: an error in Legwork, not in your files; nothing was written. Please report it with the project file: ${own(what + where)}`,
  );
}
