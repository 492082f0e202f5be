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

/** Tells a fault that no panel can tell: once, however often it comes. */
export function noteFault(what: string, thrown: unknown, again?: () => void): void {
  const mark = `${what} ${thrown instanceof Error ? thrown.message : thrownText(thrown)}`;
  if (heard.has(mark) && !again) return;
  heard.add(mark);
  if (heard.size > MOST && !again) return;
  const fault: Fault = { what, thrown, at: new Date() };
  useOutside.setState({ told: again ? { fault, again } : { fault } });
}

/** Takes back what was told of a part that can be drawn again. */
export function takeBack(what: string): void {
  for (const mark of heard) if (mark.startsWith(`${what} `)) heard.delete(mark);
  useOutside.setState(({ told }) => (told?.fault.what === what ? { told: undefined } : {}));
}

/** Forgets what was heard: only for tests, which begin anew. */
export function forgetFaults(): void {
  heard.clear();
  useOutside.setState({ told: undefined });
}
