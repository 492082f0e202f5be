export { pieceDrawing } from '../sheets';
export { safeFileName } from './file-name';
export { writeHandout } from './handout';
export { writeDxf } from './lazy-dxf';
export { writeLargePdf, writePdf } from './lazy-pdf';
export { INK, LINE_STYLES, type LineStyle } from './line-styles';
export type { PdfOptions } from './pdf-options';
export { makeReport, type Report, type ReportPiece, writeReport } from './report';
export { writeSvg } from './svg';
