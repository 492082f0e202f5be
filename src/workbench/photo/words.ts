import type { BlockEdge, Landmark } from '../../block';

/** What each place of a block is called, and where it lies. */
export const LANDMARK_WORDS: Readonly<Record<Landmark, { readonly name: string; readonly where: string }>> = {
  waistSide: { name: 'Waist at the side', where: 'Where the waist line meets the side seam.' },
  waistCentre: { name: 'Waist at the centre', where: 'Where the waist line meets centre front or centre back.' },
  hipCentre: {
    name: 'Hip at the centre',
    where: 'Where the line of the fullest hip meets the centre line or the crotch curve.',
  },
  crotchTop: { name: 'Start of the crotch curve', where: 'Where the centre line stops being straight.' },
  crotchPoint: { name: 'Crotch point', where: 'The tip, where the crotch curve meets the inseam.' },
  knee: {
    name: 'Knee at the inseam',
    where: 'Where the knee line meets the inseam; halfway down the leg, if there is none.',
  },
  hemInseam: { name: 'Hem at the inseam', where: 'The lower corner on the inner leg.' },
  hemSide: { name: 'Hem at the side', where: 'The lower corner on the outer leg.' },
  hipSide: { name: 'Hip at the side', where: 'Where the line of the fullest hip meets the side seam.' },
  grainTop: {
    name: 'Upper end of the grainline',
    where: 'Any point of the grainline; the farther from the other, the truer.',
  },
  grainBottom: { name: 'Lower end of the grainline', where: 'Another point of the grainline, as far down as it goes.' },
};

export const EDGE_NAMES: Readonly<Record<BlockEdge, string>> = {
  waist: 'Waist',
  centre: 'Centre line',
  crotch: 'Crotch curve',
  inseam: 'Inseam',
  hem: 'Hem',
  side: 'Side',
};
