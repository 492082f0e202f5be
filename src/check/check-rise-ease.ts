import { type Mm, mm, say } from '../length';
import { pathEnd } from '../plane';
import type { Check, Fix, Subject } from './check';
import { fixLowerCrotchDownTo, fixLowerCrotchTo, fixRiseEaseTo, withFix } from './fixes';
import { seamCurves, smallBody } from './measuring';

/** Less pinches when sitting (less does so on a small body), more hangs (practice; NMSU C-209, quoted: ½ to 1 in, fitted). */
const LEAST: Mm = 10;
const MOST: Mm = 60;
const ROUNDING = 0.01;
/** Where the crotch length is fitted, up to half of a change of depth is taken back. */
const STAYS = 0.5;

/** How far the crotch hangs below the body: the crotch point's depth below the waist level, less the body rise. */
export function checkRiseEase(subject: Subject): Check {
  const { body, finished } = subject;
  const depth = pathEnd(seamCurves(finished.sewn, 'crotchFront')).y;
  const ease = depth - body.bodyRise;
  const least = LEAST * smallBody(body);
  const [shallow, deep] = [ease < least - ROUNDING, ease > MOST + ROUNDING];
  return {
    id: 'rise-ease',
    name: 'Ease in the rise',
    verdict: ease < 0 ? 'wrong' : shallow || deep ? 'mind' : 'good',
    measured: ease,
    wanted: Math.min(MOST, Math.max(least, ease)),
    tolerance: 0,
    unit: 'mm',
    reason: say`The crotch lies ${mm(Math.abs(ease))} ${ease < 0 ? 'above' : 'below'} the body; ${mm(least)} to ${mm(MOST)} below is wanted.`,
    remedy: shallow
      ? say`Lower the crotch by ${mm(least - ease)}, or measure body rise and crotch length again.`
      : deep
        ? say`Lower the crotch less, or draw the blocks with less ease in the rise.`
        : [],
    ...withFix(shallow ? deeper(subject, least - ease) : deep ? shallower(subject, ease - MOST) : undefined),
  };
}

const neededFor = ({ blocks }: Subject, by: Mm): Mm => (blocks.crotchWanted === undefined ? by : by / STAYS);

const deeper = (subject: Subject, by: Mm): Fix | undefined =>
  fixLowerCrotchTo(subject.choices.lowerCrotch + neededFor(subject, by));

/** First what was lowered is taken back, then what the blocks give themselves. */
function shallower(subject: Subject, by: Mm): Fix | undefined {
  const { blocks, choices, traced } = subject;
  const less = neededFor(subject, by);
  if (choices.lowerCrotch > 0) return fixLowerCrotchDownTo(choices.lowerCrotch - less);
  return traced || blocks.riseEase < less ? undefined : fixRiseEaseTo(blocks.riseEase - less);
}
