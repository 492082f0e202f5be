import { pathEndWay, pathStartWay } from '../plane';
import { degrees, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixStraightenTo, withFix } from './fixes';
import { drawnCurves, offSquare, seamCurves } from './measuring';

const TOLERANCE = 6;
/** Centres that lean 8° and 4°, the most that is drawn, leave exactly 6° at both ends. */
const ROUNDING = 0.01;
/** Both leans together must leave this much for a straight waist edge to be within 6° of square at both ends. */
const LEANS_LEFT = 11.9;

/** With the centre seams sewn, the waist edge runs on smoothly from leg to leg: within 6° of square to both. */
export function checkWaistSmooth({ finished: { sewn }, leg }: Subject): Check {
  const edge = drawnCurves(sewn, 'waistEdge') ?? leg.waistEdge;
  const front = offSquare(pathEndWay(edge), pathStartWay(seamCurves(sewn, 'centreFront')));
  const back = offSquare(pathStartWay(edge), pathEndWay(seamCurves(sewn, 'centreBack')));
  const worst = Math.max(front, back);
  const good = worst <= TOLERANCE + ROUNDING;
  const leans = leg.front.lean + leg.back.lean;
  const unstraightened = leans / Math.max(1e-9, 1 - leg.straighten);
  return {
    id: 'waist-smooth',
    name: say`Waist runs smooth`,
    verdict: good ? 'good' : 'doubtful',
    measured: 90 - worst,
    wanted: 90,
    tolerance: TOLERANCE,
    unit: 'degrees',
    reason:
      front > back
        ? say`At the front the waist edge is ${degrees(worst)} off square to the centre seam.`
        : say`At the back the waist edge is ${degrees(worst)} off square to the centre seam.`,
    remedy: good ? UNSAID : say`Straighten the centre lines: the less they lean, the squarer the waist.`,
    ...withFix(good || leans <= LEANS_LEFT ? undefined : fixStraightenTo(1 - LEANS_LEFT / unstraightened)),
  };
}
