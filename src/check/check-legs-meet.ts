import type { Mm } from '../length';
import { distance, pathLength, pathStart } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { drawnCurves, seamCurves } from './measuring';

/** As for the inseams: what is sewn to each other differs by no more. */
const TOLERANCE = 1;

/** One stretch of the seam between the legs, from a notch on. */
interface Stretch {
  readonly name: Phrase;
  readonly length: Mm;
}

/**
 * The crotch seams of two different legs are equally long, front to front and back to back, and their notches meet:
 * from the notch up to the waist edge, and from it down to the crotch point.
 *
 * @param left of the left leg
 * @param right of the right leg
 */
export function checkLegsMeet(left: Subject, right: Subject): Check {
  const others = stretchesOf(right);
  const off = stretchesOf(left).map(({ name, length }, i) => ({
    name,
    by: Math.abs(length - (others[i]?.length ?? 0)),
  }));
  const worst = off.reduce((a, b) => (b.by > a.by ? b : a));
  const good = worst.by <= TOLERANCE;
  return {
    id: 'legs-meet',
    name: say`Left and right meet`,
    verdict: good ? 'good' : 'wrong',
    measured: worst.by,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: good
      ? say`Sewn to each other, the crotch seams of the left and the right leg meet within ${mm(worst.by)}, notch on notch.`
      : say`${worst.name} differs by ${mm(worst.by)} between the left leg and the right one, which are sewn to each other.`,
    remedy: good ? UNSAID : say`Make the difference between left and right smaller.`,
  };
}

function stretchesOf({ finished: { sewn }, leg }: Subject): readonly Stretch[] {
  const waist = drawnCurves(sewn, 'waistEdge') ?? leg.waistEdge;
  const ends = { Front: leg.front.waistPoint, Back: pathStart(waist) };
  return (['Front', 'Back'] as const).flatMap((part) => {
    const notch =
      sewn.notches.find(({ edge }) => edge === `centre${part}`)?.at ??
      leg[part === 'Front' ? 'front' : 'back'].curveEnd;
    return [
      {
        name: part === 'Front' ? say`Centre front above its notch` : say`Centre back above its notch`,
        length: distance(ends[part], notch),
      },
      {
        name: part === 'Front' ? say`The front crotch curve` : say`The back crotch curve`,
        length: pathLength(seamCurves(sewn, `crotch${part}`)),
      },
    ];
  });
}
