export { findMarks } from './find-marks';
export { FAINT, followLine } from './follow-line';
export { type GreyPicture, greyPicture } from './grey';
export { CELLS, cellsOfMark, MARK_SHEET, MOST_SHEETS, marksOfSheet, sheetOfMark } from './mark-sheet';
