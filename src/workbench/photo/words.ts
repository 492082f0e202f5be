import type { BlockEdge } from '../../block';
import type { Landmark } from '../../trace';
import { type Phrase, say } from '../../words';

/** What each place of a block is called, and where it lies. */
export const LANDMARK_WORDS: Readonly<Record<Landmark, { readonly name: Phrase; readonly where: Phrase }>> = {
  waistSide: { name: say`Waist at the side`, where: say`Where the waist line meets the side seam.` },
  waistCentre: { name: say`Waist at the centre`, where: say`Where the waist line meets centre front or centre back.` },
  hipCentre: {
    name: say`Hip at the centre`,
    where: say`Where the line of the fullest hip meets the centre line or the crotch curve.`,
  },
  crotchTop: { name: say`Start of the crotch curve`, where: say`Where the centre line stops being straight.` },
  crotchPoint: { name: say`Crotch point`, where: say`The tip, where the crotch curve meets the inseam.` },
  knee: {
    name: say`Knee at the inseam`,
    where: say`Where the knee line meets the inseam.`,
  },
  hemInseam: { name: say`Hem at the inseam`, where: say`The lower corner on the inner leg.` },
  hemSide: { name: say`Hem at the side`, where: say`The lower corner on the outer leg.` },
  hipSide: { name: say`Hip at the side`, where: say`Where the line of the fullest hip meets the side seam.` },
  grainTop: {
    name: say`Upper end of the grainline`,
    where: say`Any point of the grainline; the farther from the other, the truer.`,
  },
  grainBottom: {
    name: say`Lower end of the grainline`,
    where: say`Another point of the grainline, as far down as it goes.`,
  },
};

export const EDGE_NAMES: Readonly<Record<BlockEdge, Phrase>> = {
  waist: say`Waist`,
  centre: say`Centre line`,
  crotch: say`Crotch curve`,
  inseam: say`Inseam`,
  hem: say`Hem`,
  side: say`Side`,
};
