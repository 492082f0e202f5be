import { pathEndWay, pathStartWay } from '../plane';
import { degrees, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { drawnCurves, offSquare, seamCurves } from './measuring';

const TOLERANCE = 6;

/** With the inseam sewn, the hem runs on smoothly across it: within 6° of square at both ends. */
export function checkHemSmooth({ finished: { sewn }, leg }: Subject): Check {
  const fold = drawnCurves(sewn, 'hemFold') ?? leg.hem;
  const front = offSquare(pathStartWay(fold), pathEndWay(seamCurves(sewn, 'inseamFront')));
  const back = offSquare(pathEndWay(fold), pathStartWay(seamCurves(sewn, 'inseamBack')));
  const worst = Math.max(front, back);
  const good = worst <= TOLERANCE;
  return {
    id: 'hem-smooth',
    name: say`Hem runs smooth`,
    verdict: good ? 'good' : 'doubtful',
    measured: 90 - worst,
    wanted: 90,
    tolerance: TOLERANCE,
    unit: 'degrees',
    reason:
      front > back
        ? say`At the front the hem is ${degrees(worst)} off square to the inseam.`
        : say`At the back the hem is ${degrees(worst)} off square to the inseam.`,
    remedy: good ? UNSAID : say`Choose a straighter leg or another length: the inseam slants too much where it is cut.`,
  };
}
