export { type DrawnPath, LAYERS, type Layer, type PieceDrawing, pieceDrawing, type Stroke } from './drawing';
export { boxesMeet, boxGrown, boxHolds, drawingInk, type Ink, inkBounds, inkCrosses, inkNear } from './ink';
export { MARK, markCorners } from './marks';
export { LARGEST_PAGE, OWN_SIZE, PAPER_SIZES, type PaperSize } from './paper-sizes';
export { placer } from './placer';
export { placedDrawings, uprightPlaces } from './places';
export type { Search } from './search';
export { tilePieces } from './tile';
export type * from './types';
