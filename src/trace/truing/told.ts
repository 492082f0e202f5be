import { degrees, inTurn, mm, type Phrase, say } from '../../words';
import type { PairDifference, Truing } from './differences';

/** What is trued, as a list names it. */
export const TRUING_NAMES: Readonly<Record<Truing, Phrase>> = {
  hips: say`Hip lines`,
  waist: say`Waist at the side`,
  hem: say`Hems`,
  inseams: say`Inseams`,
  crotch: say`Crotch run`,
};

/** What front and back measure where they should agree, in a sentence; and a second one where that is too much to true. */
export function differenceTold(difference: PairDifference): Phrase {
  return difference.kind === 'left' ? inTurn([figuresTold(difference), TOO_MUCH]) : figuresTold(difference);
}

const TOO_MUCH = say`That is more than a pencil line: either the blocks were cut so, or a line lies in the wrong place.`;

function figuresTold({ truing, front, back, by }: PairDifference): Phrase {
  switch (truing) {
    case 'hips':
      return say`Below the waist at the side, the hip line lies ${mm(front)} down in front and ${mm(back)} behind.`;
    case 'waist':
      return say`From the hip line up to the waist, the side is ${mm(front)} long in front and ${mm(back)} behind.`;
    case 'hem':
      return say`Below the hip line at the side, the hem lies ${mm(front)} down in front and ${mm(back)} behind.`;
    case 'inseams':
      return say`The inseams are ${mm(front)} long in front and ${mm(back)} behind.`;
    case 'crotch':
      return say`With the inseams sewn together, the two corners at the crotch point add up to ${degrees(180 + by)}; the seam runs on smoothly at ${degrees(180)}.`;
  }
}

/** What a press does about a difference. */
export function truingOffered({ truing, by }: PairDifference): Phrase {
  const [off, half] = [Math.abs(by), mm(Math.abs(by) / 2)];
  switch (truing) {
    case 'hips':
      return say`Level the hip lines: ${half} on each block`;
    case 'waist':
      return say`True the waist at the side: ${half} on each block`;
    case 'hem':
      return say`Level the hems: ${half} on each block`;
    case 'inseams':
      return by > 0
        ? say`True the inseams: lower the back crotch point by ${mm(off)}`
        : say`True the inseams: raise the back crotch point by ${mm(off)}`;
    case 'crotch':
      return say`True the crotch run by ${degrees(off)}`;
  }
}

/** What was done about a difference. */
export function truingDone({ truing, by }: PairDifference): Phrase {
  const [off, half] = [Math.abs(by), mm(Math.abs(by) / 2)];
  switch (truing) {
    case 'hips':
      return say`The hip lines were levelled: ${half} on each block.`;
    case 'waist':
      return say`The waist was trued at the side: ${half} on each block.`;
    case 'hem':
      return say`The hems were levelled: ${half} on each block.`;
    case 'inseams':
      return by > 0
        ? say`The back crotch point was lowered by ${mm(off)}; the inseams are equal.`
        : say`The back crotch point was raised by ${mm(off)}; the inseams are equal.`;
    case 'crotch':
      return say`The crotch run was trued by ${degrees(off)}.`;
  }
}
