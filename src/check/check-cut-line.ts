import { cutCurves, legPieces } from '../edges';
import { outlineCrossings } from '../plane';
import { say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** The cut line never crosses itself. */
export function checkCutLine({ finished }: Subject): Check {
  const crossings = legPieces(finished).reduce((sum, piece) => sum + outlineCrossings(cutCurves(piece)).length, 0);
  return {
    id: 'cut-line-simple',
    name: say`Cut line doesn’t cross itself`,
    verdict: crossings === 0 ? 'good' : 'wrong',
    measured: crossings,
    wanted: 0,
    tolerance: 0,
    unit: 'count',
    reason:
      crossings === 0 ? say`The cut line runs round once without crossing itself.` : say`The cut line crosses itself.`,
    remedy: crossings === 0 ? UNSAID : say`Use narrower seam allowances.`,
  };
}
