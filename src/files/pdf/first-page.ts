import { baseline, INK, type LineStyle, lineHeight, type PieceDrawing } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxGrown, point } from '../../plane';
import { type Draft, sheetsOf } from '../../project';
import { own, said, say } from '../../words';
import type { Pen } from '../pen/pen';
import { flowSections, type Section, type SetLine, wrapText } from '../pen/text-flow';
import type { FirstWords } from './first-words';
import { drawMap } from './map';

/** The size of the first sheet, upright, and the white round it. */
export interface FirstPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly margin: Mm;
}

/** The test squares' sides, in millimetres: exactly 100 mm and exactly 4 inches. */
export const TEST_SQUARES = [
  { side: 100, label: '100 mm' },
  { side: 101.6, label: '4 in' },
] as const;

const SQUARE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const RULE: LineStyle = { width: 0.2, colour: INK.frame, dash: [] };
const TITLE_PT = 15;
const UNDER_PT = 8;
const GAP: Mm = 5;
/** Inside a square, from its line to the words. */
const INSET: Mm = 4;
/** Tried from the largest down until all words fit on the one sheet; smaller would not be read at arm's length. */
const WORDS_PT = [8.5, 8, 7.5, 7, 6.5] as const;

/**
 * Draws the first sheet on the current page: title, both squares with the words for printing and the map inside them,
 * and the parts of {@link FirstWords} beside and below. Where even the smallest type leaves words over, they go on on
 * further pages, so that nothing is lost or cut off.
 *
 * @param lit labels of the sheets that stand out on the map
 */
export function drawFirst(
  pen: Pen,
  page: FirstPage,
  words: FirstWords,
  draft: Draft,
  drawings: readonly PieceDrawing[],
  lit: readonly string[] = [],
): void {
  const inside: Box = {
    left: page.margin,
    top: page.margin,
    right: page.width - page.margin,
    bottom: page.height - page.margin,
  };
  const top = drawHead(pen, inside, words) + 2;
  const correct = { x: draft.project.paper.correctX, y: draft.project.paper.correctY };
  const metric = squareAt(inside.left, top, TEST_SQUARES[0].side, correct);
  const inch = squareAt(inside.left, metric.bottom + GAP, TEST_SQUARES[1].side, correct);
  drawSquare(pen, metric, TEST_SQUARES[0].label);
  drawSquare(pen, inch, TEST_SQUARES[1].label);

  const columns: readonly Box[] = [
    { left: Math.max(metric.right, inch.right) + GAP, top, right: inside.right, bottom: inside.bottom },
    { left: inside.left, top: inch.bottom + GAP / 2, right: Math.max(metric.right, inch.right), bottom: inside.bottom },
  ];
  const tries = WORDS_PT.map((pt) => {
    const square = flowSections(words.inSquare, [labelled(metric)], pt, pen.widthOf);
    const beside = flowSections([...square.left, ...words.sections], columns, pt, pen.widthOf);
    return { pt, lines: [...square.lines, ...beside.lines], inSquare: square.left.length === 0, left: beside.left };
  });
  const best =
    tries.find((tried) => tried.inSquare && tried.left.length === 0) ??
    tries.find((tried) => tried.left.length === 0) ??
    tries[1];
  if (!best) return;
  for (const line of best.lines) drawLine(pen, line, best.pt);

  const room = labelled(inch);
  pen.words(words.mapTitle, point(room.left, baseline(room.top, 8.5)), { pt: 8.5, colour: INK.mark });
  drawMap(pen, sheetsOf(draft), drawings, { ...room, top: room.top + lineHeight(8.5) + 1 }, lit);

  drawRest(pen, page, inside, words, best.left);
}

/** What found no room, two columns a page. */
function drawRest(pen: Pen, page: FirstPage, inside: Box, words: FirstWords, rest: readonly Section[]): void {
  let left = rest;
  while (left.length > 0) {
    pen.newPage(page.width, page.height);
    const top = drawHead(pen, inside, { ...words, under: said(say`${own(words.under)} · first sheet, continued`) }) + 2;
    const middle = (inside.left + inside.right) / 2;
    const columns = [
      { ...inside, top, right: middle - GAP / 2 },
      { ...inside, top, left: middle + GAP / 2 },
    ];
    const flow = flowSections(left, columns, WORDS_PT[1], pen.widthOf);
    for (const line of flow.lines) drawLine(pen, line, WORDS_PT[1]);
    if (flow.lines.length === 0) return;
    left = flow.left;
  }
}

/** The title, as many lines as it takes (three at most), the line under it and a rule; returns where they end. */
function drawHead(pen: Pen, inside: Box, { title, under }: FirstWords): Mm {
  const width = inside.right - inside.left;
  let top = inside.top;
  const set = (text: string, pt: number, colour: string) => {
    pen.words(text, point(inside.left, baseline(top, pt)), { pt, colour });
    top += lineHeight(pt);
  };
  const lines = wrapText(title, width, TITLE_PT, pen.widthOf);
  for (const [i, line] of lines.slice(0, 3).entries())
    set(i === 2 && lines.length > 3 ? `${line.slice(0, -2)}…` : line, TITLE_PT, INK.cut);
  for (const line of wrapText(under, width, UNDER_PT, pen.widthOf)) set(line, UNDER_PT, INK.quietWords);
  pen.line(point(inside.left, top + 1), point(inside.right, top + 1), RULE);
  return top + 1;
}

/** A square that is true once printed: a printer's correction belongs to it as to the drawing. */
const squareAt = (left: Mm, top: Mm, side: Mm, correct: { readonly x: number; readonly y: number }): Box => ({
  left,
  top,
  right: left + side * correct.x,
  bottom: top + side * correct.y,
});

function drawSquare(pen: Pen, box: Box, label: string): void {
  pen.frame(box, SQUARE);
  const pt = 7;
  const style = { pt, colour: INK.words, align: 'middle' } as const;
  pen.words(label, point((box.left + box.right) / 2, baseline(box.top + 0.6, pt)), style);
  pen.words(label, point(baseline(box.left + 0.6, pt), (box.top + box.bottom) / 2), { ...style, turn: -90 });
}

/** The room inside a square, its two labels left free. */
const labelled = (square: Box): Box => {
  const room = boxGrown(square, -INSET);
  return { ...room, left: room.left + 1, top: room.top + 1 };
};

function drawLine(pen: Pen, { left, right, title, box }: SetLine, pt: number): void {
  const y = baseline(box.top, pt);
  pen.words(left, point(box.left, y), { pt, colour: title ? INK.mark : INK.words });
  if (right !== '') pen.words(right, point(box.right, y), { pt, colour: INK.words, align: 'right' });
}
