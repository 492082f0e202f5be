import type { EdgeName } from '../edges';
import type { Mm } from '../length';
import { cross, distance, dot, type Edge, type Point, pathEnd, subtract, unit } from '../plane';
import type { Garment } from './garment';
import { laidOn, type Move } from './pictures/polygon';

/** How a leg is folded so that its inseams lie on each other. */
export interface LegFold {
  /** On the fold, at the crotch's level and at the hem's; the front lies on the left of this way. */
  readonly fold: readonly [Point, Point];
  /** Lays the back on the front. */
  readonly over: Move;
}

/** The fold that brings a leg's inseams together; it runs near the side. */
export function legFold({ leg: { front, back } }: Garment): LegFold {
  const [fc, fh] = [front.crotchPoint, pathEnd(front.inseam)];
  const [bc, bh] = [back.crotchPoint, pathEnd(back.inseam)];
  // Laying one line on another while turning over is a mirroring; its axis halves the way from each point to its image.
  const over = laidOn(bc, bh, fc, subtract(fh, fc), true);
  const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  return { fold: [middle(bc, over(bc)), middle(bh, over(bh))], over };
}

/** Where the back lies on the front in a leg that is folded so, by its cut edges. */
export interface BackOnFront {
  /** How much nearer the fold than the front's the back's upper corner at the centre lies; negative where it is farther. */
  readonly nearer: Mm;
  /** How much higher that corner stands; negative where it is lower. */
  readonly higher: Mm;
  /** How far behind the side line the fold runs at the crotch's level; negative where it is before it. */
  readonly behindSide: Mm;
}

/** What a sewist sees at the upper end of the folded leg. */
export function backOnFront(g: Garment): BackOnFront {
  const { fold, over } = legFold(g);
  const { front, back } = upperCorners(g.finished.sewn.cutLine);
  const down = unit(subtract(fold[1], fold[0]));
  const seen = (p: Point) => {
    const away = subtract(p, fold[0]);
    return { off: Math.abs(cross(down, away)), up: -dot(down, away) };
  };
  const [f, b] = [seen(front), seen(over(back))];
  return { nearer: f.off - b.off, higher: b.up - f.up, behindSide: -fold[0].x };
}

/** The corners of the upper edge, as cut, at centre back and at centre front. */
function upperCorners(cut: readonly Edge<EdgeName>[]): { readonly front: Point; readonly back: Point } {
  const upper = cut.filter(({ name }) => name === 'waist').flatMap(({ curves }) => curves);
  const [first, last] = [upper[0]?.[0], upper.at(-1)?.[3]];
  if (!first || !last || distance(first, last) === 0) throw new RangeError('the leg has no upper edge');
  return first.x < last.x ? { back: first, front: last } : { back: last, front: first };
}
