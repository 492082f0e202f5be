import { MM_PER_INCH, type Mm, type Units } from '../length';
import { mm, number, type Phrase, say } from '../words';
import { paperSize } from './paper-sizes';
import type { PaperSettings } from './types';

/** The page that finds out how true a printer prints, and its two bars. */
export interface PrinterTest {
  readonly paper: { readonly width: Mm; readonly height: Mm };
  /** The bar along the short side of the printer's paper, and the one along the long side. */
  readonly across: Mm;
  readonly along: Mm;
}

/** From the edges of the paper to the ends of a bar, at least: no printer must cut them off. */
const CLEAR: Mm = 14;
/** On wide paper the page need not be longer to prove the way along it. */
const LONGEST: Mm = 460;
/** A printer that is further off than this is rather set wrong than made wrong. */
const MIND_BEYOND = 0.03;

/**
 * The test page of a paper: bars as long as the page holds, in whole steps of 10 mm, or of half an inch in an inch
 * project, so that a ruler reads them easily.
 */
export function printerTest(settings: PaperSettings, units: Units): PrinterTest {
  const size = paperSize(settings.sheet, { width: settings.ownWidth, height: settings.ownHeight });
  const paper = { width: size.width, height: Math.min(size.height, Math.max(LONGEST, size.width)) };
  const step = units === 'inch' ? MM_PER_INCH / 2 : 10;
  const bar = (side: Mm) => step * Math.floor((side - 2 * Math.max(CLEAR, settings.margin)) / step + 1e-9);
  return { paper, across: bar(paper.width), along: bar(paper.height) };
}

/** A line of the test page that a printer reaches or not: the number beside it, and the margin that reaching it allows. */
export interface EdgeLine {
  readonly number: number;
  readonly margin: Mm;
}

/** From the edge of the paper to the first line and the last, in steps of a millimetre or of an eighth of an inch. */
const EDGE_LINES = { cm: { from: 2, to: 13, step: 1 }, inch: { from: 1, to: 4, step: MM_PER_INCH / 8 } } as const;

/** The lines near every edge of the test page, the nearest first: the nearest that is printed whole is the printer's margin. */
export function edgeLines(units: Units): readonly EdgeLine[] {
  const { from, to, step } = EDGE_LINES[units];
  return Array.from({ length: to - from + 1 }, (_, i) => ({ number: from + i, margin: (from + i) * step }));
}

/** The correction for a bar of that length that came out as it was measured. */
export const correctionFor = (bar: Mm, measured: Mm): number => bar / measured;

/** Margins that differ by less are the same: a tenth of what a ruler shows. */
const SAME_MARGIN: Mm = 0.05;

/** Why the margin is too narrow for this printer; undefined where it isn't, or where nobody looked. */
export function marginRemark({ margin, printerMargin }: PaperSettings): Phrase | undefined {
  if (printerMargin === 'auto' || margin >= printerMargin - SAME_MARGIN) return undefined;
  return say`The test page showed a margin of ${mm(printerMargin)}: what lies nearer to the edge is not printed.`;
}

/** Both corrections, where they are so large that the printer's own settings are to be looked at first. */
export function correctionRemarks({ correctX, correctY }: PaperSettings): readonly Phrase[] {
  const off = [
    { side: say`short`, by: correctX },
    { side: say`long`, by: correctY },
  ].filter(({ by }) => Math.abs(by - 1) > MIND_BEYOND + 1e-9);
  return off.map(
    ({ side, by }) =>
      say`The printer is corrected by ${number(100 * (by - 1), 1)} % along the ${side} side of its paper. More than ${number(100 * MIND_BEYOND)} % is rarely the printer: see that it prints at 100 %, without fitting to the page, and measure the test page again.`,
  );
}
