/** The codes by which a shell tells that a command was stopped: 128 and the signal's number. */
const CODES = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;

/** What of a process stops it. */
interface Stoppable {
  readonly on: (signal: keyof typeof CODES, act: () => void) => unknown;
  readonly exit: (code: number) => unknown;
}

/**
 * Ends a process that is told to end, once what it had begun is removed.
 *
 * @param program the process
 * @param farewell removes what was begun and says so
 */
export function stopOnSignals(program: Stoppable, farewell: () => void): void {
  for (const signal of ['SIGHUP', 'SIGINT', 'SIGTERM'] as const)
    program.on(signal, () => {
      farewell();
      program.exit(CODES[signal]);
    });
}
