import type { Mm } from '../length';
import { type Curve, curveMap, type Edge } from '../plane';

/** Between the two blocks where they are shown apart, on the screen and in the handout; millimetres. */
export const BLOCKS_SPACE = 90;

/** By how much a block is moved aside, so that both are seen whole before they are joined. */
export const apart = (part: 'front' | 'back'): Mm => (part === 'front' ? BLOCKS_SPACE / 2 : -BLOCKS_SPACE / 2);

/** An edge of the working moved aside with the block to which it belongs: the front lies right of x = 0, the back left. */
export function edgeApart(edge: Edge): readonly Curve[] {
  const sum = edge.curves.reduce((total, [a, , , d]) => total + a.x + d.x, 0);
  const by = apart(sum < 0 ? 'back' : 'front');
  return edge.curves.map((curve) => curveMap(curve, (p) => ({ x: p.x + by, y: p.y })));
}
