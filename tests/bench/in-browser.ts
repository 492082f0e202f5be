import { LONG_WORK, type LongWork, longWork } from './long-work';
import { timeDrafts } from './time-drafts';
import { type PdfTiming, timePdf } from './time-pdf';

/** What Chromium alone tells of its memory. */
interface ToldMemory {
  readonly memory?: { readonly usedJSHeapSize: number };
}

/** Our PDF as the page writes it, and the long work with the heap that it took; the font comes as numbers. */
async function timePaper(
  font: readonly number[],
  runs: number,
): Promise<{ readonly pdf: readonly PdfTiming[]; readonly long: readonly LongWork[] }> {
  const bytes = Uint8Array.from(font);
  const pdf = await timePdf(bytes, runs, []);
  const used = () => (performance as ToldMemory).memory?.usedJSHeapSize ?? Number.NaN;
  const long: LongWork[] = [];
  for (const name of Object.keys(LONG_WORK) as (keyof typeof LONG_WORK)[]) long.push(await longWork(name, bytes, used));
  return { pdf, long };
}

declare global {
  interface Window {
    timeDrafts?: typeof timeDrafts;
    timePaper?: typeof timePaper;
  }
}

window.timeDrafts = timeDrafts;
window.timePaper = timePaper;
