import { type Mm, mm, Refusal, say } from '../length';
import { point } from '../plane';
import type { Draft } from '../project';
import { type Box, drawingInk, inkBounds, placedDrawings, uprightPlaces } from '../sheets';
import { INK, type LineStyle } from './line-styles';
import { frameAt } from './page-frame';
import { drawPaths } from './pdf-drawing';
import { TEST_SQUARES } from './pdf-first';
import type { PdfOptions } from './pdf-options';
import { startPdf } from './pdf-pen';
import { baseline, lineHeight, mmOfPt, ptOfCapitals } from './print-type';
import { wrapText } from './text-flow';
import { bodyRows, cutRows, scaleSentence } from './words';

/** White round everything: a print shop's trimming. */
const MARGIN: Mm = 15;
const GAP: Mm = 10;
/** A PDF page can't be larger (14,400 points); writers cut it off without a word. */
const LARGEST: Mm = 5080;
const SQUARE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const TITLE_PT = 24;
const WORDS_PT = 11;

/**
 * All pieces on one sheet of the size they need, at true scale, with both test squares and the words below them.
 *
 * @throws Refusal where the sheet would be longer or wider than a PDF page can be (5,080 mm)
 */
export function writeLargePdf(draft: Draft, options: PdfOptions): Uint8Array {
  const { project } = draft;
  const { scale, correctX, correctY } = project.paper;
  const factor = { x: scale * correctX, y: scale * correctY };
  const drawings = placedDrawings(draft.printed, uprightPlaces(draft.printed));
  const box = inkBounds(drawingInk(drawings));
  const frame = frameAt(MARGIN, MARGIN, box, factor);
  const squares = TEST_SQUARES.reduce((sum, { side }) => sum + side + GAP, 0);
  const width = Math.max(frame.box.right, MARGIN + squares + 100) + MARGIN;
  const height = frame.box.bottom + GAP + TEST_SQUARES[1].side * correctY + MARGIN;
  refuseTooLarge(width, height);

  const pen = startPdf(width, height, options.font, {
    title: project.name,
    subject: `Lounge pant for ${project.body.label}, one large sheet`,
    date: options.date,
  });
  drawPaths(pen, drawings, box, frame, factor.x);
  for (const text of drawings.flatMap((drawing) => drawing.texts)) {
    const pt = ptOfCapitals(text.size * Math.min(factor.x, factor.y));
    pen.words(text.text, frame.map(text.at), { pt, colour: INK.words, align: 'middle', turn: text.turn });
  }
  let left = MARGIN;
  const top = frame.box.bottom + GAP;
  for (const { side, label } of TEST_SQUARES) {
    const square: Box = { left, top, right: left + side * correctX, bottom: top + side * correctY };
    pen.frame(square, SQUARE);
    const at = point((square.left + square.right) / 2, top + side / 2);
    pen.words(label, at, { pt: WORDS_PT, colour: INK.words, align: 'middle' });
    left = square.right + GAP;
  }
  drawWords(left, top, width - MARGIN - left);
  return pen.bytes();

  function drawWords(x: Mm, start: Mm, room: Mm): void {
    let y = start;
    const scaled = scaleSentence(project.paper);
    const lines = [
      { text: project.name, pt: TITLE_PT },
      ...(scaled === '' ? [] : [{ text: scaled, pt: WORDS_PT }]),
      { text: 'Print at 100 %, no fit to page. Measure both squares before cutting.', pt: WORDS_PT },
      {
        text: `${project.body.label}: ${bodyRows(project)
          .map((row) => `${row.name} ${row.value}`)
          .join(', ')}`,
        pt: WORDS_PT,
      },
      {
        text: `Cut ${cutRows(draft)
          .map((row) => `${row.name} ${row.value}`)
          .join('; ')}`,
        pt: WORDS_PT,
      },
    ];
    for (const { text, pt } of lines) {
      for (const line of wrapText(text, room, pt, pen.widthOf)) {
        if (y + mmOfPt(pt) > height - MARGIN) return;
        pen.words(line, point(x, baseline(y, pt)), { pt, colour: INK.words });
        y += lineHeight(pt);
      }
    }
  }
}

function refuseTooLarge(width: Mm, height: Mm): void {
  const longest = Math.max(width, height);
  if (longest <= LARGEST) return;
  throw new Refusal([
    {
      field: 'paper.scale',
      value: Math.round(longest),
      phrase: say`one large sheet would be ${mm(longest)} long; a PDF page can be ${mm(LARGEST)} at most: take the joined sheets instead`,
    },
  ]);
}
