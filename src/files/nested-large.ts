import { type Mm, mm, Refusal, say } from '../length';
import { point } from '../plane';
import { type Box, boxGrown, LARGEST_PAGE } from '../sheets';
import { INK, type LineStyle } from './line-styles';
import { type Nest, nestSideBySide, nestTitle } from './nest';
import { drawKey, keyHeight, keyRows } from './nested-key';
import { frameAt } from './page-frame';
import { drawPaths } from './pdf-drawing';
import { TEST_SQUARES } from './pdf-first';
import type { PdfOptions } from './pdf-options';
import { startPdf } from './pdf-pen';
import { baseline, lineHeight, mmOfPt, ptOfCapitals } from './print-type';
import type { Steps } from './steps';
import { scaleSentence } from './words';

const MARGIN: Mm = 15;
const GAP: Mm = 10;
/** Beside the squares the key needs at least this. */
const LEAST_KEY: Mm = 250;
const SQUARE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const TITLE_PT = 24;
const WORDS_PT = 11;

/**
 * The nest on one large sheet, the key and both test squares below it.
 *
 * @throws Refusal where the sheet would be larger than a page can be (5,080 mm)
 */
export function* nestedLargeSteps(nest: Nest, options: PdfOptions): Steps<Uint8Array> {
  const { project } = nest[0];
  const { scale, correctX, correctY } = project.paper;
  const factor = { x: scale * correctX, y: scale * correctY };
  const { drawings, styleOf, box } = nestSideBySide(nest, 'printed');
  yield { share: 0, doing: 'one large sheet' };
  const frame = frameAt(MARGIN, MARGIN, box, factor);
  const rows = keyRows(nest);
  const squares = TEST_SQUARES.reduce((sum, { side }) => sum + side * correctX + GAP, 0);
  const width = Math.max(frame.box.right, MARGIN + squares + LEAST_KEY) + MARGIN;
  const room = width - 2 * MARGIN - squares;
  const top = frame.box.bottom + GAP;
  // The type's widths are known before the page is: its height follows from the key.
  const ruler = startPdf(width, 1000, options.font, { title: '', subject: '', date: options.date });
  const head = lineHeight(TITLE_PT) + 2 * lineHeight(WORDS_PT);
  const foot = Math.max(TEST_SQUARES[1].side * correctY, head + keyHeight(rows, room, ruler.widthOf));
  const height = top + foot + MARGIN;
  refuseTooLarge(Math.max(width, height));
  const title = nestTitle(nest);
  const pen = startPdf(width, height, options.font, {
    title,
    subject: `${nest.length} bodies on one drawing, one large sheet`,
    date: options.date,
  });
  drawPaths(pen, drawings, boxGrown(box, 1), frame, factor.x, styleOf);
  for (const { text, at, size, turn } of drawings.flatMap((drawing) => drawing.texts)) {
    const pt = ptOfCapitals(size * Math.min(factor.x, factor.y));
    pen.words(text, frame.map(at), { pt, colour: INK.words, align: 'middle', turn });
  }
  let left = MARGIN;
  for (const { side, label } of TEST_SQUARES) {
    const square: Box = { left, top, right: left + side * correctX, bottom: top + side * correctY };
    pen.frame(square, SQUARE);
    const at = point((square.left + square.right) / 2, (square.top + square.bottom) / 2 + mmOfPt(WORDS_PT) / 3);
    pen.words(label, at, { pt: WORDS_PT, colour: INK.words, align: 'middle' });
    left = square.right + GAP;
  }
  pen.words(title, point(left, baseline(top, TITLE_PT)), { pt: TITLE_PT, colour: INK.cut });
  const say100 = `${scaleSentence(project.paper)} Print at 100 %, no fit to page. Measure both squares before cutting.`;
  pen.words(say100.trim(), point(left, baseline(top + lineHeight(TITLE_PT), WORDS_PT)), {
    pt: WORDS_PT,
    colour: INK.words,
  });
  drawKey(pen, rows, left, top + head, room);
  return pen.bytes();
}

function refuseTooLarge(longest: Mm): void {
  if (longest <= LARGEST_PAGE) return;
  throw new Refusal([
    {
      field: 'paper.scale',
      value: Math.round(longest),
      phrase: say`one large sheet would be ${mm(longest)} long; a PDF page can be ${mm(LARGEST_PAGE)} at most: take the joined sheets instead`,
    },
  ]);
}
