import { edgeLength, outlineEdge } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixPyjamaShape, withFix } from './fixes';

/** Fitted trousers may have a back inseam a little shorter, to be stretched. @source memory: up to 6–12 mm */
const TOLERANCE = 6;

/** The inseams of both tracings are equally long, as far as a fitted pair's are. */
export function checkTracedInseams({ traced, joined, choices }: Subject): Check | undefined {
  if (!traced) return undefined;
  const length = (part: 'front' | 'back') => edgeLength(outlineEdge(joined[part].edges, 'inseam'));
  const [front, back] = [length('front'), length('back')];
  const good = Math.abs(front - back) <= TOLERANCE;
  return {
    id: 'traced-inseams',
    name: say`Inseams of the blocks agree`,
    verdict: good ? 'good' : 'doubtful',
    measured: front - back,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`The blocks' inseams are ${mm(front)} in front and ${mm(back)} behind.`,
    remedy: good ? UNSAID : say`Trace the inseams again, or choose a shape that draws its own: pyjama or straight.`,
    ...withFix(good || choices.shape !== 'block' ? undefined : fixPyjamaShape()),
  };
}
