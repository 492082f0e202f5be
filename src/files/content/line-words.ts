import { type EdgeName, edgeName, type FoldName, type LineName } from '../../edges';
import type { Mm } from '../../length';
import { mm, type Phrase, say } from '../../words';

/** Ways to say what a line is, the fullest first. */
export type LineWords = readonly [Phrase, ...Phrase[]];

const LENGTHEN: LineWords = [say`lengthen or shorten here`];
const FOLD: LineWords = [say`fold here`, say`fold`];

/** What each line inside a piece says along itself; of a nest's own lines the key tells. */
export const LINE_WORDS: Readonly<Record<Exclude<LineName, 'cutLine'>, LineWords>> = {
  waistEdge: [say`waist edge`, say`waist`],
  casingStitching: [say`casing – stitch here`, say`stitch`],
  channelStitching: [say`channel – stitch here`, say`stitch`],
  hip: [say`hip line`, say`hip`],
  crotchLine: [say`crotch line`, say`crotch`],
  knee: [say`knee line`, say`knee`],
  lengthenRise: LENGTHEN,
  lengthenThigh: LENGTHEN,
  lengthenCalf: LENGTHEN,
  side: [say`side – no seam here`, say`side, no seam`],
  hemStitching: [say`hem – stitch here`, say`stitch`],
  quarter: [say`quarter`],
  hemQuarter: [say`quarter of the hem`, say`quarter`],
  cordOpening: [say`buttonhole for the cord`, say`buttonhole`],
  hemCordOpening: [say`buttonhole for the cord`, say`buttonhole`],
  pocketPlace: [say`pocket placement`, say`pocket`],
};

/** What each fold says. */
export const FOLD_WORDS: Readonly<Record<FoldName, LineWords>> = {
  waistFold: [say`waist fold – the finished top edge`, say`waist fold`],
  hemFold: [say`hem fold – the finished hem`, say`hem fold`],
  turnUnderFold: [say`turn under here`, say`turn under`],
  casingFold: FOLD,
  waistBandFold: FOLD,
  hemBandFold: FOLD,
  cuffFold: FOLD,
  pocketFold: [say`fold – the pocket’s opening`, say`fold`],
  waistCordFold: FOLD,
  hemCordFold: FOLD,
};

/** What the cut line says. */
export const CUT_WORDS: LineWords = [say`cut here`];

/** What the grainline says. */
export const GRAIN_WORDS: LineWords = [say`straight grain, along the selvedge`, say`straight grain`, say`grain`];

/** What the stitching line of an edge says, so far inside the cut line. */
export const stitchWords = (edge: EdgeName, allowance: Mm): LineWords => [
  say`${edgeName(edge)} – stitch (${mm(allowance)})`,
  say`stitch (${mm(allowance)})`,
  say`stitch`,
];
