export { type FoundMark, findMarks } from './find-marks';
export { FAINT, type FollowedLine, followLine } from './follow-line';
export { type GreyPicture, greyPicture } from './grey';
export {
  CELLS,
  cellsOfMark,
  MARK_SHEET,
  MARKS_A_SHEET,
  MOST_SHEETS,
  marksOfSheet,
  sheetOfMark,
} from './mark-sheet';
