import type { Mm } from '../length';
import type { Curve } from './types';

/** A box that holds a curve, not the least: quick to find, and enough to see that two curves stand apart. */
export interface ControlBox {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
}

/** The box round a curve's control points, which hold it between them. */
export const controlBox = ([a, b, c, d]: Curve): ControlBox => ({
  left: Math.min(a.x, b.x, c.x, d.x),
  top: Math.min(a.y, b.y, c.y, d.y),
  right: Math.max(a.x, b.x, c.x, d.x),
  bottom: Math.max(a.y, b.y, c.y, d.y),
});

/** Whether two boxes stand farther apart than a length. */
export const boxesApart = (a: ControlBox, b: ControlBox, reach: Mm): boolean =>
  a.right + reach < b.left || b.right + reach < a.left || a.bottom + reach < b.top || b.bottom + reach < a.top;
