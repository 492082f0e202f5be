import { degrees, say } from '../length';
import { type Point, pathEndWay, pathStartWay } from '../plane';
import type { Check, Subject } from './check';
import { fixPyjamaShape, withFix } from './fixes';
import { seamCurves } from './measuring';

/** A crotch curve that arrives steeper makes a hook between the legs (practice). */
const STEEPEST = 20;

/** Both crotch curves arrive nearly level at the crotch point. */
export function checkCrotchEnds({ finished: { sewn }, choices: { shape } }: Subject): Check {
  const front = slope(pathEndWay(seamCurves(sewn, 'crotchFront')));
  const back = slope(pathStartWay(seamCurves(sewn, 'crotchBack')));
  const worst = Math.max(front, back);
  const good = worst <= STEEPEST;
  const ownInseams = shape === 'block' || shape === 'straight';
  return {
    id: 'crotch-ends',
    name: 'Crotch ends nearly level',
    verdict: good ? 'good' : 'mind',
    measured: worst,
    wanted: STEEPEST,
    tolerance: 0,
    unit: 'degrees',
    reason: say`At the crotch point the front curve arrives at ${degrees(front)}, the back at ${degrees(back)} from level.`,
    remedy: good
      ? []
      : ownInseams
        ? say`A pyjama leg slants less where the crotch meets it.`
        : say`Measure body rise and crotch length again: the crotch is long for its height.`,
    ...withFix(good || !ownInseams ? undefined : fixPyjamaShape()),
  };
}

const slope = (way: Point): number => (Math.atan2(Math.abs(way.y), Math.abs(way.x)) * 180) / Math.PI;
