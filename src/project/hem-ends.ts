import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import type { Draft, DraftLeg } from './draft-types';

/** Nearer to the floor a hem only touches it, and legs that differ by less are alike, mm. @source tolerance */
const TOLD: Mm = 0.5;

/**
 * How high above the floor a leg's hem ends, barefoot: what is left of the inside leg below a crotch that hangs as low
 * as it does. Negative where it would lie on the floor.
 *
 * @param leg a leg of the draft
 * @source geometry
 */
export const hemAboveFloor = ({ body, measures }: Pick<DraftLeg, 'body' | 'measures'>): Mm =>
  body.insideLeg - measures.riseEase - measures.inseamFront;

/**
 * What the hem will do when the garment is worn: “ends 2.5 cm above the floor”; “about” where the inside leg itself was
 * only estimated.
 *
 * @param draft the draft
 */
export function hemEnds({ legs, body }: Draft): Phrase {
  const [first, second] = legs.map(hemAboveFloor);
  const about = body.estimates.some(({ key }) => key === 'insideLeg');
  if (first === undefined) return say`no hem`;
  if (second === undefined || Math.abs(first - second) < TOLD) return hemEnd(first, about);
  return say`on the left ${hemEnd(first, about)}, on the right ${hemEnd(second, about)}`;
}

function hemEnd(above: Mm, about: boolean): Phrase {
  if (Math.abs(above) < TOLD) return say`just reaches the floor`;
  if (above < 0) return about ? say`lies about ${mm(-above)} on the floor` : say`lies ${mm(-above)} on the floor`;
  return about ? say`ends about ${mm(above)} above the floor` : say`ends ${mm(above)} above the floor`;
}
