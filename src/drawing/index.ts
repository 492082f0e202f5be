export { apart, BLOCKS_SPACE, edgeApart } from './apart';
export { type DrawnPath, LAYERS, type Layer, type PieceDrawing, pieceDrawing, type Stroke } from './drawing';
export { drawingInk, INK_CHORD, type Ink, type InkLine, inkBounds, inkCrosses, inkNear } from './ink';
export { type Crosses, inkGrid } from './ink-grid';
export { INK, LINE_STYLES, type LineStyle, printedStyle, type StyleOf } from './line-styles';
export { placer, turnCosSin } from './placer';
export { PIECE_GAP, pieceBounds, placedDrawings, uprightPlaces } from './places';
export {
  PRINTED,
  PRINTED_SINGLY,
  PRINTED_WIDE,
  printedLetters,
  printFontName,
  unprintedTold,
} from './print-letters';
export {
  ASCENT,
  baseline,
  capitalsOfPt,
  DESCENT,
  LINE_TOP,
  lineHeight,
  mmOfPt,
  ptOfCapitals,
  type WidthOf,
} from './print-type';
export type * from './types';
export type { Wanted, WantedAlong, WantedLine, WantedOnce, WordRoom, WordSetting } from './wanted-words';
export { placeWords } from './word-places';
export { LEAST_PT, type PlacedWord, wordBoxes } from './word-shape';
export { type StandingWord, type Stretch, type Surroundings, wordShifts } from './word-shifts';
