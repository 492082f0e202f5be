import { WORTH_PIECING } from '../edges';
import { curvesBounds, type Outline, outlineCurves, TOLERANCE } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixWholeFork, withFix } from './fixes';
import { seamOf } from './measuring';

/** The tip of the fork is pieced in plain cloth only, for across a stripe or a check its seam is seen; and it is worth a seam. @source practice */
export function checkPiecedTip({ cloth: { repeat, repeatAcross }, finished: { pieced } }: Subject): Check | undefined {
  if (!pieced) return undefined;
  const { lengthB: long } = seamOf([pieced.leg, pieced.tip], 'piecing');
  const width = widthOf(pieced.tip.stitchLine);
  const doubt = doubtOf(repeat > 0 || repeatAcross > 0, width, long);
  return {
    id: 'pieced-tip',
    name: say`Pieced fork tip`,
    verdict: doubt ? 'doubtful' : 'good',
    measured: width,
    wanted: WORTH_PIECING,
    tolerance: 0,
    unit: 'mm',
    reason:
      doubt?.reason ??
      say`The tip of the back fork is sewn on again by a seam ${mm(long)} long, along the grain, between the legs, where it is hardly seen.`,
    remedy: doubt?.remedy ?? UNSAID,
    ...withFix(doubt && fixWholeFork()),
  };
}

function doubtOf(patterned: boolean, width: number, long: number): Record<'reason' | 'remedy', Phrase> | undefined {
  if (patterned)
    return {
      reason: say`The seam of the fork’s tip, ${mm(long)} long, breaks the stripes or checks of this cloth between the legs.`,
      remedy: say`Leave the back fork whole, or see that the pattern goes on across the seam.`,
    };
  if (width > WORTH_PIECING - TOLERANCE.solved) return undefined;
  return {
    reason: say`The fork’s tip is only ${mm(width)} wide, hardly wider than its allowances: it saves no cloth worth a seam.`,
    remedy: say`Leave the back fork whole, or piece at least ${mm(WORTH_PIECING)} of it.`,
  };
}

function widthOf(outline: Outline): number {
  const { left, right } = curvesBounds(outlineCurves(outline));
  return right - left;
}
