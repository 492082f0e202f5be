import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { drawingInk, inkBounds, placedDrawings, uprightPlaces } from '../../src/drawing';
import { drawPaths } from '../../src/files/pen/draw-paths';
import { frameAt } from '../../src/files/pen/page-frame';
import { startPdf } from '../../src/files/pen/pen';
import { reportPiece } from '../../src/files/report/report';
import { type Draft, draft, sheetsOf, withFewestSheets } from '../../src/project';
import { plainCount } from '../outside/paper/plain-grid';
import { benchProjects } from './bodies';

/** A paper whose sheets are counted, and what it shows within margins of 10 mm. */
export const COUNTED_PAPERS = [
  { sheet: 'A4', width: 190, height: 277 },
  { sheet: 'Letter', width: 195.9, height: 259.4 },
  { sheet: 'A3', width: 277, height: 400 },
  { sheet: 'Tabloid', width: 259.4, height: 411.8 },
] as const;
type CountedPaper = (typeof COUNTED_PAPERS)[number];

/** Sheets for one leg, on the average of many bodies. */
export interface SheetCounts {
  readonly overlap: number;
  /** What a general program makes of the leg's own page; it knows no overlap, and may not be installed. */
  readonly poster: number | undefined;
  readonly plain: number;
  readonly ours: number;
  readonly bound: number;
  /** Ours ÷ the bound, and what is saved against the plain grid; each the average of the bodies' own. */
  readonly ratio: number;
  readonly saved: number;
  /** Small pieces that are cut out of the sheets and joined like them. */
  readonly tips: number;
  /** How long ours are looked for, in milliseconds. */
  readonly time: number;
  /** How often ours were more than the plain grid's: never. */
  readonly above: number;
}

/** The general program: it cuts a large page into sheets. */
const POSTER: string = 'pdfposter';
/** Counts the sheets of a leg three ways. */
export function countSheets(paper: CountedPaper, bodies: number, overlap: number, font: Uint8Array): SheetCounts {
  const counts = benchProjects(bodies).map((project) => {
    const result = draft({ ...project, paper: { ...project.paper, sheet: paper.sheet, overlap } });
    if (!result.ok) throw new Error('a bench body was refused');
    const fewest = withFewestSheets(result.value);
    const start = performance.now();
    const { sheets, lowerBound } = sheetsOf(fewest);
    return {
      time: performance.now() - start,
      tips: sheets.reduce((sum, { tips }) => sum + tips.length, 0),
      ours: sheets.length,
      bound: lowerBound,
      plain: plainCount(result.value.pieces.map(reportPiece), { ...paper, overlap }),
      poster: overlap === 0 && posterIsHere() ? posterPages(result.value, paper, font) : Number.NaN,
    };
  });
  const mean = (value: (one: (typeof counts)[number]) => number) =>
    counts.reduce((sum, one) => sum + value(one), 0) / counts.length;
  const poster = mean((one) => one.poster);
  return {
    overlap,
    poster: Number.isNaN(poster) ? undefined : poster,
    plain: mean((one) => one.plain),
    ours: mean((one) => one.ours),
    bound: mean((one) => one.bound),
    tips: mean((one) => one.tips),
    time: mean((one) => one.time),
    ratio: mean((one) => one.ours / one.bound),
    saved: mean((one) => 1 - one.ours / one.plain),
    above: counts.filter((one) => one.ours > one.plain).length,
  };
}

let here: boolean | undefined;

/** Whether `pdfposter` is installed. */
export function posterIsHere(): boolean {
  if (here !== undefined) return here;
  try {
    execFileSync(POSTER, ['--version'], { stdio: 'ignore' });
    here = true;
  } catch {
    here = false;
  }
  return here;
}

/** Pages that `pdfposter` cuts a page as large as the drawing into, each what a sheet shows without its margins. */
function posterPages({ printed }: Draft, paper: CountedPaper, font: Uint8Array): number {
  const drawings = placedDrawings(printed, uprightPlaces(printed));
  const box = inkBounds(drawingInk(drawings));
  const frame = frameAt(0, 0, box, { x: 1, y: 1 });
  const pen = startPdf(frame.box.right, frame.box.bottom, font, { title: '', subject: '', date: new Date(0) });
  drawPaths(pen, drawings, box, frame, 1);
  const folder = mkdtempSync(join(tmpdir(), 'poster-'));
  try {
    const [from, to] = [join(folder, 'leg.pdf'), join(folder, 'sheets.pdf')];
    writeFileSync(from, pen.bytes());
    execFileSync(POSTER, ['-m', `${paper.width}x${paper.height}mm`, '-s', '1', from, to], { stdio: 'ignore' });
    return readFileSync(to, 'latin1').match(/\/Type\s*\/Page\b/g)?.length ?? Number.NaN;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
