import type { Mm } from '../length';
import { dot, solveBetween, subtract, TOLERANCE } from '../plane';
import { mm, Refusal, say } from '../words';
import { type Centre, type Centres, centresOf } from './centres';
import type { JoinedBlocks } from './join';

/**
 * A lowered waist edge stays this far above the hip line and above the crotch curves, along each centre line: below the
 * hip nothing holds the waist up, and in the curve there is no straight seam left for the casing.
 *
 * @source practice
 */
const ABOVE_HIP: Mm = 10;

/**
 * Refuses a waist edge that is lowered into the hip line or into a crotch curve. Blocks that leave less room as they
 * are may be used as they are.
 *
 * @param joined the joined and spread blocks
 * @param straighten as found or chosen
 * @param raiseWaist how far the waist edge is raised; negative where it is lowered
 * @throws Refusal naming where it sinks in, and how far it can be lowered
 */
export function refuseSunkenWaist(joined: JoinedBlocks, straighten: number, raiseWaist: Mm): void {
  if (raiseWaist >= 0) return;
  const roomAt = (raise: Mm): Mm => roomOf(centresOf(joined, straighten, raise), joined.front.hipLevel);
  const wanted = Math.min(ABOVE_HIP, roomAt(0));
  // Where there is no number the whole leg is none, and that is told instead.
  if (!(roomAt(raiseWaist) < wanted)) return;
  const lowest = Math.min(
    0,
    solveBetween((raise) => roomAt(raise) - wanted, raiseWaist, 0, TOLERANCE.solved),
  );
  const { front, back } = centresOf(joined, straighten, raiseWaist);
  const hip = joined.front.hipLevel;
  const part = centreRoom(front, hip) < centreRoom(back, hip) ? 'front' : 'back';
  const most = lowest > -1 ? say`it can’t be lowered` : say`it can be lowered by ${mm(-lowest)} at most`;
  const by = mm(-raiseWaist);
  const phrase =
    part === 'front'
      ? say`lowered by ${by} the waist edge would come nearer than ${mm(wanted)} to the hip line at centre front, or to the crotch curve below it; on these blocks ${most}.`
      : say`lowered by ${by} the waist edge would come nearer than ${mm(wanted)} to the hip line at centre back, or to the crotch curve below it; on these blocks ${most}.`;
  throw new Refusal([{ field: 'leg.raiseWaist', value: raiseWaist, phrase }]);
}

const roomOf = ({ front, back }: Centres, hipLevel: Mm): Mm =>
  Math.min(centreRoom(front, hipLevel), centreRoom(back, hipLevel));

/** From the waist edge down the centre line to the hip line, or to the crotch curve where that begins above it. */
const centreRoom = ({ waistPoint, curveEnd, way }: Centre, hipLevel: Mm): Mm =>
  Math.min((hipLevel - waistPoint.y) / way.y, dot(subtract(curveEnd, waistPoint), way));
