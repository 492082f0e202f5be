import { basename } from 'node:path';
import type { Progress } from '../files';
import { printProblem, Refusal, type Units } from '../length';

/** What the command touches of the world outside. */
export interface Surroundings {
  readonly input: AsyncIterable<Uint8Array | string>;
  readonly say: (line: string) => void;
  readonly complain: (line: string) => void;
  readonly now: () => Date;
  /** Shows how far the work has come, where somebody looks on. */
  readonly progress?: (progress: Progress) => void;
}

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
 * @throws what is neither a refusal nor the system's answer: a fault of the program
 */
export function refuseError(around: Surroundings, error: unknown, out: string, units: Units): number {
  if (error instanceof Refusal)
    return refuse(
      around,
      error.problems.map((problem) => printProblem(problem, units)),
    );
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  return refuse(around, [`--out: ${JSON.stringify(out)}: can't be written to (${code}); choose another folder`]);
}

/** A project file's name without what says that it is one. */
export function baseName(path: string): string {
  const name = basename(path);
  const short = name.replace(/\.legwork\.json$/i, '');
  return short === name ? name.replace(/\.json$/i, '') || 'pattern' : short || 'pattern';
}
