import { baseline, drawingInk, INK, lineHeight, type PieceDrawing } from '../../drawing';
import { pieceName } from '../../edges';
import { point } from '../../plane';
import { type Draft, sheetsOf, withoutLastPrint } from '../../project';
import { paperName } from '../../sheets';
import { number, own, printPhrase, words } from '../../words';
import { layersWith } from '../content/layers';
import { sheetRemarks } from '../content/rows';
import { drawFirst } from '../pdf/first-page';
import { firstWords } from '../pdf/first-words';
import { drawSheet } from '../pdf/sheet';
import { sheetWords } from '../pdf/sheet-words';
import { firstPage } from '../pdf/tiled';
import type { PdfOptions } from '../pen/options';
import { startPdf } from '../pen/pen';
import { wrapText } from '../pen/text-flow';
import type { LongWork } from '../work/long-work';
import { nestedDrawing } from './drawing';
import { drawKey, keyRows } from './key';
import { nestLayers } from './layers';
import { type Nest, nestTitle } from './nest';
import { nestedPieces } from './pieces';
import { nestedWords } from './words';

const TITLE_PT = 15;
const WORDS_PT = 9;

/**
 * The nest on joined sheets: a first sheet, the key, then the sheets, each with a step of its own.
 *
 * @throws Refusal where the paper can't be
 */
export function* nestedWork(nest: Nest, options: PdfOptions): LongWork<Uint8Array> {
  const [first] = nest;
  const { project } = first;
  const title = nestTitle(nest);
  const pieces = nestedPieces(nest, 'printed');
  yield { share: 0, doing: words`laying out the sheets` };
  const wholes = pieces.map((piece) => piece.whole);
  const whole: Draft = {
    ...first,
    project: withoutLastPrint(project),
    pieces: wholes,
    printed: wholes,
    search: 'quick',
  };
  const plan = sheetsOf(whole);
  const { drawings, look } = nestedDrawing(pieces, plan.places);
  const page = firstPage(plan, project.units === 'inch');
  const pen = startPdf(page.width, page.height, options.font, {
    title,
    subject: words`${number(nest.length)} bodies on one drawing, ${number(plan.sheets.length)} sheets ${paperName(plan.paper.name)}`,
    date: options.date,
    oneSided: true,
    layers: layersWith(nestLayers(nest)),
  });
  const rows = keyRows(nest);
  const told = firstWords(whole, options.date, options.fileName ?? 'nested.pdf');
  drawFirst(
    pen,
    page,
    {
      ...told,
      title,
      key: false,
      sections: [],
    },
    whole,
    drawings,
  );
  pen.newPage(page.width, page.height);
  pen.words(words`Key: ${own(title)}`, point(page.margin, baseline(page.margin, TITLE_PT)), {
    pt: TITLE_PT,
    colour: INK.cut,
  });
  const width = page.width - 2 * page.margin;
  let top = page.margin + 2 * lineHeight(TITLE_PT);
  for (const line of wrapText(
    words`${number(nest.length)} bodies on one drawing: the legs lie with their side lines and crotch lines on each other; each body has a line type, a colour and a number of its own. Cut lines, folds and notches are drawn for every body; what else is in a piece stands in its own pattern.`,
    width,
    WORDS_PT,
    pen.widthOf,
  )) {
    pen.words(line, point(page.margin, baseline(top, WORDS_PT)), { pt: WORDS_PT, colour: INK.words });
    top += lineHeight(WORDS_PT);
  }
  drawKey(pen, rows, page.margin, top + lineHeight(WORDS_PT), width);

  const ink = drawingInk(drawings);
  const wanted = nestedWords(pieces, plan.places, { project, scale: project.paper.scale });
  const wordsOf = sheetWords(wanted, plan, plan.sheets, ink, pen.widthOf);
  const remarks = sheetRemarks(project.paper);
  const says = (shown: readonly PieceDrawing[]) => [
    `${shown.map(({ piece }) => printPhrase(pieceName(piece), project.units)).join(', ')} · ${title}`,
    words`Key: on the second page.`,
  ];
  for (const [i, sheet] of plan.sheets.entries()) {
    yield { share: i / plan.sheets.length, doing: words`sheet ${own(sheet.label)}` };
    pen.newPage(plan.paper.width, plan.paper.height);
    drawSheet(pen, { plan, drawings, ink, wordsOf, says, remarks, look }, sheet);
  }
  return pen.bytes();
}
