/** A fault of the program, as it is told and saved: what could not be done, what was thrown, and when. */
export interface Fault {
  /** What could not be drawn or done, as a sentence begins with it: “The checks”. */
  readonly what: string;
  readonly thrown: unknown;
  readonly at: Date;
  /** The parts of the screen that were being drawn, the innermost first. */
  readonly parts?: string;
}

/** A fault as it is told, with what can be done about it there. */
export interface FaultTold {
  readonly fault: Fault;
  readonly onAgain: () => void;
  /** Goes away from what can't be drawn. */
  readonly onLeave?: (() => void) | undefined;
}

/** A late part of the program that did not come: no fault of it, but of the way to it. */
export class NotLoaded extends Error {}

/** Whether a part did not come, rather than failed. */
export const isNotLoaded = ({ thrown }: Fault): boolean => thrown instanceof NotLoaded;

/** All that somebody needs who is to mend it; nothing of the project, and nothing of its link. */
export function faultDetails({ what, thrown, at, parts }: Fault): string {
  const script = document.querySelector<HTMLScriptElement>('script[type="module"]')?.src ?? '';
  const lines = [
    `Legwork, ${script.slice(script.lastIndexOf('/') + 1)}: ${what}`,
    at.toISOString(),
    navigator.userAgent,
    '',
    thrownText(thrown),
  ];
  const cause = thrown instanceof Error ? thrown.cause : undefined;
  if (cause !== undefined) lines.push('', thrownText(cause));
  if (parts !== undefined) lines.push('', parts.trim());
  return `${lines.join('\n')}\n`;
}

/** What was thrown, with where; anything may be thrown, and some of it can't even be printed. */
export function thrownText(thrown: unknown): string {
  try {
    if (!(thrown instanceof Error)) return String(thrown);
    const said = `${thrown.name}: ${thrown.message}`;
    const stack = thrown.stack ?? '';
    // Some browsers begin the stack with what was said, others don't.
    return stack.includes(thrown.message) ? stack : `${said}\n${stack}`;
  } catch {
    return 'something that can’t be printed';
  }
}
