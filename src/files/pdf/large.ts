import {
  baseline,
  drawingInk,
  INK,
  inkBounds,
  lineHeight,
  placedDrawings,
  uprightPlaces,
  type WidthOf,
} from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import type { Draft } from '../../project';
import { own, say, words } from '../../words';
import { patternWords } from '../content/piece-words';
import { bodyRows, cutRows, type Row, scaleSentence } from '../content/rows';
import { wholeWords } from '../content/whole-words';
import { drawPaths } from '../pen/draw-paths';
import { drawWords } from '../pen/draw-words';
import type { PdfOptions } from '../pen/options';
import { frameAt } from '../pen/page-frame';
import { startPdf } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';
import {
  drawSquares,
  LARGE_GAP,
  LARGE_MARGIN,
  LARGE_TITLE_PT,
  LARGE_WORDS_PT,
  refuseLargerThanPage,
  squaresSize,
} from './large-sheet';

/** Beside the squares the words need at least this. */
const LEAST_WORDS: Mm = 100;

/**
 * All pieces on one sheet of the size they need, at true scale, with both test squares and the words below them.
 *
 * @throws Refusal where the sheet would be longer or wider than a PDF page can be (5,080 mm)
 */
export function writeLargePdf(draft: Draft, options: PdfOptions): Uint8Array {
  const { project } = draft;
  const { scale, correctX, correctY } = project.paper;
  const factor = { x: scale * correctX, y: scale * correctY };
  const places = uprightPlaces(draft.printed);
  const drawings = placedDrawings(draft.printed, places);
  const ink = drawingInk(drawings);
  const box = inkBounds(ink);
  const frame = frameAt(LARGE_MARGIN, LARGE_MARGIN, box, factor);
  const squares = squaresSize(project.paper);
  const width = Math.max(frame.box.right, LARGE_MARGIN + squares.width + LEAST_WORDS) + LARGE_MARGIN;
  const top = frame.box.bottom + LARGE_GAP;
  const left = LARGE_MARGIN + squares.width;
  // The type's widths are known before the page is: its height follows from the words.
  const ruler = startPdf(width, 1000, options.font, { title: '', subject: '', date: options.date });
  const lines = wordLines(draft, width - LARGE_MARGIN - left, ruler.widthOf);
  const wordsHigh = lines.reduce((sum, { pt }) => sum + lineHeight(pt), 0);
  const height = top + Math.max(squares.height, wordsHigh) + LARGE_MARGIN;
  refuseLargerThanPage(width, height, say`one large sheet`, { field: 'paper.scale' });

  const pen = startPdf(width, height, options.font, {
    title: project.name,
    subject: words`Lounge pant for ${own(project.body.label)}, one large sheet`,
    date: options.date,
  });
  drawPaths(pen, drawings, box, frame, factor.x);
  const wanted = patternWords(draft.printed, places, { project, scale, date: options.date });
  drawWords(pen, wholeWords(wanted, { box, scale: factor, ink, widthOf: pen.widthOf }), frame);
  pen.onLayer('notes', () => {
    drawSquares(pen, LARGE_MARGIN, top, project.paper);
    let y = top;
    for (const { text, pt } of lines) {
      pen.words(text, point(left, baseline(y, pt)), { pt, colour: INK.words });
      y += lineHeight(pt);
    }
  });
  return pen.bytes();
}

interface WordLine {
  readonly text: string;
  readonly pt: number;
}

/** What stands beside the squares, line by line; all of it, however long the names are. */
function wordLines(draft: Draft, room: Mm, widthOf: WidthOf): readonly WordLine[] {
  const { project } = draft;
  const listed = (rows: readonly Row[], between: string) =>
    rows.map(({ name, value }) => `${name} ${value}`).join(between);
  const sentences = [
    scaleSentence(project.paper),
    words`Print at 100 %, no fit to page. Measure both squares before cutting.`,
    `${project.body.label}: ${listed(bodyRows(draft), ', ')}`,
    words`Cut ${own(listed(cutRows(draft), '; '))}`,
  ].filter((sentence) => sentence !== '');
  const set = (pt: number) => (text: string) => wrapText(text, room, pt, widthOf).map((line) => ({ text: line, pt }));
  return [...set(LARGE_TITLE_PT)(project.name), ...sentences.flatMap(set(LARGE_WORDS_PT))];
}
