import type { Mm } from '../length';
import { pathStart } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { drawnCurves } from './measuring';

/** Within this a tape and a pencil say the same. @source practice */
const TOLD = 5;
/**
 * A hip that lies next to the crotch has its line drawn higher, where the curves leave room; so far that is told and no
 * more.
 *
 * @source practice, tried on the 6,068 adults of ANSUR II, 2014: 99.5 % are nearer
 */
const NEAR = 30;

/** The hip line is drawn where the hip was measured; left out where its depth was not measured. */
export function checkHipLine({ body, leg, finished }: Subject): Check | undefined {
  if (body.estimates.some(({ key }) => key === 'hipDepth')) return undefined;
  const line = drawnCurves(finished.sewn, 'hip');
  const level = line ? pathStart(line).y : leg.hipLevel;
  const off = level - body.hipDepth;
  const good = Math.abs(off) <= NEAR;
  return {
    id: 'hip-line',
    name: say`Hip line at the measured level`,
    verdict: good ? 'good' : 'doubtful',
    measured: level,
    wanted: body.hipDepth,
    tolerance: NEAR,
    unit: 'mm',
    reason: lineTold(level, off),
    remedy: good ? UNSAID : say`Measure body rise and hip depth again, from the same tape at the waist.`,
  };
}

function lineTold(level: Mm, off: Mm): Phrase {
  if (off < -TOLD)
    return say`The hip line lies ${mm(level)} below the waist, ${mm(-off)} higher than the hip was measured; the ease is counted there.`;
  if (off > TOLD)
    return say`The hip line lies ${mm(level)} below the waist, ${mm(off)} lower than the hip was measured; the ease is counted there.`;
  return say`The hip line lies ${mm(level)} below the waist, where the hip was measured.`;
}
