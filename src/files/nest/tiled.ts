import { drawingInk, type PieceDrawing } from '../../drawing';
import { pieceName } from '../../edges';
import { type Draft, sheetsOf, withoutLastPrint } from '../../project';
import { paperName } from '../../sheets';
import { number, own, printPhrase, words } from '../../words';
import { layersWith } from '../content/layers';
import { sheetRemarks } from '../content/rows';
import { drawFirst } from '../pdf/first-page';
import { firstPage } from '../pdf/first-paper';
import { firstWords } from '../pdf/first-words';
import { drawSheet } from '../pdf/sheet';
import { sheetWords } from '../pdf/sheet-words';
import type { PdfOptions } from '../pen/options';
import { headedWhole } from '../pen/passage';
import { startPdf } from '../pen/pen';
import type { LongWork } from '../work/long-work';
import { nestedDrawing } from './drawing';
import { nestKey } from './key';
import { nestLayers } from './layers';
import { type Nest, nestTitle } from './nest';
import { nestedPieces } from './pieces';
import { nestedWords } from './words';

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
  const told = { ...firstWords(whole, options.date, options.fileName ?? 'nested.pdf'), title };
  const says = words`${number(nest.length)} bodies on one drawing: the legs lie with their side lines and crotch lines on each other; each body has a line type, a colour and a number of its own. Cut lines, folds and notches are drawn for every body; what else is in a piece stands in its own pattern.`;
  const key = headedWhole(words`What each line is`, { kind: 'paragraph', text: says }, nestKey(nest));
  drawFirst(pen, page, told, [{ columns: 1, passages: key }], whole, drawings);

  const ink = drawingInk(drawings);
  const wanted = nestedWords(pieces, plan.places, { project, scale: project.paper.scale });
  const wordsOf = sheetWords(wanted, plan, plan.sheets, ink, pen.widthOf);
  const remarks = sheetRemarks(project.paper);
  const noted = (shown: readonly PieceDrawing[]) => [
    `${shown.map(({ piece }) => printPhrase(pieceName(piece), project.units)).join(', ')} · ${title}`,
    words`Which line is whose: on the first pages.`,
  ];
  for (const [i, sheet] of plan.sheets.entries()) {
    yield { share: i / plan.sheets.length, doing: words`sheet ${own(sheet.label)}` };
    pen.newPage(plan.paper.width, plan.paper.height);
    drawSheet(pen, { plan, drawings, ink, wordsOf, says: noted, remarks, look }, sheet);
  }
  return pen.bytes();
}
