import { cordRulesFor } from '../body';
import { say } from '../words';
import type { Check, Subject } from './check';
import { fixElasticCasing } from './fixes';

/** No cord hangs out at the hem of a child's leg. Left out for anybody else, and where there is no cord. */
export function checkHemCord({ body, ageYears, hem }: Subject): Check | undefined {
  if (hem.finish !== 'drawstringCasing' || !cordRulesFor({ ageYears, child: body.child }).hold) return undefined;
  return {
    id: 'hem-cord',
    name: say`Cord at the hem`,
    verdict: 'wrong',
    measured: 2,
    wanted: 0,
    tolerance: 0,
    unit: 'count',
    reason: say`At each hem of a child’s trousers two ends of a cord would hang out; none may (EN 14682).`,
    remedy: say`Choose elastic at the hem.`,
    fix: fixElasticCasing('hem'),
  };
}
