import { mm, number, say } from '../length';
import type { Check, Subject } from './check';
import { fullestGirth } from './check-pull-on';

/** A plain braided or knitted elastic stretches to 1.7 times its length before it is strained (practice). */
const GREATEST_STRETCH = 1.7;

/** The elastic or the knit band, pulled out as far as it goes, passes over the fullest part; left out where there is neither. */
export function checkElastic({ body, elasticLength, waist }: Subject): Check | undefined {
  if (elasticLength === undefined) return undefined;
  const fullest = fullestGirth(body);
  const reach = elasticLength * GREATEST_STRETCH;
  const good = reach >= fullest;
  const what = waist.finish === 'knitBand' ? 'A band of knit' : 'Elastic';
  return {
    id: 'elastic-reaches',
    name: 'Elastic reaches',
    verdict: good ? 'good' : 'wrong',
    measured: reach,
    wanted: fullest,
    tolerance: 0,
    unit: 'mm',
    reason: say`${what} cut ${mm(elasticLength)} long stretches to ${mm(reach)}; the fullest part is ${mm(fullest)}.`,
    remedy: good
      ? []
      : say`Cut it ${mm(fullest / GREATEST_STRETCH)} long, or take what stretches to ${number(fullest / elasticLength, 1)} times its length.`,
  };
}
