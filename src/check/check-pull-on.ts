import type { Body } from '../body';
import { type Mm, mm, say } from '../length';
import type { Check, ClothFigures, Subject } from './check';

/** Of a knit's measured stretch, the share that a sewn waist keeps (practice). */
const USABLE_STRETCH = 0.7;
/** Room beyond the fullest girth in a woven, so that pulling on is no struggle (practice). */
const COMFORT = 20;

/** The fullest of waist, high hip and hip. */
export const fullestGirth = (body: Body): Mm => Math.max(body.waistGirth, body.hipGirth, body.highHipGirth ?? 0);

/**
 * What the waist opening must measure at least, so that the trousers pull on without a zip: the fullest girth, less
 * what a knit gives, plus comfort in a woven (practice; the principle is read in several sources).
 *
 * @param body the body
 * @param cloth kind and measured stretch
 */
export function pullOnNeeded(body: Body, cloth: ClothFigures): Mm {
  if (cloth.kind === 'woven') return fullestGirth(body) + COMFORT;
  return fullestGirth(body) / (1 + USABLE_STRETCH * cloth.stretch);
}

/** The waist opening passes over the fullest part of the body. */
export function checkPullOn({ body, cloth, leg, opening }: Subject): Check {
  const needed = pullOnNeeded(body, cloth);
  const short = needed - opening;
  const good = short <= 1e-6;
  const spread = leg.spread + short / 2;
  return {
    id: 'pull-on',
    name: 'It pulls on',
    verdict: good ? 'good' : 'wrong',
    measured: opening,
    wanted: needed,
    tolerance: 0,
    unit: 'mm',
    reason: good
      ? say`The opening of ${mm(opening)} passes over the fullest part, which needs ${mm(needed)}.`
      : say`The opening of ${mm(opening)} is ${mm(short)} too small to pass over the fullest part.`,
    remedy: good
      ? []
      : leg.straighten < 1
        ? say`Straighten the centre lines (automatic does as much as is needed), or spread by ${mm(spread)}.`
        : say`Spread by ${mm(spread)} instead of ${mm(leg.spread)}, or use a cloth that stretches more.`,
  };
}
