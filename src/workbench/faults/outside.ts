import { create } from 'zustand';
import { type Fault, thrownText } from './fault';

/** A fault that has no panel of its own to be told in. */
export interface Outside {
  readonly fault: Fault;
  /** Tries once more, where that can be done. */
  readonly again?: () => void;
}

/** The fault that is told above the table, until it is put away. */
export const useOutside = create<{ readonly told: Outside | undefined }>()(() => ({ told: undefined }));

/** Each is told once, and after so many different ones nobody reads another. */
const MOST = 8;
const heard = new Set<string>();

interface NoteOptions extends Pick<Fault, 'done'> {
  /** Tries once more, where that can be done. */
  readonly again?: (() => void) | undefined;
}

/** Tells a fault that no panel can tell: once, however often it comes. */
export function noteFault(what: string, thrown: unknown, { again, done }: NoteOptions = {}): void {
  const mark = `${what} ${thrownText(thrown)}`;
  if (heard.has(mark) && !again) return;
  heard.add(mark);
  if (heard.size > MOST && !again) return;
  const fault: Fault = { what, thrown, at: new Date(), ...(done && { done }) };
  useOutside.setState({ told: again ? { fault, again } : { fault } });
}

/** Takes back what was told of a part that can be drawn again. */
export function takeBack(what: string): void {
  for (const mark of heard) if (mark.startsWith(`${what} `)) heard.delete(mark);
  useOutside.setState(({ told }) => (told?.fault.what === what ? { told: undefined } : {}));
}

/** Browsers report through the same event that a size was measured late, which is no fault. */
const NO_FAULT = /^ResizeObserver loop/;

/**
 * Hears what goes wrong outside of any panel: in what a press, a timer or a promise did. The browser's console has it as
 * well.
 *
 * @returns ends it
 */
export function hearFaults(): () => void {
  const onError = ({ error, message, filename }: ErrorEvent) => {
    // What is put into pages by a browser's additions is nobody's business here.
    if (NO_FAULT.test(message) || (filename !== '' && !filename.startsWith(location.origin))) return;
    noteFault('What was asked for last', error ?? message, { done: true });
  };
  const onRejection = ({ reason }: PromiseRejectionEvent) =>
    noteFault('What was asked for last', reason, { done: true });
  window.addEventListener('error', onError);
  window.addEventListener('unhandledrejection', onRejection);
  return () => {
    window.removeEventListener('error', onError);
    window.removeEventListener('unhandledrejection', onRejection);
  };
}

/** Forgets what was heard: only for tests, which begin anew. */
export function forgetFaults(): void {
  heard.clear();
  useOutside.setState({ told: undefined });
}
