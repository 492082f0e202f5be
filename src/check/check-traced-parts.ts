import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** Two blocks whose crotches are as wide, one as the other, say nothing of which is which. @source practice */
const TOLERANCE = 5;

/** The block that was brought as the back is one: its crotch reaches farther than the front's, round the seat. @source practice */
export function checkTracedParts({ traced, blocks: { extensionFront, extensionBack } }: Subject): Check | undefined {
  if (!traced) return undefined;
  const farther = extensionBack - extensionFront;
  const good = farther > -TOLERANCE;
  return {
    id: 'traced-parts',
    name: say`Front and back not swapped`,
    verdict: good ? 'good' : 'wrong',
    measured: farther,
    wanted: Math.max(0, farther),
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: good
      ? say`Beyond the centre, the crotch reaches ${mm(extensionFront)} in front and ${mm(extensionBack)} behind.`
      : say`Beyond the centre, the crotch reaches ${mm(extensionFront)} in front and only ${mm(extensionBack)} behind; in trousers it reaches farther behind.`,
    remedy: good
      ? UNSAID
      : say`Were front and back swapped? Call the lines of the front back-… and those of the back front-….`,
  };
}
