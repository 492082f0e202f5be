import { mm, type Phrase, say } from '../../words';
import type { TapeKey } from './table';

/**
 * Where the tape lies for each length of the table. It stands beside the table and not in it, so that the page needn't load
 * it before somebody measures a block.
 *
 * @source practice
 */
export const TAPE_PLACES: Readonly<Record<TapeKey, Phrase>> = {
  waistToHip: say`From the waist’s end at the side, straight down along the grain, to the level of the hip line.`,
  hipToCrotch: say`From the hip line straight down to the level of the crotch point, where the inseam begins.`,
  crotchToKnee: say`From the level of the crotch point straight down to the knee line. Leave it out where the block has no knee.`,
  crotchToHem: say`From the level of the crotch point straight down to the hem.`,
  waistWidth: say`Straight across, square to the grain: from the waist’s end at the side to the level of its end at the centre, over the darts as they lie open.`,
  hipWidth: say`Along the hip line, from the side to the centre line; where the crotch curve has already begun there, to the centre line carried on straight.`,
  crotchWidth: say`Straight across from the crotch point to the side.`,
  kneeWidth: say`Straight across from the inseam to the side.`,
  hemWidth: say`Straight across from the inseam to the side.`,
  fork: say`Carry the centre line on straight down to the crotch line; from there straight across to the crotch point.`,
  centreRise: say`How much higher the waist lies at the centre than at the side; less than ${mm(0)} where it lies lower.`,
  centreLean: say`Set a ruler upright on the hip line’s end at the centre: how far inside of it the waist’s end lies; less than ${mm(0)} where it lies outside.`,
  curveStart: say`From the crotch line straight up to where the centre line stops being straight.`,
  grainHip: say`Along the hip line, from the side to the grainline, carried on where it ends below.`,
  grainKnee: say`Along the knee line, from the side to the grainline.`,
  grainHem: say`Along the hem, from the side to the grainline, carried on where it ends above.`,
  waistEdge: say`Stand the tape on its edge and follow the waist from the side to the centre, over the darts as they lie open.`,
  crotchSeam: say`Stand the tape on its edge and follow the line from the waist down the centre and round the curve to the crotch point.`,
  inseam: say`Follow the line from the crotch point down to the hem.`,
  side: say`Follow the line from the waist down to the hem.`,
};
