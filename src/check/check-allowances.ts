import { type Mm, mm, say } from '../length';
import { flattenCurves, TOLERANCE as PLANE, pathFoot } from '../plane';
import type { Check, Subject } from './check';

/** The cut line may be this far off its allowance: a tenth of a cutter's line. */
const TOLERANCE = 0.05;
/** Sampled finer than this tolerance, so that the sampling doesn't decide. */
const FINE = PLANE.chord / 4;

/**
 * Every allowance has one width along its whole edge. Judged from the cut line to the stitching line; corners, where
 * the cut line goes on past the end of its edge, don't count.
 */
export function checkAllowances({ finished }: Subject): Check {
  let worst: { readonly off: Mm; readonly edge: string } = { off: 0, edge: '' };
  for (const cut of finished.piece.cutLine) {
    const net = finished.piece.stitchLine.find((edge) => edge.name === cut.name);
    if (!net || cut.allowance === 0) continue;
    const line = flattenCurves(net.curves, FINE);
    for (const p of flattenCurves(cut.curves, 0.2)) {
      const foot = pathFoot(line, p);
      if (!foot.atEnd && Math.abs(foot.distance - cut.allowance) > worst.off)
        worst = { off: Math.abs(foot.distance - cut.allowance), edge: cut.name };
    }
  }
  const good = worst.off <= TOLERANCE;
  return {
    id: 'allowances-uniform',
    name: 'Allowances uniform',
    verdict: good ? 'good' : 'wrong',
    measured: worst.off,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: good
      ? say`Every cut line keeps its allowance within ${mm(TOLERANCE)}.`
      : say`At ${worst.edge} the cut line is ${mm(worst.off)} off its allowance.`,
    remedy: good ? [] : say`Use a narrower allowance there.`,
  };
}
