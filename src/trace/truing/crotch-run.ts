import type { Mm } from '../../length';
import { cross, distance, dot, type Point, subtract, turned } from '../../plane';
import { pairOf, pointOf, type TracedBlock, type TracedPair } from '../marks';

/** Directions are looked for no nearer to the crotch point than this, millimetres: of a handle without length there is none. @source tolerance */
const SHORTEST: Mm = 0.01;

/**
 * Trued blocks: with the inseams sewn together the crotch seam runs on smoothly from front to back, as every drafter
 * trues it on paper. Half of what the two corners at the crotch point miss of 180° is taken from either crotch curve,
 * by turning its last handle; no point that was marked moves.
 *
 * @returns the blocks themselves where a corner has no direction
 * @source practice
 */
export function crotchTrued(pair: TracedPair): TracedPair {
  const { front, back } = pair;
  const [atFront, atBack] = [corner(front), corner(back)];
  if (!atFront || !atBack) return pair;
  const off = atFront.angle + atBack.angle - Math.PI;
  return { front: withCorner(front, atFront, off / 2), back: withCorner(back, atBack, off / 2) };
}

/** The angle between crotch curve and inseam on each block, degrees; undefined where an edge has no direction there. */
export function cornersAtCrotch({ front, back }: TracedPair): { front: number; back: number } | undefined {
  const [atFront, atBack] = [corner(front), corner(back)];
  const degrees = ({ angle }: Corner) => (angle * 180) / Math.PI;
  return atFront && atBack && { front: degrees(atFront), back: degrees(atBack) };
}

/** The corner at the crotch point: where it lies, where the crotch curve comes from, and the angle between the edges. */
interface Corner {
  readonly at: Point;
  readonly handle: Point;
  readonly angle: number;
  /** 1 where the crotch curve is turned clockwise to come nearer to the inseam. */
  readonly side: number;
}

function corner({ edges }: TracedBlock): Corner | undefined {
  const [crotch, inseam] = [edges.crotch.at(-1), edges.inseam[0]];
  if (!crotch || !inseam) return undefined;
  const [at, handle, next] = [crotch[3], crotch[2], inseam[1]].map(pointOf) as [Point, Point, Point];
  if (distance(at, handle) < SHORTEST || distance(at, next) < SHORTEST) return undefined;
  const [from, to] = [subtract(handle, at), subtract(next, at)];
  const turn = Math.atan2(cross(from, to), dot(from, to));
  return { at, handle, angle: Math.abs(turn), side: Math.sign(turn) };
}

/** The block with its corner made smaller by so many radians. */
function withCorner(block: TracedBlock, { at, handle, side }: Corner, smaller: number): TracedBlock {
  const nearer = pairOf(turned(handle, at, side * smaller));
  const crotch = block.edges.crotch.map((curve, i, all) =>
    i === all.length - 1 ? ([curve[0], curve[1], nearer, curve[3]] as const) : curve,
  );
  return { ...block, edges: { ...block.edges, crotch } };
}
