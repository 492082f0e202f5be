import { baseline, INK, lineHeight } from '../../drawing';
import type { Mm, Units } from '../../length';
import { point } from '../../plane';
import { number, own, words } from '../../words';
import { VERDICT_TONE } from '../fit/pdf';
import type { PdfOptions } from '../pen/options';
import { gridColumns, type PageGrid, pageGrid } from '../pen/page-grid';
import { drawFoot, drawHead } from '../pen/page-head';
import { bullets, headed, type Passage } from '../pen/passage';
import { passageStrips } from '../pen/passage-strips';
import { type Pen, startPdf } from '../pen/pen';
import { drawStrips } from '../pen/strip';
import { RULE } from '../pen/table-strips';
import { TONE_INK } from '../pen/text-strips';
import { SPACE, TYPE } from '../pen/type-scale';
import { wrapText } from '../pen/wrap-text';
import { LOOK_SIGN, type SummaryColumn, type SummaryContent, type SummaryLine } from './summary-content';

const WORDS_PT = TYPE.small.pt;
/** Above and below a line's words. */
const AIR: Mm = 0.9;
/** Between a cell's words and the next column. */
const GUTTER: Mm = 2;
/** A reason longer than this is read on the fit sheet; where there is none, all of it is told here. */
const MOST_LINES = { made: 4, unmade: 14 } as const;

interface Paper {
  readonly pen: Pen;
  readonly page: PageGrid;
  readonly content: SummaryContent;
  y: Mm;
  number: number;
}

/** The teacher's summary, lying: what to look at and to buy, then a line for each learner on as many pages as that takes. */
export function writeSummaryPdf(content: SummaryContent, units: Units, options: PdfOptions): Uint8Array {
  const page = pageGrid(units === 'inch', true);
  const pen = startPdf(page.width, page.height, options.font, {
    title: words`${own(content.title)}: class summary`,
    subject: content.says,
    date: options.date,
  });
  const paper: Paper = { pen, page, content, y: 0, number: 1 };
  const rows = number(content.lines.length);
  const under =
    units === 'inch'
      ? words`Legwork · class summary · ${rows} rows · lengths in inches`
      : words`Legwork · class summary · ${rows} rows · lengths in cm`;
  paper.y = drawHead(pen, page, content.title, under);
  drawLead(paper);
  drawHeads(paper);
  for (const line of content.lines) drawLine(paper, line);
  drawFoot(pen, page, content.title, `${paper.number}`);
  return pen.bytes();
}

/** What came out, what to buy together, whom to look at. */
function drawLead(paper: Paper): void {
  const { pen, page, content } = paper;
  const left = page.margin;
  const { pt } = TYPE.lead;
  pen.words(content.says, point(left, baseline(paper.y, pt)), { pt, colour: INK.cut });
  paper.y += lineHeight(pt) + 2;
  const columns = gridColumns(page, 2, paper.y, page.bottom);
  const parts: readonly (readonly Passage[])[] = [
    headed(words`For all together`, bullets([...content.totals, ...content.notes])),
    content.look.length === 0
      ? []
      : headed(words`${own(LOOK_SIGN)} Look at these before cutting`, {
          kind: 'paragraph',
          text: content.look.join(', '),
        }),
  ];
  const ends = columns.map(({ left, right, top }, i) =>
    drawStrips(pen, passageStrips(parts[i] ?? [], right - left, pen.widthOf), left, top),
  );
  paper.y = Math.max(...ends) + 3;
}

const columnsOf = ({ page, content }: Paper): readonly (SummaryColumn & { readonly from: Mm; readonly to: Mm })[] => {
  const whole = content.columns.reduce((sum, { share }) => sum + share, 0);
  const width = page.width - 2 * page.margin;
  let from = page.margin;
  return content.columns.map((column) => {
    const to = from + (width * column.share) / whole;
    const placed = { ...column, from, to: to - GUTTER };
    from = to;
    return placed;
  });
};

/** The heads, each in as many lines as its column asks for, and all ending level. */
function drawHeads(paper: Paper): void {
  const { pen, page } = paper;
  const { pt, bold } = { ...TYPE.small, bold: true };
  const line = lineHeight(pt);
  const columns = columnsOf(paper).map((column) => ({
    ...column,
    rows: wrapText(column.head, column.to - column.from, pt, pen.widthOf),
  }));
  const lowest = paper.y + Math.max(...columns.map(({ rows }) => rows.length)) * line;
  for (const { rows, from, to, align } of columns)
    for (const [i, words] of rows.entries()) {
      const y = baseline(lowest - (rows.length - i) * line, pt);
      pen.words(words, point(align === 'right' ? to : from, y), { pt, bold, colour: INK.mark, align });
    }
  paper.y = lowest + SPACE.underHead;
  pen.line(point(page.margin, paper.y), point(page.width - page.margin, paper.y), { ...RULE, colour: INK.join });
}

/** One learner: as high as the longest of its cells, never torn apart. */
function drawLine(paper: Paper, line: SummaryLine): void {
  const { pen, page, content } = paper;
  const columns = columnsOf(paper);
  const most = line.verdict ? MOST_LINES.made : MOST_LINES.unmade;
  const wrapped = columns.map(({ from, to }, i) => {
    const rows = wrapText(
      i === columns.length - 1 ? line.why : (line.cells[i] ?? ''),
      to - from,
      WORDS_PT,
      pen.widthOf,
    );
    return rows.length > most ? [...rows.slice(0, most - 1), `${rows[most - 1]?.slice(0, -2)}…`] : rows;
  });
  const height = Math.max(...wrapped.map((rows) => rows.length)) * lineHeight(WORDS_PT) + 2 * AIR;
  if (paper.y + height > page.bottom) {
    drawFoot(pen, page, content.title, `${paper.number}`);
    pen.newPage(page.width, page.height);
    paper.number += 1;
    paper.y = page.margin;
    drawHeads(paper);
  }
  for (const [i, { from, to, align, judges }] of columns.entries()) {
    const told = judges ? inkOf(line) : i === columns.length - 1 ? INK.quietWords : INK.words;
    for (const [k, row] of (wrapped[i] ?? []).entries()) {
      const sign = judges && line.look && k === 0 ? `${LOOK_SIGN} ` : '';
      const y = baseline(paper.y + AIR + k * lineHeight(WORDS_PT), WORDS_PT);
      pen.words(sign + row, point(align === 'right' ? to : from, y), { pt: WORDS_PT, colour: told, align });
    }
  }
  paper.y += height;
  pen.line(point(page.margin, paper.y), point(page.width - page.margin, paper.y), RULE);
}

const inkOf = ({ verdict }: SummaryLine): string => TONE_INK[VERDICT_TONE[verdict ?? 'wrong']];
