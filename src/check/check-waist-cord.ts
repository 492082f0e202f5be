import { CORD_ENDS, cordRulesFor, gatheredEnd } from '../body';
import { inTurn, mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixElasticCasing, withFix } from './fixes';

/**
 * A cord at the waist of a child: its free ends are as short as the rules ask, tacked down behind as the steps say; under
 * seven elastic is the better choice even so. Left out for anybody else, and where there is no cord.
 *
 * @source EN 14682:2007, quoted
 */
export function checkWaistCord({ body, ageYears, opening, cordLength }: Subject): Check | undefined {
  const { hold, young } = cordRulesFor({ ageYears, child: body.child });
  if (cordLength === undefined || !hold) return undefined;
  const widest = (cordLength - opening) / 2;
  const gathered = gatheredEnd(widest, opening, body.waistGirth);
  const long = widest > CORD_ENDS.widest || gathered > CORD_ENDS.gathered;
  const byGathered = widest <= CORD_ENDS.widest && gathered > CORD_ENDS.gathered;
  const most = Math.min(CORD_ENDS.widest, widest + CORD_ENDS.gathered - gathered);
  return {
    id: 'waist-cord',
    name: say`Cord at the waist`,
    verdict: long ? 'wrong' : young ? 'doubtful' : 'good',
    measured: byGathered ? gathered : widest,
    wanted: byGathered ? CORD_ENDS.gathered : CORD_ENDS.widest,
    tolerance: 0,
    unit: 'mm',
    reason: inTurn([
      say`On a child’s clothes each end of a cord may hang free by at most ${mm(CORD_ENDS.widest)} with the waist at its widest, and by ${mm(CORD_ENDS.gathered)} drawn in; here it is ${mm(widest)} and ${mm(gathered)}.`,
      young && !long ? say`Under seven years the rules are stricter.` : UNSAID,
    ]),
    remedy: long
      ? most > 0
        ? say`Choose elastic, or cut the cord ${mm(opening + 2 * most)} long and sew it down at centre back.`
        : say`Choose elastic: this waist is too wide for any cord.`
      : young
        ? say`Choose elastic instead of the cord.`
        : UNSAID,
    ...withFix(long || young ? fixElasticCasing('waist') : undefined),
  };
}
