import { mm, say } from '../length';
import { edgeLength } from '../plane';
import type { Check, Subject } from './check';
import { fixWholeFork, withFix } from './fixes';

/** The tip of the fork is pieced in plain cloth only: across a stripe or a check its seam is seen (practice). */
export function checkPiecedTip({ cloth: { repeat, repeatAcross }, finished: { pieced } }: Subject): Check | undefined {
  const seam = pieced?.tip.stitchLine.find((edge) => edge.name === 'piecing');
  if (!seam) return undefined;
  const patterned = repeat > 0 || repeatAcross > 0;
  return {
    id: 'pieced-tip',
    name: 'Pieced fork tip',
    verdict: patterned ? 'mind' : 'good',
    measured: edgeLength(seam),
    wanted: 0,
    tolerance: 0,
    unit: 'mm',
    reason: patterned
      ? say`The seam of the fork’s tip, ${mm(edgeLength(seam))} long, breaks the stripes or checks of this cloth between the legs.`
      : say`The tip of the back fork is sewn on again by a seam ${mm(edgeLength(seam))} long, along the grain, between the legs, where nobody looks.`,
    remedy: patterned ? say`Leave the back fork whole, or see that the pattern goes on across the seam.` : [],
    ...withFix(patterned ? fixWholeFork() : undefined),
  };
}
