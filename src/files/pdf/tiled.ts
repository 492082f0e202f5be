import { drawingInk, type PieceDrawing, placedDrawings } from '../../drawing';
import { pieceName } from '../../edges';
import { type Draft, reprintOf, sheetsOf } from '../../project';
import { paperName, type Reprint } from '../../sheets';
import { number, own, type Phrase, Refusal, said, say, words } from '../../words';
import { patternWords } from '../content/piece-words';
import { sheetRemarks } from '../content/rows';
import type { PdfOptions } from '../pen/options';
import { startPdf } from '../pen/pen';
import { safeFileName } from '../work/file-name';
import type { LongWork } from '../work/long-work';
import { controlWords } from './control-words';
import { drawFirst, otherWords } from './first-page';
import { firstPage } from './first-paper';
import { firstWords } from './first-words';
import { drawSheet } from './sheet';
import { sheetWords } from './sheet-words';

/**
 * The tiled PDF: the first sheet, then every sheet of the plan at true scale.
 *
 * @param draft the finished draft; its plan says the paper and the sheets
 * @param start starts the file: another writer may draw the same, to be held against ours
 * @returns the bytes of the file, after a step for each sheet
 */
export function pdfWork(draft: Draft, options: PdfOptions, start = startPdf): LongWork<Uint8Array> {
  return tiledWork(draft, undefined, options, start);
}

/**
 * Only the sheets that changed since the pattern was printed, and a first sheet that says which ones to throw away.
 *
 * @throws Refusal where nothing was printed of the project before, too little of it can be kept, or nothing has changed
 */
export function changedWork(draft: Draft, options: PdfOptions): LongWork<Uint8Array> {
  const again = reprintOf(draft);
  if (!draft.project.lastPrint)
    throw notMade(
      say`nothing is known of an earlier print: it is noted in the project that is open where the sheets are saved, and in the one that is packed with them. Print all sheets.`,
    );
  if (!again) throw notMade(say`too few of the sheets that were printed can be kept. Print all sheets.`);
  if (again.anew.length === 0) throw notMade(say`every sheet that was printed can be kept; there is nothing to print.`);
  return tiledWork(draft, again, options);
}

const notMade = (phrase: Phrase) => new Refusal([{ field: 'files', value: 'changed', phrase }]);

/** @param again where only its changed sheets are wanted */
function* tiledWork(
  draft: Draft,
  again: Reprint | undefined,
  options: PdfOptions,
  start = startPdf,
): LongWork<Uint8Array> {
  const { project } = draft;
  const plan = sheetsOf(draft);
  const sheets = again ? plan.sheets.filter(({ label }) => again.anew.includes(label)) : plan.sheets;
  const drawings = placedDrawings(draft.printed, plan.places);
  const page = firstPage(plan, project.units === 'inch');
  const pen = start(page.width, page.height, options.font, {
    title: project.name,
    subject: words`Lounge pant for ${own(project.body.label)}, ${number(sheets.length)} sheets ${paperName(plan.paper.name)}`,
    date: options.date,
    oneSided: true,
  });
  const fileName = options.fileName ?? `${safeFileName(project.name)}.pdf`;
  const told = firstWords(draft, options.date, fileName, { again });
  drawFirst(pen, page, told, [otherWords(page, told, drawings)], draft, drawings, again?.anew);
  const ink = drawingInk(drawings);
  const { once, along } = patternWords(draft.printed, plan.places, {
    project,
    scale: project.paper.scale,
    date: options.date,
  });
  const wanted = { once, along: [...controlWords(draft), ...along] };
  const wordsOf = sheetWords(wanted, plan, sheets, ink, pen.widthOf);
  const remarks = sheetRemarks(project.paper);
  const says = (shown: readonly PieceDrawing[]) => [
    `${shown.map(({ piece }) => said(pieceName(piece))).join(', ')} · ${project.name}`,
  ];
  for (const [i, sheet] of sheets.entries()) {
    yield { share: i / sheets.length, doing: words`sheet ${own(sheet.label)}` };
    pen.newPage(plan.paper.width, plan.paper.height);
    drawSheet(pen, { plan, drawings, ink, wordsOf, says, remarks }, sheet);
  }
  return pen.bytes();
}
