import { baseline, INK, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { boxGrown, point } from '../../plane';
import { number, say, words } from '../../words';
import { layersWith } from '../content/layers';
import { scaleSentence } from '../content/rows';
import { wholeWords } from '../content/whole-words';
import {
  drawSquares,
  LARGE_GAP,
  LARGE_MARGIN,
  LARGE_TITLE_PT,
  LARGE_WORDS_PT,
  refuseLargerThanPage,
  squaresSize,
} from '../pdf/large-sheet';
import { drawPaths } from '../pen/draw-paths';
import { drawWords } from '../pen/draw-words';
import type { PdfOptions } from '../pen/options';
import { frameAt } from '../pen/page-frame';
import { passageStrips } from '../pen/passage-strips';
import { startPdf } from '../pen/pen';
import { drawStrips, stripsHeight } from '../pen/strip';
import { wrapText } from '../pen/wrap-text';
import type { LongWork } from '../work/long-work';
import { nestKey } from './key';
import { nestLayers } from './layers';
import { type Nest, nestSideBySide, nestTitle } from './nest';

/** Beside the squares the key needs at least this. */
const LEAST_KEY: Mm = 250;

/**
 * The nest on one large sheet, the key and both test squares below it.
 *
 * @throws Refusal where the sheet would be larger than a page can be (5,080 mm)
 */
export function* nestedLargeWork(nest: Nest, options: PdfOptions): LongWork<Uint8Array> {
  const { project } = nest[0];
  const { scale, correctX, correctY } = project.paper;
  const factor = { x: scale * correctX, y: scale * correctY };
  const { drawings, look, box, ink, wanted } = nestSideBySide(nest, 'printed');
  yield { share: 0, doing: words`one large sheet` };
  const frame = frameAt(LARGE_MARGIN, LARGE_MARGIN, box, factor);
  const squares = squaresSize(project.paper);
  const width = Math.max(frame.box.right, LARGE_MARGIN + squares.width + LEAST_KEY) + LARGE_MARGIN;
  const left = LARGE_MARGIN + squares.width;
  const room = width - LARGE_MARGIN - left;
  const top = frame.box.bottom + LARGE_GAP;
  // The type's widths are known before the page is: its height follows from the key.
  const ruler = startPdf(width, 1000, options.font, { title: '', subject: '', date: options.date });
  const title = nestTitle(nest);
  const advice = `${scaleSentence(project.paper)} ${words`Print at 100 %, no fit to page. Measure both squares before cutting.`}`;
  const head = [
    ...wrapText(title, room, LARGE_TITLE_PT, ruler.widthOf).map((text) => ({ text, pt: LARGE_TITLE_PT })),
    ...wrapText(advice.trim(), room, LARGE_WORDS_PT, ruler.widthOf).map((text) => ({ text, pt: LARGE_WORDS_PT })),
  ];
  const headHeight = head.reduce((sum, { pt }) => sum + lineHeight(pt), lineHeight(LARGE_WORDS_PT));
  const key = passageStrips([nestKey(nest)], room, ruler.widthOf);
  const foot = Math.max(squares.height, headHeight + stripsHeight(key));
  const height = top + foot + LARGE_MARGIN;
  refuseLargerThanPage(width, height, say`one large sheet`, { field: 'paper.scale' });
  const pen = startPdf(width, height, options.font, {
    title,
    subject: words`${number(nest.length)} bodies on one drawing, one large sheet`,
    date: options.date,
    layers: layersWith(nestLayers(nest)),
  });
  drawPaths(pen, drawings, boxGrown(box, 1), frame, factor.x, look);
  drawWords(pen, wholeWords(wanted, { box, scale: factor, ink, widthOf: pen.widthOf }), frame);
  pen.onLayer('notes', () => {
    drawSquares(pen, LARGE_MARGIN, top, project.paper);
    let y = top;
    for (const { text, pt } of head) {
      pen.words(text, point(left, baseline(y, pt)), { pt, colour: pt === LARGE_TITLE_PT ? INK.cut : INK.words });
      y += lineHeight(pt);
    }
  });
  pen.onLayer('key', () => drawStrips(pen, key, left, top + headHeight));
  return pen.bytes();
}
