import { INK, type LineStyle, mmOfPt } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import { LARGEST_PAGE } from '../../sheets';
import { mm, type Phrase, type Problem, Refusal, say } from '../../words';
import type { Pen } from '../pen/pen';
import { TEST_SQUARES } from './squares';

/** White round everything on one large sheet: a print shop's trimming. */
export const LARGE_MARGIN: Mm = 15;
/** Between the drawing, the test squares and the words. */
export const LARGE_GAP: Mm = 10;
export const LARGE_TITLE_PT = 24;
export const LARGE_WORDS_PT = 11;
const SQUARE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };

/** A printer's correction along both sides of its paper. */
interface Correction {
  readonly correctX: number;
  readonly correctY: number;
}

/** What both test squares take, and the white beside each. */
export const squaresSize = ({ correctX, correctY }: Correction): { readonly width: Mm; readonly height: Mm } => ({
  width: TEST_SQUARES.reduce((sum, { side }) => sum + side * correctX + LARGE_GAP, 0),
  height: Math.max(...TEST_SQUARES.map(({ side }) => side * correctY)),
});

/** Draws both test squares side by side, true once printed. */
export function drawSquares(pen: Pen, left: Mm, top: Mm, { correctX, correctY }: Correction): void {
  let x = left;
  for (const { side, label } of TEST_SQUARES) {
    const square = { left: x, top, right: x + side * correctX, bottom: top + side * correctY };
    pen.frame(square, SQUARE);
    const middle = point(
      (square.left + square.right) / 2,
      (square.top + square.bottom) / 2 + mmOfPt(LARGE_WORDS_PT) / 3,
    );
    pen.words(label, middle, { pt: LARGE_WORDS_PT, colour: INK.words, align: 'middle' });
    x = square.right + LARGE_GAP;
  }
}

/** Says no where a page would be larger than a PDF page can be: writers cut it off without a word. */
export function refuseLargerThanPage(
  width: Mm,
  height: Mm,
  what: Phrase,
  asked: Pick<Problem, 'field'> & { readonly value?: unknown },
): void {
  const longest = Math.max(width, height);
  if (longest <= LARGEST_PAGE) return;
  throw new Refusal([
    {
      value: Math.round(longest),
      ...asked,
      phrase: say`${what} would be ${mm(longest)} long; a PDF page can be ${mm(LARGEST_PAGE)} at most: take the joined sheets instead`,
    },
  ]);
}
