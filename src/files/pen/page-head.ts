import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import { PAPER_SIZES, type PaperSize } from '../../sheets';
import type { Pen } from './pen';
import { wrapText } from './text-flow';

/** A page of words, and the white round it. */
export interface WordPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly margin: Mm;
}

export const RULE: LineStyle = { width: 0.2, colour: INK.frame, dash: [] };
const TITLE_PT = 16;
const UNDER_PT = 7.4;
const MOST_LINES = 2;

/** The paper that words are printed on: A4, or Letter where the project is in inches. */
export const wordPaper = (inches: boolean): PaperSize =>
  PAPER_SIZES.find(({ name }) => name === (inches ? 'Letter' : 'A4')) as PaperSize;

/** A page for words: A4, or Letter where the project is in inches. */
export function wordPage(inches: boolean, lying = false): WordPage {
  const { width, height } = wordPaper(inches);
  return lying ? { width: height, height: width, margin: 12 } : { width, height, margin: 14 };
}

/** Title, the line under it and a rule; returns where they end. */
export function drawHead(pen: Pen, page: WordPage, title: string, under: string): Mm {
  const { margin } = page;
  const width = page.width - 2 * margin;
  let top = margin;
  const all = wrapText(title, width, TITLE_PT, pen.widthOf);
  for (const [i, line] of all.slice(0, MOST_LINES).entries()) {
    const cut = i === MOST_LINES - 1 && all.length > MOST_LINES;
    pen.words(cut ? `${line.slice(0, -2)}…` : line, point(margin, baseline(top, TITLE_PT)), {
      pt: TITLE_PT,
      colour: INK.cut,
    });
    top += lineHeight(TITLE_PT);
  }
  for (const line of wrapText(under, width, UNDER_PT, pen.widthOf)) {
    pen.words(line, point(margin, baseline(top, UNDER_PT)), { pt: UNDER_PT, colour: INK.quietWords });
    top += lineHeight(UNDER_PT);
  }
  pen.line(point(margin, top + 1), point(page.width - margin, top + 1), RULE);
  return top + 1;
}

/** The page's number, and words at its left. */
export function drawFoot(pen: Pen, page: WordPage, words: string, number: string): void {
  const y = page.height - page.margin + 3;
  const style = { pt: UNDER_PT, colour: INK.quietWords } as const;
  pen.words(words.slice(0, 90), point(page.margin, y), style);
  pen.words(number, point(page.width - page.margin, y), { ...style, align: 'right' });
}
