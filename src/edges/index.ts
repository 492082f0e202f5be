export {
  type CasingChoices,
  type CasingHeights,
  type CasingLines,
  type Channel,
  casingHeights,
  casingLines,
  cordLength,
  ELASTIC_LAP,
  elasticLength,
  WAIST_FINISHES,
  type WaistFinish,
  waistOpening,
} from './casing';
export { type EdgeChoices, type FinishedEdges, type FinishedLeg, finishLeg, finishLegs, legPieces } from './finish';
export { PIECING, type PiecedLeg, WORTH_PIECING } from './fork-tip';
export {
  HEM_FINISHES,
  type HemChoices,
  type HemFinish,
  type HemPlan,
  type HemTurning,
  hemPlan,
  hemTurning,
  usualTurnUnder,
} from './hem';
export { type BodyGirths, hemHeight, type Notions, notionsOf } from './notions';
export type { Allowances, LegEdge } from './outline';
export {
  type CutEdge,
  cutCurves,
  type LineKind,
  type Notch,
  type Piece,
  type PieceLine,
  type PieceText,
} from './piece';
export {
  isSamePiece,
  KIND_NAMES,
  type PieceKind,
  type PieceRef,
  pieceKey,
  pieceName,
  pieceRef,
} from './piece-names';
export { otherPieces, waistRound } from './pieces';
export type { PocketChoices } from './pocket';
export { isDrawnLeft, isLeg, piecesOfSides } from './sides';
export { sewnStretch, USABLE_STRETCH } from './stretch';
export { edgesWorking } from './working';
