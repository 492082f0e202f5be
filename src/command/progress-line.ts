import type { Progress } from '../files';
import { spelledOut } from '../length';
import { own, words } from '../words';

/** Milliseconds between two writings of the line; more often nobody can read it. */
const EVERY = 100;
/** Short work is done before anybody wonders. */
const PATIENCE = 600;

/** Where the line is shown. */
interface Terminal {
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly write: (text: string) => unknown;
}

/** One line at the foot of a terminal that says how far the work has come. */
export interface ProgressLine {
  readonly show: (progress: Progress) => void;
  /** Wipes the line, before something else is printed. */
  readonly wipe: () => void;
}

/**
 * A progress line on a terminal; where nobody looks on, as in a pipe, it shows nothing.
 *
 * @param terminal standard error
 * @param clock milliseconds, rising
 */
export function progressLine(terminal: Terminal, clock: () => number): ProgressLine {
  const start = clock();
  let last = start + PATIENCE - EVERY;
  let shown = false;
  return {
    show({ share, doing }) {
      if (terminal.isTTY !== true || clock() - last < EVERY) return;
      last = clock();
      shown = true;
      const percent = String(Math.floor(share * 100)).padStart(3);
      const text = words`${own(percent)} %  ${own(spelledOut(doing))}  (${own('Ctrl+C')} stops)`;
      terminal.write(`\r\x1b[K${text.slice(0, (terminal.columns ?? 80) - 1)}`);
    },
    wipe() {
      if (shown) terminal.write('\r\x1b[K');
      shown = false;
    },
  };
}
