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
export { alongEdge, type EdgeName, edgeName, isAlong, isTurning, isWorn } from './edge-names';
export { type EdgeChoices, type FinishedEdges, type FinishedLeg, finishLeg, finishLegs, legPieces } from './finish';
export { HEM_FINISH_NAMES, WAIST_FINISH_NAMES } from './finish-names';
export { type PiecedLeg, WORTH_PIECING } from './fork-tip';
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
export {
  drawnKey,
  type FoldName,
  isLevel,
  type LevelName,
  type LineKind,
  type LineName,
  levelName,
  type PieceLine,
  pieceLine,
} from './line-names';
export { type BodyGirths, hemHeight, type Notions, notionsOf } from './notions';
export {
  type CutEdge,
  cutCurves,
  type Notch,
  type Piece,
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
export { type Allowances, type Seam, type SeamKind, type SeamPart, seamParts, seamsOf } from './seams';
export { isDrawnLeft, isLeg, piecesOfSides } from './sides';
export { sewnStretch, USABLE_STRETCH } from './stretch';
export { edgesWorking } from './working';
