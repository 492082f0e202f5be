import type { Mm } from '../../length';
import type { Box } from '../../plane';
import { PAPER_SIZES, type PaperSize } from '../../sheets';

/** A page for words: its size, the white round it, and the white between its columns. */
export interface PageGrid {
  readonly width: Mm;
  readonly height: Mm;
  readonly margin: Mm;
  readonly gutter: Mm;
  /** Where the words end; the foot stands below. */
  readonly bottom: Mm;
}

/** A grid's columns are the twelfths of its page. */
const TWELFTHS = 12;
const GUTTER: Mm = 6;
const MARGIN = { upright: 14, lying: 12 } as const;
/** For the line at the foot of a page. */
const FOOT: Mm = 6;

/** The paper that words are printed on: A4, or Letter where the project is in inches. */
const wordPaper = (inches: boolean): PaperSize =>
  PAPER_SIZES.find(({ name }) => name === (inches ? 'Letter' : 'A4')) as PaperSize;

/** The grid of every document's pages. */
export function pageGrid(inches: boolean, lying = false): PageGrid {
  const paper = wordPaper(inches);
  const [width, height] = lying ? [paper.height, paper.width] : [paper.width, paper.height];
  const margin = lying ? MARGIN.lying : MARGIN.upright;
  return { width, height, margin, gutter: GUTTER, bottom: height - margin - FOOT };
}

/**
 * From where to where a run of twelfths reaches across the page.
 *
 * @param first counted from 0
 */
export function gridSpan(grid: PageGrid, first: number, count: number): { readonly left: Mm; readonly right: Mm } {
  const step = (grid.width - 2 * grid.margin + grid.gutter) / TWELFTHS;
  const left = grid.margin + first * step;
  return { left, right: left + count * step - grid.gutter };
}

/** Columns of one width across the whole page. @param count a divisor of twelve */
export const gridColumns = (grid: PageGrid, count: number, top: Mm, bottom: Mm): readonly Box[] =>
  Array.from({ length: count }, (_, i) => ({
    ...gridSpan(grid, (i * TWELFTHS) / count, TWELFTHS / count),
    top,
    bottom,
  }));
