import type { Draft } from '../../project';
import { own, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { pageGrid } from '../pen/page-grid';
import { startPdf } from '../pen/pen';
import { setPages } from '../pen/set-pages';
import { guideContent } from './content';
import { guideRuns } from './pages';

/**
 * The sewing guide, the cloth and the shopping list as pages to print with the sheets: A4, or Letter in inch projects.
 *
 * @param draft the finished draft
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export function writeGuidePdf(draft: Draft, options: PdfOptions): Uint8Array {
  const guide = guideContent(draft);
  const grid = pageGrid(guide.units === 'inch');
  const pen = startPdf(grid.width, grid.height, options.font, {
    title: words`${own(guide.title)}: how to sew it`,
    subject: guide.under,
    date: options.date,
  });
  setPages(pen, grid, { ...guide, runs: guideRuns(guide) });
  return pen.bytes();
}
