import type { Verdict } from '../../check';
import type { Draft } from '../../project';
import { own, said, words } from '../../words';
import { legPicture } from '../guide/leg-picture';
import type { PdfOptions } from '../pen/options';
import { pageGrid } from '../pen/page-grid';
import type { Passage, Tone } from '../pen/passage';
import { startPdf } from '../pen/pen';
import { setPages } from '../pen/set-pages';
import { estimatedNote, type FitContent, fitContent } from './content';

/** How a verdict's words are set. */
export const VERDICT_TONE: Readonly<Record<Verdict, Tone>> = { good: 'good', doubtful: 'doubtful', wrong: 'care' };

/** The picture's part of the page's width. */
const PICTURE_SHARE = 0.34;

/**
 * The fit sheet: one page that sets the body beside the finished garment, with what to look at and what to buy.
 *
 * @param draft the finished draft
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export function writeFitPdf(draft: Draft, options: PdfOptions): Uint8Array {
  const content = fitContent(draft);
  const grid = pageGrid(draft.project.units === 'inch');
  const pen = startPdf(grid.width, grid.height, options.font, {
    title: words`${own(content.title)}: fit sheet`,
    subject: content.under,
    date: options.date,
  });
  setPages(pen, grid, {
    ...content,
    runs: [
      {
        columns: 1,
        passages: [{ kind: 'beside', picture: legPicture(draft), share: PICTURE_SHARE, passages: comparison(content) }],
      },
      { columns: 2, passages: content.passages },
    ],
  });
  return pen.bytes();
}

/** The verdict, then body, finished garment and room side by side. */
const comparison = ({ verdict, says, lines, estimated }: FitContent): readonly Passage[] => [
  { kind: 'paragraph', size: 'lead', text: says, tone: VERDICT_TONE[verdict] },
  {
    kind: 'table',
    columns: [
      { align: 'left', share: 1 },
      { head: words`body`, align: 'right' },
      { head: words`finished`, align: 'right' },
      { head: words`room`, align: 'right' },
    ],
    rows: lines.map(({ name, part, body, finished, room }) => ({
      cells: [name, body, finished, room],
      part,
      tones: [undefined, undefined, undefined, 'quiet'],
    })),
  },
  ...(estimated ? [{ kind: 'paragraph', size: 'small', text: said(estimatedNote), tone: 'quiet' } as const] : []),
];
