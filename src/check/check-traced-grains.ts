import { type Point, subtract } from '../plane';
import { degrees, mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { offParallel } from './measuring';

/** Grainlines that were turned upright are parallel but for rounding. */
const PARALLEL = 0.1;
/** A tracing whose grain lies further off the upright has its level lines in the wrong places. */
const UPRIGHT = 2;

const wayOf = ([top, bottom]: readonly [Point, Point]): Point => subtract(bottom, top);

/** The grainlines of both blocks are parallel, to each other and to the leg's, and stood upright in their tracings. */
export function checkTracedGrains({ traced, blocks, joined, finished }: Subject): Check | undefined {
  if (!traced) return undefined;
  const [front, back] = [wayOf(joined.front.grainline), wayOf(joined.back.grainline)];
  const legs = wayOf(finished.piece.grainline);
  const apart = Math.max(offParallel(front, back), offParallel(front, legs), offParallel(back, legs));
  const upright = { x: 0, y: 1 };
  const tilt = Math.max(
    offParallel(wayOf(blocks.front.grainline), upright),
    offParallel(wayOf(blocks.back.grainline), upright),
  );
  const verdict = apart > PARALLEL ? 'wrong' : tilt > UPRIGHT ? 'doubtful' : 'good';
  return {
    id: 'traced-grains',
    name: say`Grainlines parallel`,
    verdict,
    measured: Math.max(apart, tilt),
    wanted: 0,
    tolerance: UPRIGHT,
    unit: 'degrees',
    reason:
      apart > PARALLEL
        ? say`Joined, the grainlines stand at ${degrees(apart)} to each other.`
        : say`The grainlines are parallel; in the tracings they stood up to ${degrees(tilt)} off the upright.`,
    remedy:
      verdict === 'good'
        ? UNSAID
        : say`${grainRedrawn(blocks)}, or turn the tracing by as much; then read hip and knee levels again.`,
  };
}

/** Which grainline to redraw, the one that leans more: its upper end stays. */
function grainRedrawn({ front, back }: Subject['blocks']): Phrase {
  const [ofFront, ofBack] = [wayOf(front.grainline).x, wayOf(back.grainline).x];
  const inFront = Math.abs(ofFront) > Math.abs(ofBack);
  const by = mm(Math.abs(inFront ? ofFront : ofBack));
  // A front lies on the right of its side line, a back on the left.
  if (inFront)
    return ofFront > 0
      ? say`Redraw the lower end of the front’s grainline ${by} nearer to the side`
      : say`Redraw the lower end of the front’s grainline ${by} nearer to the inseam`;
  return ofBack < 0
    ? say`Redraw the lower end of the back’s grainline ${by} nearer to the side`
    : say`Redraw the lower end of the back’s grainline ${by} nearer to the inseam`;
}
