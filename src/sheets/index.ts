export { type ClearPlaces, clearPlaces } from './clear-places';
export { type ControlLength, controlLengths } from './controls';
export { MARK, markCorners } from './marks';
export {
  LARGEST_PAGE,
  OWN_SIZE,
  PAPER_SIZES,
  type PaperSize,
  paperName,
  paperSize,
  SMALLEST_PAGE,
} from './paper-sizes';
export { type PrintedSheets, printedSheets } from './printed';
export {
  correctionFor,
  correctionRemarks,
  type EdgeLine,
  edgeLines,
  marginRemark,
  type PrinterTest,
  printerTest,
} from './printer';
export {
  correctionTold,
  type ProjectorCorrection,
  type ProjectorTest,
  projectorCorrection,
  projectorRemarks,
  projectorTest,
} from './projector';
export { CHECK_SQUARE, type ReferenceSheet, referenceSheet } from './reference';
export { MOST_MOVED, type Reprint, reprint, STILL } from './reprint';
export type { Search } from './search';
export { LEAST_SCALE, paperWays, WIDEST_CORRECTION, WIDEST_MARGIN, WIDEST_PROJECTED } from './settings';
export { joinLine, markBoxes, partsInOrder, planParts, sheetCell, tipBox } from './sight';
export { tilePieces } from './tile';
export type * from './types';
