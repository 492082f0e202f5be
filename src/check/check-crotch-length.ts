import type { Mm } from '../length';
import { distance, pathEnd, pathLength, pathStart } from '../plane';
import { inTurn, mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { drawnCurves, seamCurves } from './measuring';

const TOLERANCE = 15;
/** The fit reaches the measured length to a hundredth, or it is at its end and something is left. */
const REST = 0.5;

/**
 * From waist edge to waist edge through the crotch the leg is as long as was wanted: measured on the body, and ease, and
 * what was raised, lowered or corrected on purpose. Left out where it was not measured. Shorter than the body itself is
 * wrong; so much as the fit could not reach is told.
 */
export function checkCrotchLength({ body, blocks, proportions, choices, finished, leg }: Subject): Check | undefined {
  const wanted = blocks.crotchWanted;
  if (wanted === undefined || body.crotchLength === undefined) return undefined;
  const { sewn } = finished;
  const waist = drawnCurves(sewn, 'waistEdge') ?? leg.waistEdge;
  const [front, back] = [seamCurves(sewn, 'crotchFront'), seamCurves(sewn, 'crotchBack')];
  const length =
    distance(pathEnd(waist), pathStart(front)) +
    pathLength(front) +
    pathLength(back) +
    distance(pathEnd(back), pathStart(waist));
  const miss = length - wanted;
  const spent = Math.abs(blocks.crotchRest) > REST;
  const good = Math.abs(miss) <= TOLERANCE && !spent;
  return {
    id: 'crotch-length',
    name: say`Crotch length`,
    verdict: good ? 'good' : miss < -(proportions?.crotchEase ?? 0) ? 'wrong' : 'doubtful',
    measured: length,
    wanted,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`${inTurn([wantedTold(length, wanted, body.crotchLength, choices), restTold(blocks.crotchRest, spent), frontTold(blocks.frontCrotchRest)], '; ')}.`,
    remedy: good ? UNSAID : say`Measure rise and crotch length again, from the same tape at the waist.`,
  };
}

function wantedTold(length: Mm, wanted: Mm, ofBody: Mm, { raiseWaist, lowerCrotch }: Subject['choices']): Phrase {
  return raiseWaist !== 0 || lowerCrotch !== 0
    ? say`Through the crotch it measures ${mm(length)}; ${mm(wanted)} is wanted, the body’s ${mm(ofBody)} and ease and what was raised or lowered`
    : say`Through the crotch it measures ${mm(length)}; ${mm(wanted)} is wanted, the body’s ${mm(ofBody)} and ease`;
}

function restTold(rest: Mm, spent: boolean): Phrase {
  if (!spent) return UNSAID;
  return rest < 0
    ? say`as far as a cutter goes, the blocks are ${mm(-rest)} too short`
    : say`as far as a cutter goes, the blocks are ${mm(rest)} too long`;
}

/** The front part is met where a straight grain can; how far it is missed is told, and judged by the whole. */
function frontTold(rest: Mm): Phrase {
  if (Math.abs(rest) <= TOLERANCE) return UNSAID;
  return rest < 0 ? say`its front part is ${mm(-rest)} short` : say`its front part is ${mm(rest)} long`;
}
