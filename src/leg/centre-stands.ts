import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import type { Centre } from './centres';
import { centreLean } from './lean';

/** A centre that leans less than a tenth of a millimetre is called upright: no ruler reads it. @source tolerance */
const UPRIGHT: Mm = 0.1;

/** How a centre stands: “leans 2.9 cm”, “leans 3.1 cm outwards”, “stands upright”. */
export function centreStands(part: 'front' | 'back', centre: Pick<Centre, 'curveEnd' | 'waistPoint'>): Phrase {
  const lean = centreLean(part, centre);
  if (Math.abs(lean) < UPRIGHT) return say`stands upright`;
  return lean < 0 ? say`leans ${mm(-lean)} outwards` : say`leans ${mm(lean)}`;
}
