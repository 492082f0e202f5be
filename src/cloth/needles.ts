/** The machine needle for a cloth, wherever it is named. @source practice */
export const NEEDLES: Readonly<Record<'woven' | 'knit', string>> = {
  woven: 'universal or sharp, 80/12; 90/14 for heavy flannel',
  knit: 'ball point (jersey) or stretch, 80/12',
};

/** For two rows of stitching at once that give with a knit. @source practice */
export const TWIN_NEEDLE = 'twin needle for jersey, 4.0/80';
