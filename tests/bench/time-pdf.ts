import { pdfWork } from '../../src/files/pdf/tiled';
import type { startPdf } from '../../src/files/pen/pen';
import { carriedOut } from '../../src/files/work/long-work';
import { type Draft, draft, exampleProject, sheetsOf } from '../../src/project';

/** What one way to write the tiled PDF of the example costs. */
export interface PdfTiming {
  readonly name: string;
  /** The first time, before the engine has compiled anything. */
  readonly cold: number;
  readonly p50: number;
  readonly bytes: number;
}

/** How the file is started, and what gives its bytes in the end; ours gives them itself. */
export interface Way {
  readonly name: string;
  readonly begin: (
    font: Uint8Array,
    page: { readonly width: number; readonly height: number },
  ) => Promise<{
    readonly start: typeof startPdf | undefined;
    readonly bytes: (() => Promise<Uint8Array>) | undefined;
  }>;
}

const OURS: Way = { name: 'ours (jsPDF)', begin: async () => ({ start: undefined, bytes: undefined }) };

/** The example's draft: an ankle-long leg on A4. */
export function exampleDraft(): Draft {
  const result = draft(exampleProject);
  if (!result.ok) throw new Error('the example can not be drafted');
  return result.value;
}

/**
 * The same sheets, line by line and word by word, through each way.
 *
 * @param others beside ours
 */
export async function timePdf(font: Uint8Array, runs: number, others: readonly Way[]): Promise<readonly PdfTiming[]> {
  const example = exampleDraft();
  const { paper } = sheetsOf(example);
  const page = { width: Math.min(paper.width, paper.height), height: Math.max(paper.width, paper.height) };
  const timings: PdfTiming[] = [];
  for (const { name, begin } of [OURS, ...others]) {
    let size = 0;
    const written = async () => {
      const from = performance.now();
      const { start, bytes } = await begin(font, page);
      const own = await carriedOut(pdfWork(example, { font, date: new Date(0) }, start));
      size = (bytes ? await bytes() : own).length;
      return performance.now() - from;
    };
    const cold = await written();
    const times: number[] = [];
    for (let i = 0; i < runs; i += 1) times.push(await written());
    timings.push({ name, cold, p50: times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN, bytes: size });
  }
  return timings;
}
