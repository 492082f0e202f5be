import { type Body, fullestGirth } from '../body';
import { casingLines, waistOpening } from '../edges';
import { centresOf } from '../leg';
import type { Mm } from '../length';
import { mm, say, UNSAID } from '../words';
import { type Check, type ClothFigures, type Subject, usableStretch } from './check';
import { fixSpreadTo, fixStraightenAuto, withFix } from './fixes';

/** Room beyond the fullest girth in a woven, so that pulling on is no struggle. @source practice */
const COMFORT = 20;
/** Rounding in the search for the least straightening. */
const HAIR = 1e-6;

/**
 * What the waist opening must measure at least, so that the trousers pull on without a zip: the fullest girth, less
 * what a knit gives, plus comfort in a woven.
 *
 * @param body the body
 * @param cloth kind and measured stretch
 * @source practice; the principle is read in several sources
 */
export function pullOnNeeded(body: Body, cloth: ClothFigures): Mm {
  if (cloth.kind === 'woven') return fullestGirth(body) + COMFORT;
  return fullestGirth(body) / (1 + usableStretch(cloth));
}

/** A waist edge that slants gets longer by a little less than the leg is spread. */
const SLANT = 1.01;

/** The waist opening passes over the fullest part of the body. */
export function checkPullOn({ body, cloth, leg, joined, choices, finished, opening }: Subject): Check {
  const needed = pullOnNeeded(body, cloth);
  const short = needed - opening;
  const good = short <= HAIR;
  const upright = waistOpening(casingLines(centresOf(joined, 1, choices.raiseWaist), finished.heights));
  const gains = !leg.straightenAutomatic && upright > opening + HAIR;
  const most = gains ? upright : opening;
  const passesUpright = gains && upright >= needed;
  const spread = leg.spread + (SLANT * Math.max(0, needed - most)) / 2;
  return {
    id: 'pull-on',
    name: say`It can be pulled on`,
    verdict: good ? 'good' : 'wrong',
    measured: opening,
    wanted: needed,
    tolerance: 0,
    unit: 'mm',
    reason: good
      ? say`The opening of ${mm(opening)} passes over the fullest part, which needs ${mm(needed)}.`
      : say`The opening of ${mm(opening)} is ${mm(short)} too small to pass over the fullest part.`,
    remedy: good
      ? UNSAID
      : passesUpright
        ? say`Straighten the centre lines (automatic does as much as is needed), or spread by ${mm(leg.spread + short / 2)}.`
        : gains
          ? say`Straighten the centre lines and spread by ${mm(spread)} instead of ${mm(leg.spread)}, or use a cloth that stretches more.`
          : say`Spread by ${mm(spread)} instead of ${mm(leg.spread)}, or use a cloth that stretches more.`,
    ...withFix(good ? undefined : passesUpright ? fixStraightenAuto() : fixSpreadTo(spread, gains)),
  };
}
