export {
  type CasingChoices,
  type CasingHeights,
  type CasingLines,
  casingHeights,
  casingLines,
  elasticLength,
  waistOpening,
} from './casing';
export {
  type Allowances,
  type EdgeChoices,
  type FinishedLeg,
  finishLeg,
  type Growth,
  growthFor,
  type LegEdge,
} from './finish';
export { type HemChoices, type HemTurning, hemTurning } from './hem';
export {
  type CutEdge,
  cutCurves,
  type LineKind,
  type Notch,
  type Piece,
  type PieceLine,
  type PieceText,
} from './piece';
export { edgesWorking } from './working';
