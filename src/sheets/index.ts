export { type DrawnPath, LAYERS, type Layer, type PieceDrawing, pieceDrawing, type Stroke } from './drawing';
export { boxesMeet, boxGrown, boxHolds, drawingInk, type Ink, inkBounds, inkCrosses, inkNear } from './ink';
export { MARK, markCorners } from './marks';
export { PAPER_SIZES, type PaperSize } from './paper-sizes';
export { placedDrawings } from './places';
export { tilePieces } from './tile';
export type * from './types';
