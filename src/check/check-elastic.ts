import { fullestGirth } from '../body';
import { ELASTIC_LAP, sewnStretch } from '../edges';
import type { Mm } from '../length';
import { mm, number, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixElasticLength, withFix } from './fixes';

/** The search for a band's length stops this near. */
const ROUNDING = 1e-6;

/**
 * The elastic's ring, without its lap, pulled out as far as it goes, passes over the fullest part; so does a knit band, by
 * its own measured stretch, and it is no longer than the waist that it holds. Left out where there is neither.
 */
export function checkElastic(subject: Subject): Check | undefined {
  const { body, elasticLength, waist, opening } = subject;
  if (elasticLength === undefined) return undefined;
  const band = waist.finish === 'knitBand';
  const fullest = fullestGirth(body);
  const stretch = band ? sewnStretch(waist.bandStretch) : 1 + waist.elasticStretch;
  const lap = band ? 0 : ELASTIC_LAP;
  const ring = elasticLength - lap;
  const reach = ring * stretch;
  const reaches = reach >= fullest - ROUNDING;
  const loose = band && reaches && elasticLength > body.waistGirth + ROUNDING;
  const needed = fullest / stretch + lap;
  const good = reaches && !loose;
  const what = band ? say`A band of knit` : say`Elastic`;
  return {
    id: 'elastic-reaches',
    name: say`Elastic stretches far enough`,
    verdict: !reaches ? 'wrong' : loose ? 'doubtful' : 'good',
    measured: loose ? elasticLength : reach,
    wanted: loose ? body.waistGirth : fullest,
    tolerance: 0,
    unit: 'mm',
    reason: loose
      ? say`${what} has to be ${mm(elasticLength)} long to stretch over the fullest part of ${mm(fullest)}; longer than the waist it won’t hold by itself.`
      : lap > 0
        ? say`${what} cut ${mm(elasticLength)} long is a ring of ${mm(ring)}, which stretches to ${mm(reach)}; the fullest part is ${mm(fullest)}.`
        : say`${what} cut ${mm(elasticLength)} long is a ring that stretches to ${mm(reach)}; the fullest part is ${mm(fullest)}.`,
    remedy: good ? UNSAID : remedyFor(loose, ring, needed, fullest),
    ...withFix(good || band || needed > opening ? undefined : fixElasticLength(needed)),
  };
}

const remedyFor = (loose: boolean, ring: Mm, needed: Mm, fullest: Mm): Phrase =>
  loose
    ? say`Choose a knit that stretches more, or an elastic casing.`
    : say`Cut it ${mm(needed)} long, or use one that stretches to ${number(fullest / ring, 1)} times its length.`;
