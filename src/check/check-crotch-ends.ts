import { legFrom } from '../leg';
import { type Point, pathEndWay, pathStartWay } from '../plane';
import { degrees, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixPyjamaShape, withFix } from './fixes';
import { seamCurves } from './measuring';

/** A crotch curve that arrives steeper makes a hook between the legs. @source practice */
const STEEPEST = 20;
/** A pyjama leg is proposed where it is flatter by this; fitting the crotch again moves less. */
const WORTH = 1;

/** Both crotch curves arrive nearly level at the crotch point. */
export function checkCrotchEnds(subject: Subject): Check {
  const { sewn } = subject.finished;
  const front = slope(pathEndWay(seamCurves(sewn, 'crotchFront')));
  const back = slope(pathStartWay(seamCurves(sewn, 'crotchBack')));
  const worst = Math.max(front, back);
  const good = worst <= STEEPEST;
  const flatter = !good && pyjamaWorst(subject) < worst - WORTH;
  return {
    id: 'crotch-ends',
    name: say`Crotch ends nearly level`,
    verdict: good ? 'good' : 'doubtful',
    measured: worst,
    wanted: STEEPEST,
    tolerance: 0,
    unit: 'degrees',
    reason: say`At the crotch point the front curve arrives at ${degrees(front)}, the back at ${degrees(back)} from level.`,
    remedy: good
      ? UNSAID
      : flatter
        ? say`A pyjama leg slants less where the crotch meets it.`
        : subject.traced
          ? flatterRedrawn(front, back)
          : say`Measure body rise and crotch length again: the crotch is long for its height.`,
    ...withFix(flatter ? fixPyjamaShape() : undefined),
  };
}

/** Which curve of the blocks to redraw, and by how much. */
const flatterRedrawn = (front: number, back: number): Phrase =>
  front > back
    ? say`Redraw the lower end of the front crotch curve flatter, by ${degrees(front - STEEPEST)}.`
    : say`Redraw the lower end of the back crotch curve flatter, by ${degrees(back - STEEPEST)}.`;

/** What a pyjama leg of the same blocks would have; its crotch curves arrive square to its own inseams. */
function pyjamaWorst({ joined, choices }: Subject): number {
  if (choices.shape === 'pyjama') return Number.POSITIVE_INFINITY;
  const { front, back } = legFrom(joined, { ...choices, shape: 'pyjama' });
  return Math.max(slope(pathEndWay(front.crotch)), slope(pathEndWay(back.crotch)));
}

const slope = (way: Point): number => (Math.atan2(Math.abs(way.y), Math.abs(way.x)) * 180) / Math.PI;
