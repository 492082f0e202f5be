import { type Estimate, estimateRange, type Measurement, measurementName } from '../../../body';
import { all, inside, inTurn, mm, type Phrase, say } from '../../../words';

/** What is measured, and where nobody measured it what that comes to: from what, and between which figures bodies lie. */
export function measurementHelp({ definition }: Measurement, estimate: Estimate | undefined): Phrase {
  return estimate ? inTurn([definition, estimateTold(estimate)]) : definition;
}

function estimateTold(estimate: Estimate): Phrase {
  if (estimate.basis === 'inference' && estimate.key !== 'bodyRise' && estimate.key !== 'insideLeg')
    return say`Nobody measured it on children; by adults’ proportions ${rangeTold(estimate)}.`;
  if (estimate.basis === 'block')
    return say`Taken from your own blocks, and follows when they change; a tape says it better.`;
  if (estimate.basis === 'trousers') return say`Reckoned from the trouser inseam, and follows when that changes.`;
  if (estimate.key === 'crotchLength')
    return say`With the waist at the navel ${rangeTold(estimate)}; nothing is drawn from that.`;
  return say`Estimated from ${basisTold(estimate)}, and follows when that changes: ${rangeTold(estimate)}.`;
}

/** “waist, hip and inside leg” */
const basisTold = ({ from }: Estimate): Phrase => say`${all(from.map((key) => say`${inside(measurementName(key))}`))}`;

/** Within what nine bodies in ten lie. */
function rangeTold(estimate: Estimate): Phrase {
  const [least, most] = estimateRange(estimate);
  return say`nine in ten bodies like this one have ${mm(least)} to ${mm(most)}`;
}
