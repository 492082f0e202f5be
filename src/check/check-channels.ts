import { mm, say } from '../length';
import { leftOf, type Point, pathEnd, pathStart, subtract, unit } from '../plane';
import type { Check, Subject } from './check';
import { fixTurnOfCloth, withFix } from './fixes';
import { drawnCurves } from './measuring';

/** An elastic slides through a channel that is this much wider (practice). */
const ROOM = 1.5;
/** With this turn of the cloth every row has exactly its room. */
const ENOUGH_TURN = 3;
const ROUNDING = 1e-6;

/** Every row of threaded elastic has a channel in which it slides; left out where the elastic is sewn on. */
export function checkChannels({ finished: { sewn }, waist }: Subject): Check | undefined {
  const [fold, stitching] = [drawnCurves(sewn, 'waist fold'), drawnCurves(sewn, 'casing stitching')];
  if (waist.elastic === 'sewnOn' || !fold || !stitching) return undefined;
  const across = leftOf(unit(subtract(pathEnd(stitching), pathStart(stitching))));
  const above = (p: Point) => (p.x - pathStart(stitching).x) * across.x + (p.y - pathStart(stitching).y) * across.y;
  const room = Math.min(above(pathStart(fold)), above(pathEnd(fold))) / waist.rows;
  const needed = waist.elasticWidth + ROOM;
  const good = room >= needed - ROUNDING;
  return {
    id: 'channels',
    name: 'Elastic has room',
    verdict: good ? 'good' : 'wrong',
    measured: room,
    wanted: needed,
    tolerance: 0,
    unit: 'mm',
    reason: say`The channel is ${mm(room)} high for an elastic of ${mm(waist.elasticWidth)}; it slides from ${mm(needed)} on.`,
    remedy: good ? [] : say`Allow more for the turn of the cloth, ${mm(ENOUGH_TURN)} at least.`,
    ...withFix(good || waist.turnOfCloth >= ENOUGH_TURN ? undefined : fixTurnOfCloth(ENOUGH_TURN)),
  };
}
