import { type Phrase, say } from '../words';

/** The machine needle for a cloth, wherever it is named. @source practice */
export const NEEDLES: Readonly<Record<'woven' | 'knit', Phrase>> = {
  woven: say`universal or sharp, 80/12; 90/14 for heavy flannel`,
  knit: say`ball point (jersey) or stretch, 80/12`,
};

/** For two rows of stitching at once that give with a knit. @source practice */
export const TWIN_NEEDLE = say`twin needle for jersey, 4.0/80`;
