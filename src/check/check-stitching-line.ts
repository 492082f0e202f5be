import { cutCurves, legPieces, type Piece } from '../edges';
import type { Mm } from '../length';
import { flattenCurves, outlineCrossings, outlineCurves, pathFoot, pointsHold } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** The stitching line may lie this far beyond the cut line where it runs on it: a tenth of a cutter's line. */
const TOLERANCE = 0.05;
/** The lines are flattened finer than that. */
const FINE = TOLERANCE / 5;

/** The stitching line never crosses itself, and lies within the cut line. */
export function checkStitchingLine({ finished }: Subject): Check {
  const pieces = legPieces(finished);
  const crossings = pieces.reduce((sum, { stitchLine }) => sum + outlineCrossings(outlineCurves(stitchLine)).length, 0);
  const beyond = Math.max(...pieces.map(beyondCut));
  const within = beyond <= TOLERANCE;
  const good = crossings === 0 && within;
  return {
    id: 'stitching-line',
    name: say`Stitching line inside the cut line`,
    verdict: good ? 'good' : 'wrong',
    measured: crossings > 0 ? crossings : within ? 0 : 1,
    wanted: 0,
    tolerance: 0,
    unit: 'count',
    reason: good
      ? say`The stitching line runs round once, within the cut line.`
      : crossings > 0
        ? say`The stitching line crosses itself.`
        : say`The stitching line leaves the cut line by ${mm(beyond)}.`,
    remedy: good
      ? UNSAID
      : crossings > 0
        ? say`Undo the last change of the leg’s shape, length or hem: its edges run into each other.`
        : say`Use wider seam allowances, or a plainer hem or waist.`,
  };
}

/** How far the stitching line of a piece leaves its cut line. */
function beyondCut(piece: Piece): Mm {
  const cut = flattenCurves(cutCurves(piece), FINE);
  const outside = flattenCurves(outlineCurves(piece.stitchLine), FINE).filter((p) => !pointsHold(cut, p));
  return Math.max(0, ...outside.map((p) => pathFoot(cut, p).distance));
}
