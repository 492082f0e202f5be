import { type Phrase, said, say, words } from '../../words';
import { useBench } from '../store/bench';
import type { Remedy } from '../store/state';
import { download } from './download';
import { saveToFile } from './save';

/** What of a fault is of use to those who mend it; nothing of the project, unless the person puts it in. */
interface FaultDetails {
  readonly program: 'Legwork';
  readonly when: string;
  readonly doing: string;
  readonly fault: string;
  readonly where: readonly string[];
  readonly browser: string;
  readonly project?: unknown;
}

/** Faults of what goes on by itself that were told already: the same one may come with every keystroke. */
const told = new Set<string>();

/**
 * Says that something that was asked for went wrong inside Legwork itself, and offers its details as a file to send.
 *
 * @param doing what it was about, as in “while making a file”
 * @param goesOn what the person still has, and should do
 * @returns the sentence
 */
export function tellFault(doing: Phrase, fault: unknown, goesOn = say`Nothing here was changed.`): string {
  console.error(fault);
  const details = detailsOf(doing, fault);
  const text = isNotFetched(fault)
    ? said(NOT_FETCHED)
    : words`Something went wrong inside Legwork while ${doing}: that is its fault, not yours. ${goesOn}`;
  useBench.getState().tell({ tone: 'refused', text, remedies: remediesFor(details) });
  return text;
}

/** The same of something that goes on by itself: each fault is said once. */
export function tellFaultOnce(doing: Phrase, fault: unknown, goesOn: Phrase): void {
  const { fault: what } = detailsOf(doing, fault);
  if (told.has(doing.template + what)) return;
  told.add(doing.template + what);
  tellFault(doing, fault, goesOn);
}

/** What is said where a part that is loaded late does not come. */
export const NOT_FETCHED = say`A part of Legwork could not be fetched: is there a network? Nothing here was changed; try again, or load the page again.`;

/** Whether a part that is loaded late did not come: each browser has its own words for that. */
const isNotFetched = (fault: unknown): boolean =>
  fault instanceof TypeError && /dynamically imported module|importing a module script/i.test(fault.message);

const remediesFor = (details: FaultDetails): readonly Remedy[] => [
  { name: words`save this project as a file`, act: saveToFile },
  { name: words`save what went wrong, to send it to us`, act: () => saveDetails(details) },
  {
    name: words`the same with this project in it`,
    act: () => saveDetails({ ...details, project: useBench.getState().project }),
  },
];

const saveDetails = (details: FaultDetails): void =>
  download(`${JSON.stringify(details, null, 2)}\n`, 'application/json', 'legwork-fault.json');

function detailsOf({ template: doing }: Phrase, fault: unknown): FaultDetails {
  const error = fault instanceof Error || fault instanceof DOMException ? fault : undefined;
  // What stands in quotation marks may come from the project, and the first lines repeat it.
  const message = (error?.message ?? String(fault)).replace(/(["'“`‘]).*["'”`’]/gs, '“…”');
  const where = (error?.stack ?? '').split('\n').filter((line) => /^\s+at |@/.test(line));
  return {
    program: 'Legwork',
    when: new Date().toISOString(),
    doing,
    fault: `${error?.name ?? typeof fault}: ${message}`,
    where,
    browser: navigator.userAgent,
  };
}

/** Says every fault that nothing else has caught; the function puts an end to it. */
export function watchFaults(): () => void {
  const ending = new AbortController();
  const { signal } = ending;
  const goesOn = say`What you see goes on; if it behaves oddly, load the page again.`;
  const doing = say`it was at work`;
  // Without an error it is a remark of the browser's, or comes from somewhere else than this page.
  window.addEventListener('error', ({ error }) => error && tellFaultOnce(doing, error, goesOn), { signal });
  window.addEventListener('unhandledrejection', ({ reason }) => tellFaultOnce(doing, reason, goesOn), {
    signal,
  });
  return () => ending.abort();
}
