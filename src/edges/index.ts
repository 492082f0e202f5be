export { type CutEdge, cutCurves, type LineKind, type Notch, type Piece, type PieceLine, type PieceText } from './piece';
