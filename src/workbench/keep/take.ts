import { safeFileName, writePdf, writeReport, writeSvg } from '../../files';
import { useBench } from '../store/bench';
import { download } from './download';

/** A file that can be taken away, and what it is for. */
export interface Takeable {
  readonly kind: 'pdf' | 'svg' | 'report';
  readonly name: string;
  readonly what: string;
}

export const TAKEABLE: readonly Takeable[] = [
  { kind: 'pdf', name: 'Pattern, PDF', what: 'to print on these sheets at true scale' },
  { kind: 'svg', name: 'Drawing, SVG', what: 'one true-size drawing with named layers' },
  { kind: 'report', name: 'Report', what: 'every measure and check, for a program' },
];

/** Writes one of the files and hands it to the browser; says so if that fails. */
export async function takeFile(kind: Takeable['kind']): Promise<void> {
  const { draft, tell } = useBench.getState();
  const base = safeFileName(draft.project.name);
  try {
    if (kind === 'svg') {
      download(writeSvg(draft), 'image/svg+xml', `${base}.svg`);
    } else if (kind === 'report') {
      download(writeReport(draft), 'application/json', `${base}.report.json`);
    } else {
      const bytes = await writePdf(draft, { font: await printFont(), date: new Date() });
      download(bytes as Uint8Array<ArrayBuffer>, 'application/pdf', `${base}.pdf`);
    }
  } catch {
    tell({ tone: 'refused', text: 'The file could not be written. Nothing here was changed; please try again.' });
  }
}

async function printFont(): Promise<Uint8Array> {
  const answer = await fetch(`${import.meta.env.BASE_URL}fonts/legwork-print.ttf`);
  if (!answer.ok) throw new Error('no print font');
  return new Uint8Array(await answer.arrayBuffer());
}
