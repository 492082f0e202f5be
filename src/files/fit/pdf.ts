import type { Verdict } from '../../check';
import {
  baseline,
  drawingInk,
  INK,
  inkBounds,
  type LineStyle,
  lineHeight,
  placedDrawings,
  printedStyle,
  uprightPlaces,
  type WidthOf,
} from '../../drawing';
import type { Mm } from '../../length';
import { type Box, point } from '../../plane';
import type { Draft } from '../../project';
import { mm, own, printPhrase, said, say, words } from '../../words';
import { drawPaths } from '../pen/draw-paths';
import type { PdfOptions } from '../pen/options';
import { frameAt } from '../pen/page-frame';
import { drawHead, RULE, type WordPage, wordPage } from '../pen/page-head';
import { type Pen, startPdf } from '../pen/pen';
import { flowBalanced, type SetLine } from '../pen/text-flow';
import { estimatedNote, type FitContent, fitContent } from './content';

/** The verdicts' inks, dark enough to be read as words. */
export const VERDICT_INK: Readonly<Record<Verdict, string>> = {
  good: '#3F6B3B',
  doubtful: '#7A5A00',
  wrong: '#8F322C',
};

const TABLE_PT = 9.5;
const NOTE_PT = 7.4;
/** Tried from the largest down until all words fit on the one page. */
const WORDS_PT = [8.6, 8.1, 7.6, 7.1, 6.6, 6.1] as const;
const GAP: Mm = 6;
/** The picture's room beside the table. */
const PICTURE: Mm = 62;
const ROW: Mm = 6.2;

/**
 * The fit sheet: one page that sets the body beside the finished garment, with what to look at and what to buy.
 *
 * @param draft the finished draft
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export function writeFitPdf(draft: Draft, options: PdfOptions): Uint8Array {
  const content = fitContent(draft);
  const inches = draft.project.units === 'inch';
  const page = wordPage(inches);
  const pen = startPdf(page.width, page.height, options.font, {
    title: words`${own(content.title)}: fit sheet`,
    subject: content.under,
    date: options.date,
  });
  const top = drawHead(pen, page, content.title, content.under) + 3;
  const right = page.width - page.margin - PICTURE - GAP;
  const table = drawTable(pen, content, { left: page.margin, right, top, bottom: page.height });
  const picture: Box = {
    left: right + GAP,
    right: page.width - page.margin,
    top,
    bottom: Math.max(table, top + PICTURE),
  };
  drawLeg(pen, draft, picture);
  drawWords(pen, page, content, picture.bottom + 3);
  return pen.bytes();
}

/** The verdict, then body, finished garment and room side by side; returns where it ends. */
function drawTable(pen: Pen, { verdict, says, lines, estimated }: FitContent, box: Box): Mm {
  const { left, right } = box;
  const width = right - left;
  const ends = [left + 0.58 * width, left + 0.8 * width, right];
  let top = box.top;
  pen.words(says, point(left, baseline(top, TABLE_PT + 1)), { pt: TABLE_PT + 1, colour: VERDICT_INK[verdict] });
  top += lineHeight(TABLE_PT + 1) + 2;
  const row = (cells: readonly string[], colour: string, pt: number) => {
    const y = baseline(top + (ROW - lineHeight(pt)) / 2, pt);
    pen.words(cells[0] ?? '', point(left, y), { pt, colour });
    for (const [i, end] of ends.entries())
      pen.words(cells[i + 1] ?? '', point(end, y), { pt, colour: i === 2 ? INK.quietWords : colour, align: 'right' });
    top += ROW;
    pen.line(point(left, top), point(right, top), RULE);
  };
  row(['', words`body`, words`finished`, words`room`], INK.mark, NOTE_PT);
  for (const { name, part, body, finished, room } of lines)
    row([part ? `   ${name}` : name, body, finished, room], part ? INK.quietWords : INK.words, TABLE_PT);
  if (!estimated) return top;
  pen.words(said(estimatedNote), point(left, baseline(top + 1, NOTE_PT)), { pt: NOTE_PT, colour: INK.quietWords });
  return top + 1 + lineHeight(NOTE_PT);
}

const THIN: LineStyle = { width: 0.15, colour: INK.level, dash: [] };

/** The pieces, small: cut lines, folds and stitching, to know them by; no signs, which would be too small to read. */
function drawLeg(pen: Pen, draft: Draft, room: Box): void {
  const leg = draft.pieces.slice(0, 1);
  const drawings = placedDrawings(leg, uprightPlaces(leg)).map((drawing) => ({
    ...drawing,
    paths: drawing.paths.filter(
      ({ stroke }) => stroke === 'cut' || stroke === 'stitching' || stroke === 'fold' || stroke === 'grain',
    ),
  }));
  const box = inkBounds(drawingInk(drawings));
  const words = lineHeight(NOTE_PT);
  const scale = Math.min(
    (room.right - room.left) / (box.right - box.left),
    (room.bottom - room.top - words - 1) / (box.bottom - box.top),
  );
  const spare = room.right - room.left - (box.right - box.left) * scale;
  const frame = frameAt(room.left + spare / 2, room.top, box, { x: scale, y: scale });
  drawPaths(pen, drawings, box, frame, scale, (path) => {
    const { width, colour } = printedStyle(path);
    return path.stroke === 'cut'
      ? { width: 0.35, colour, dash: [] }
      : { ...THIN, width: Math.min(width, THIN.width), colour };
  });
  const says = printPhrase(say`each leg, ${mm(box.bottom - box.top)} long as cut`, draft.project.units);
  pen.words(says, point((room.left + room.right) / 2, room.bottom), {
    pt: NOTE_PT,
    colour: INK.quietWords,
    align: 'middle',
  });
}

/** All else in two columns, as large as fits on the page; what does not fit even then goes on on the next. */
function drawWords(pen: Pen, page: WordPage, { title, under, sections }: FitContent, from: Mm): void {
  const columns =
    (top: Mm) =>
    (lower: Mm): readonly Box[] => {
      const middle = page.width / 2;
      return [
        { left: page.margin, right: middle - GAP / 2, top, bottom: lower },
        { left: middle + GAP / 2, right: page.width - page.margin, top, bottom: lower },
      ];
    };
  const flow = (rest: FitContent['sections'], top: Mm, pt: number, widthOf: WidthOf) =>
    flowBalanced(rest, columns(top), top, page.height - page.margin, pt, widthOf);
  const tries = WORDS_PT.map((pt) => ({ pt, ...flow(sections, from, pt, pen.widthOf) }));
  const best = tries.find(({ left }) => left.length === 0) ?? tries.at(-1);
  if (!best) return;
  drawLines(pen, best.lines, best.pt);
  for (let rest = best.left; rest.length > 0; ) {
    pen.newPage(page.width, page.height);
    const more = flow(rest, drawHead(pen, page, title, words`${own(under)}, continued`) + 3, best.pt, pen.widthOf);
    drawLines(pen, more.lines, best.pt);
    if (more.lines.length === 0) return;
    rest = more.left;
  }
}

function drawLines(pen: Pen, lines: readonly SetLine[], pt: number): void {
  for (const { left, right, title, box } of lines) {
    const y = baseline(box.top, pt);
    pen.words(left, point(box.left, y), { pt, colour: title ? INK.mark : INK.words });
    if (right !== '') pen.words(right, point(box.right, y), { pt, colour: INK.words, align: 'right' });
  }
}
