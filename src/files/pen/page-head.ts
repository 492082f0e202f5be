import { baseline, INK, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import type { PageGrid } from './page-grid';
import type { Pen } from './pen';
import { RULE } from './table-strips';
import { TYPE } from './type-scale';
import { wrapText } from './wrap-text';

const MOST_LINES = 2;

/** Title, the line under it and a rule; returns where what follows begins. */
export function drawHead(
  pen: Pen,
  { margin, width }: Pick<PageGrid, 'margin' | 'width'>,
  title: string,
  under: string,
): Mm {
  const room = width - 2 * margin;
  const { pt, bold } = TYPE.title;
  let top = margin;
  const all = wrapText(title, room, pt, pen.widthOf);
  for (const [i, line] of all.slice(0, MOST_LINES).entries()) {
    const cut = i === MOST_LINES - 1 && all.length > MOST_LINES;
    const shown = cut ? `${line.slice(0, -2)}…` : line;
    pen.words(shown, point(margin, baseline(top, pt)), { pt, bold, colour: INK.cut });
    top += lineHeight(pt);
  }
  const small = TYPE.small.pt;
  for (const line of wrapText(under, room, small, pen.widthOf)) {
    pen.words(line, point(margin, baseline(top, small)), { pt: small, colour: INK.quietWords });
    top += lineHeight(small);
  }
  pen.line(point(margin, top + 1), point(width - margin, top + 1), RULE);
  return top + 4;
}

/** The page's number, and words at its left. */
export function drawFoot(pen: Pen, { height, margin, width }: PageGrid, words: string, number: string): void {
  const { pt } = TYPE.small;
  const y = height - margin + 2;
  const style = { pt, colour: INK.quietWords } as const;
  const [line = '', more] = wrapText(words, width - 2 * margin - 20, pt, pen.widthOf);
  pen.words(more === undefined ? line : `${line}…`, point(margin, y), style);
  pen.words(number, point(width - margin, y), { ...style, align: 'right' });
}
