export { type PairDifference, TRUINGS, type Truing } from './differences';
export { PAPER_SEAM_NAMES, PAPER_SEAMS, type PaperAllowances, type PaperSeam, pairNet, WIDEST_ON_PAPER } from './net';
export { differenceTold, TRUING_NAMES, truingDone, truingOffered } from './told';
export { pairTrued, type TruedPair } from './trued';
