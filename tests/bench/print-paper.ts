import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { COUNTED_PAPERS, countSheets, posterIsHere } from './count-sheets';
import { LONG_WORK, type LongWork } from './long-work';
import { pdfKitPen, pdfLibPen } from './pens';
import { type PdfTiming, timePdf, type Way } from './time-pdf';

/** Runs of each way to write the same PDF. */
const PDF_RUNS = 15;

const others: readonly Way[] = [
  {
    name: 'pdf-lib and its fontkit',
    begin: async (font, page) => {
      const { pen, bytes } = await pdfLibPen(page.width, page.height, font);
      return { start: () => pen, bytes };
    },
  },
  {
    name: 'pdfkit',
    begin: async (font, page) => {
      const { pen, bytes } = pdfKitPen(page.width, page.height, font);
      return { start: () => pen, bytes };
    },
  },
];

/** The print font as the command line reads it. */
export const benchFont = (): Uint8Array =>
  readFileSync(new URL('../../public/fonts/legwork-print.ttf', import.meta.url));

/** Bodies whose sheets are counted. */
const COUNTED = 200;

/** The sheets of many legs, ours beside others'. */
export function printSheets(): void {
  console.log(`\nSheets for a leg, the average of ${COUNTED} bodies`);
  const head = ['plain', 'pdfposter', 'ours', 'tips', 'by area', '÷ area', 'saved', 'above', 'ms'];
  console.log(`${''.padEnd(24)}${head.map((word) => word.padStart(10)).join('')}`);
  for (const paper of COUNTED_PAPERS) {
    for (const overlap of [10, 0]) {
      const { plain, poster, ours, tips, bound, ratio, saved, above, time } = countSheets(
        paper,
        COUNTED,
        overlap,
        benchFont(),
      );
      const figures = [
        plain.toFixed(2),
        poster?.toFixed(2) ?? '–',
        ours.toFixed(2),
        tips.toFixed(2),
        bound.toFixed(2),
        ratio.toFixed(3),
        `${(100 * saved).toFixed(1)} %`,
        String(above),
        time.toFixed(0),
      ];
      const name = `${paper.sheet}, overlap ${overlap} mm`.padEnd(24);
      console.log(`${name}${figures.map((figure) => figure.padStart(10)).join('')}`);
    }
  }
  console.log(
    posterIsHere()
      ? 'pdfposter knows no overlap and prints blank sheets: it stands beside ours without overlap.'
      : 'pdfposter is not installed (Debian: pdfposter): its sheets could not be counted.',
  );
}

/** The tiled PDF of the example by three libraries, then the long work, each in a process of its own. */
export async function printPaper(): Promise<void> {
  printPdfs('Node', await timePdf(benchFont(), PDF_RUNS, others));
  const script = fileURLToPath(new URL('long-work-alone.ts', import.meta.url));
  const done = Object.keys(LONG_WORK).map((name) => {
    const said = execFileSync(process.execPath, ['--import', 'tsx', script, name], { encoding: 'utf8' });
    return JSON.parse(said) as LongWork;
  });
  printLongWork('Node (greatest resident set)', done);
}

/** Rows of a small class and of a large one: the memory of both should be the same. */
const CLASSES = [100, 1000] as const;

/** Classes of a table, each in a process of its own: patterns, fit sheets, handouts, drawings and the summary. */
export function printClasses(): void {
  const script = fileURLToPath(new URL('class-alone.ts', import.meta.url));
  const done = CLASSES.map((rows) => {
    const said = execFileSync(process.execPath, ['--import', 'tsx', script, String(rows)], { encoding: 'utf8' });
    return JSON.parse(said) as LongWork;
  });
  printLongWork('Node (greatest resident set)', done);
}

export function printPdfs(where: string, timings: readonly PdfTiming[]): void {
  console.log(`\nThe example’s PDF on A4, ${where}: milliseconds, bytes`);
  console.log(`${''.padEnd(34)}${'cold'.padStart(9)}${'p50'.padStart(9)}${'bytes'.padStart(9)}`);
  for (const { name, cold, p50, bytes } of timings) {
    console.log(
      `${name.padEnd(34)}${cold.toFixed(0).padStart(9)}${p50.toFixed(1).padStart(9)}${String(bytes).padStart(9)}`,
    );
  }
}

export function printLongWork(where: string, works: readonly LongWork[]): void {
  console.log(`\nLong work, ${where}`);
  const head = ['seconds', 'pages', 'kB', 'told', 'silent s', 'MB'];
  console.log(`${''.padEnd(34)}${head.map((word) => word.padStart(9)).join('')}`);
  for (const { name, seconds, pages, bytes, told, silence, memory } of works) {
    const figures = [
      seconds.toFixed(1),
      String(pages),
      (bytes / 1000).toFixed(0),
      String(told),
      (silence / 1000).toFixed(2),
      (memory / 1e6).toFixed(0),
    ];
    console.log(`${name.padEnd(34)}${figures.map((figure) => figure.padStart(9)).join('')}`);
  }
}
