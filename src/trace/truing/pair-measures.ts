import type { Mm } from '../../length';
import {
  type Curve,
  curveLength,
  curveMeetsLine,
  curvePart,
  dot,
  leftOf,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  subtract,
  unit,
} from '../../plane';
import { pointOf, type TracedBlock, tracedEdge } from '../marks';

/** Down along the grain of a block. */
export const downOf = ({ grainline: [top, bottom] }: TracedBlock): Point =>
  unit(subtract(pointOf(bottom), pointOf(top)));

/** How far a place lies below the hip line, along the grain; less than 0 above it. */
function belowHip(block: TracedBlock, at: Point): Mm {
  const top = pointOf(block.grainline[0]);
  return dot(subtract(at, top), downOf(block)) + top.y - block.hipLevel;
}

/** How far the hip line lies below the waist at the side. */
export const hipDepthOf = (block: TracedBlock): Mm => -belowHip(block, pathEnd(tracedEdge(block, 'side')));

/** How far the hem lies below the hip line at the side. */
export const hemDepthOf = (block: TracedBlock): Mm => belowHip(block, pathStart(tracedEdge(block, 'side')));

export const inseamOf = (block: TracedBlock): Mm => pathLength(tracedEdge(block, 'inseam'));

/** The side line in two at the hip line, both running upwards; undefined where the hip line doesn't meet it. */
export function sideAtHip(block: TracedBlock): { below: readonly Curve[]; above: readonly Curve[] } | undefined {
  const side = tracedEdge(block, 'side');
  const [top, down] = [pointOf(block.grainline[0]), downOf(block)];
  const onHip = { x: top.x + down.x * (block.hipLevel - top.y), y: top.y + down.y * (block.hipLevel - top.y) };
  for (const [i, curve] of side.entries()) {
    const t = curveMeetsLine(curve, onHip, leftOf(down))[0];
    if (t === undefined) continue;
    const parts = { before: curvePart(curve, 0, t), after: curvePart(curve, t, 1) };
    const drawn = (part: Curve) => (curveLength(part) > SHORTEST ? [part] : []);
    return {
      below: [...side.slice(0, i), ...drawn(parts.before)],
      above: [...drawn(parts.after), ...side.slice(i + 1)],
    };
  }
  return undefined;
}

/** What is shorter is no part of a line, millimetres. @source tolerance */
const SHORTEST = 1e-6;
