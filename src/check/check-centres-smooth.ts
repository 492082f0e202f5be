import { type Curve, pathEndWay, pathStartWay, turnBetween } from '../plane';
import { degrees, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { seamCurves } from './measuring';

/** A seam that turns more at one place stands up there when both legs are joined. @source practice */
const TOLERANCE = 6;

/** With the legs joined, centre front and centre back run down into the crotch curve without a kink. */
export function checkCentresSmooth({ finished: { sewn }, traced }: Subject): Check {
  const front = kink([...seamCurves(sewn, 'centreFront'), ...seamCurves(sewn, 'crotchFront')]);
  const back = kink([...seamCurves(sewn, 'crotchBack'), ...seamCurves(sewn, 'centreBack')]);
  const worst = Math.max(front, back);
  const good = worst <= TOLERANCE;
  return {
    id: 'centres-smooth',
    name: say`Centres run smooth`,
    verdict: good ? 'good' : 'doubtful',
    measured: worst,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'degrees',
    reason: good
      ? say`Joined, both centre seams run into the crotch curve without a kink over ${degrees(TOLERANCE)}.`
      : front > back
        ? say`Joined, the centre front seam has a kink of ${degrees(worst)}; ${degrees(TOLERANCE)} is the most.`
        : say`Joined, the centre back seam has a kink of ${degrees(worst)}; ${degrees(TOLERANCE)} is the most.`,
    remedy: good
      ? UNSAID
      : traced
        ? say`Draw the centre line and the crotch curve of the block so that one runs into the other.`
        : say`Check waist, hip and body rise: no centre seam is drawn with a kink.`,
  };
}

/** The sharpest turn from one curve of a seam to the next, degrees; a curve that came to nothing has no direction. */
function kink(curves: readonly Curve[]): number {
  const drawn = curves.filter(([a, , , d]) => a.x !== d.x || a.y !== d.y);
  const turns = drawn
    .slice(1)
    .map((curve, i) => Math.abs(turnBetween(pathEndWay([drawn[i] as Curve]), pathStartWay([curve]))));
  return (Math.max(0, ...turns) * 180) / Math.PI;
}
