import type { Mm } from '../length';
import { pathEnd } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Fix, Subject } from './check';
import { fixLowerCrotchDownTo, fixLowerCrotchTo, fixRiseEaseTo, withFix } from './fixes';
import { seamCurves, smallBody } from './measuring';

/** Less pinches when sitting (less does so on a small body), more hangs. @source practice; NMSU C-209, quoted: ½ to 1 in, fitted */
const LEAST: Mm = 10;
const MOST: Mm = 60;
const ROUNDING = 0.01;
/** From here on the fit of a measured crotch length gives the depth itself, and takes back what is chosen. */
const FIT_OF_DEPTH = 1;

/**
 * How far the crotch hangs below the body: the printed crotch point's depth below the waist level, less the body rise.
 * What is drafted, fitted and lowered is all in it, what is raised at the waist is not.
 */
export const riseEaseOf = ({ body, finished }: Pick<Subject, 'body' | 'finished'>): Mm =>
  pathEnd(seamCurves(finished.sewn, 'crotchFront')).y - body.bodyRise;

/** The crotch hangs below the body by enough to sit, and no more. */
export function checkRiseEase(subject: Subject): Check {
  const { body } = subject;
  const ease = riseEaseOf(subject);
  const least = LEAST * smallBody(body);
  const [shallow, deep] = [ease < least - ROUNDING, ease > MOST + ROUNDING];
  return {
    id: 'rise-ease',
    name: say`Ease in the rise`,
    verdict: ease < 0 ? 'wrong' : shallow || deep ? 'doubtful' : 'good',
    measured: ease,
    wanted: Math.min(MOST, Math.max(least, ease)),
    tolerance: 0,
    unit: 'mm',
    reason:
      ease < 0
        ? say`The crotch lies ${mm(-ease)} above the body; ${mm(least)} to ${mm(MOST)} below is wanted.`
        : say`The crotch lies ${mm(ease)} below the body; ${mm(least)} to ${mm(MOST)} below is wanted.`,
    remedy: shallow
      ? say`Lower the crotch by ${mm(least - ease)}, or measure body rise and crotch length again.`
      : deep
        ? say`Lower the crotch less, or draw the blocks with less ease in the rise.`
        : UNSAID,
    ...withFix(shallow ? deeper(subject, least - ease) : deep ? shallower(subject, ease - MOST) : undefined),
  };
}

const deeper = ({ choices }: Subject, by: Mm): Fix | undefined => fixLowerCrotchTo(choices.lowerCrotch + by);

/** First what was lowered is taken back, then what was chosen or is usual for the blocks. */
function shallower({ choices, blocks, proportions }: Subject, by: Mm): Fix | undefined {
  if (choices.lowerCrotch > 0) return fixLowerCrotchDownTo(choices.lowerCrotch - by);
  if (!proportions || Math.abs(blocks.crotchFit) > FIT_OF_DEPTH) return undefined;
  const { riseEaseChosen: chosen } = proportions;
  return chosen < by ? undefined : fixRiseEaseTo(chosen - by);
}
