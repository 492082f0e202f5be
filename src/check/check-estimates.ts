import { type Estimate, estimateRange, measurementName, measurements, restsOn } from '../body';
import { all, inside, inTurn, mm, type Phrase, say } from '../words';
import type { Check, Subject } from './check';

/**
 * What the drawing rests on was measured: where rise, hip depth or inside leg are estimates, bodies like this one differ by
 * more than a cut forgives, and their range is told. Left out where all was measured; brought blocks have their own hip.
 */
export function checkEstimates({ body, traced }: Subject): Check | undefined {
  const estimates = restsOn(body).filter(({ key }) => !traced || key !== 'hipDepth');
  if (estimates.length === 0) return undefined;
  const surveyed = !body.child && estimates.some(({ basis }) => basis !== 'block');
  return {
    id: 'measured',
    name: say`Estimated, not measured: ${all(estimates.map(({ key }) => say`${inside(measurementName(key))}`))}`,
    verdict: 'doubtful',
    measured: estimates.length,
    wanted: 0,
    tolerance: 0,
    unit: 'count',
    reason: inTurn([...estimates.map(estimateTold), ...(surveyed ? [AT_THE_NAVEL] : [])]),
    remedy: inTurn(estimates.map(({ key }) => measureTold(key))),
  };
}

/**
 * The survey's waist is the navel; halfway between hip bone and lowest rib lies 45 mm higher on women, 33 on men.
 *
 * @source ANSUR II, 2014, medians
 */
const AT_THE_NAVEL: Phrase = say`That is for a waist at the navel; tied halfway up to the ribs it sits about ${mm(40)} higher, and rise and hip depth are as much more.`;

function estimateTold(estimate: Estimate): Phrase {
  if (estimate.basis === 'block')
    return say`${measurementName(estimate.key)} was not measured: ${mm(estimate.value)} is taken from your own blocks.`;
  const [least, most] = estimateRange(estimate);
  const from = all(estimate.from.map((key) => say`${inside(measurementName(key))}`));
  return say`${measurementName(estimate.key)} was not measured: ${mm(estimate.value)} is estimated from ${from}; nine in ten bodies like this one have ${mm(least)} to ${mm(most)}.`;
}

function measureTold(key: Estimate['key']): Phrase {
  const where = measurements.find((one) => one.key === key)?.where;
  return where
    ? say`Measure ${inside(measurementName(key))}: ${inside(where)}`
    : say`Measure ${inside(measurementName(key))}.`;
}
