import { mm, say } from '../length';
import { distance, pathEnd, pathLength, pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixRaiseWaistTo, withFix } from './fixes';
import { drawnCurves, seamCurves } from './measuring';

const TOLERANCE = 15;
/** A waist is raised or lowered by no more than this to make up: beyond it the measurements contradict each other. */
const MOST_RAISED = 50;

/**
 * From waist edge to waist edge through the crotch the leg is as long as was wanted: measured on the body, and ease. Left
 * out where it was not measured. Shorter than the body itself is wrong.
 */
export function checkCrotchLength({ body, blocks, choices, finished, leg }: Subject): Check | undefined {
  const wanted = blocks.crotchWanted;
  if (wanted === undefined || body.crotchLength === undefined) return undefined;
  const { sewn } = finished;
  const waist = drawnCurves(sewn, 'waist edge') ?? leg.waistEdge;
  const [front, back] = [seamCurves(sewn, 'crotchFront'), seamCurves(sewn, 'crotchBack')];
  const length =
    distance(pathEnd(waist), pathStart(front)) +
    pathLength(front) +
    pathLength(back) +
    distance(pathEnd(back), pathStart(waist));
  const miss = length - wanted;
  const good = Math.abs(miss) <= TOLERANCE;
  // A waist that was lowered into the crotch curve has no centre line left to lengthen.
  const sunk = [leg.front, leg.back].some((half) => half.waistPoint.y >= half.curveEnd.y);
  const raise = choices.raiseWaist - miss / 2;
  return {
    id: 'crotch-length',
    name: 'Crotch length',
    verdict: good ? 'good' : length < body.crotchLength ? 'wrong' : 'mind',
    measured: length,
    wanted,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`Through the crotch it measures ${mm(length)}; ${mm(wanted)} is wanted, the body's ${mm(body.crotchLength)} and ease.`,
    remedy: good
      ? []
      : say`Measure crotch length and body rise again, from the same tape. If both are right, ${miss < 0 ? 'raise' : 'lower'} the waist by ${mm(Math.abs(miss) / 2)}.`,
    ...withFix(good || sunk || Math.abs(miss) / 2 > MOST_RAISED ? undefined : fixRaiseWaistTo(raise)),
  };
}
