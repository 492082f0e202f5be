import type { Mm } from '../length';
import {
  type Curve,
  curveMeetsLine,
  curvePart,
  curvePoint,
  distance,
  leftOf,
  moved,
  type Outline,
  type Point,
  parallelOutline,
  pathEnd,
  pathEndWay,
  pathReverse,
  pathStart,
  pathThrough,
  straight,
} from '../plane';
import { cutLineOf, drawnAllowance } from './outline';
import type { CutEdge } from './piece';
import type { Allowances } from './seams';

/** The two edges of a fork's tip besides its seam: the inseam from the seam up, the crotch curve on to the seam. */
export interface TipEdges {
  readonly inseam: readonly Curve[];
  readonly crotch: readonly Curve[];
}

/** A point is cut off square when it would stand out by more allowances than this. */
const LONGEST_POINT = 4;
/** A point of the cut line is found again within this. */
const FOUND: Mm = 1e-3;
/** The edges are carried on by so much more than is needed of them. */
const SPARE: Mm = 20;

/**
 * The cut line of a fork's tip. At both ends of its seam the allowance mirrors the edge beyond it, as at a fold: pressed
 * towards the tip, the seam's two allowances lie within inseam and crotch seam, and end to end the raw edges of both pieces
 * meet. Without that the tip's sharp lower corner would run out into a point of ten centimetres.
 *
 * @param tip its stitching line without the seam; the seam runs upright, the tip on its left
 * @param allowances the seam bears the inseam's
 */
export function forkTipCutLine({ inseam, crotch }: TipEdges, allowances: Allowances): readonly CutEdge[] {
  const [inseamAway, crotchAway] = [drawnAllowance(allowances.inseam), drawnAllowance(allowances.crotch)];
  const seam: TipSeam = { x: pathStart(inseam).x, away: inseamAway };
  const low = endOf(pathReverse(inseam), inseamAway, seam, -1);
  const high = endOf(crotch, crotchAway, seam, 1);
  const carriedOn: Outline<'inseamBack' | 'crotchBack' | 'beyond'> = [
    { name: 'inseamBack', curves: [straight(low.carriedTo, low.corner), ...inseam] },
    { name: 'crotchBack', curves: [...crotch, straight(high.corner, high.carriedTo)] },
    { name: 'beyond', curves: [straight(high.carriedTo, low.carriedTo)] },
  ];
  const distances = { inseamBack: inseamAway, crotchBack: crotchAway, beyond: 0 };
  const [inseamCut, crotchCut] = parallelOutline(carriedOn, (name) => distances[name]);
  const inseamUp = upTo(pathReverse(inseamCut?.curves ?? []), low);
  const crotchOn = upTo(crotchCut?.curves ?? [], high);
  // Where one allowance lies wholly within the other's at an end, the corners are what they are on any piece.
  if (!inseamUp || !crotchOn) return plainCutLine({ inseam, crotch }, allowances);
  const edges: readonly CutEdge[] = [
    { name: 'inseamBack', allowance: allowances.inseam, curves: pathReverse(inseamUp) },
    { name: 'crotchBack', allowance: allowances.crotch, curves: crotchOn },
    { name: 'upperEnd', allowance: allowances.crotch, curves: pathThrough(...high.cap) },
    {
      name: 'piecing',
      allowance: allowances.inseam,
      curves: pathThrough(high.cap.at(-1) as Point, low.cap.at(-1) as Point),
    },
    { name: 'lowerEnd', allowance: allowances.inseam, curves: pathThrough(...[...low.cap].reverse()) },
  ];
  return edges.filter(({ curves }) => curves.length > 0 && distance(pathStart(curves), pathEnd(curves)) > FOUND);
}

interface TipSeam {
  readonly x: Mm;
  readonly away: Mm;
}

/** One end of the seam. */
interface End {
  readonly corner: Point;
  /** The edge's way on beyond the corner. */
  readonly way: Point;
  /** As far as the edge is carried on, so that its parallel is long enough. */
  readonly carriedTo: Point;
  /** From where the edge's cut line ends to where the seam's begins. */
  readonly cap: readonly Point[];
}

/**
 * @param path towards the seam
 * @param away the edge's allowance
 * @param side −1 where the tip lies on the right of the path, seen along it
 */
function endOf(path: readonly Curve[], away: Mm, seam: TipSeam, side: 1 | -1): End {
  const corner = pathEnd(path);
  const way = pathEndWay(path);
  const from = moved(corner, leftOf(way), side * away);
  const at = (along: Mm): Point => moved(from, way, along);
  const atX = (x: Mm): Mm => (x - from.x) / way.x;
  const toSeam = atX(seam.x);
  const longest = LONGEST_POINT * Math.max(away, seam.away);
  // Nowhere is less left than the whole allowance across from the last stitch.
  const mirroredY = at(atX(seam.x - seam.away)).y;
  const last: Point = {
    x: seam.x + seam.away,
    y: side > 0 ? Math.min(mirroredY, corner.y) : Math.max(mirroredY, corner.y),
  };
  const cap = toSeam <= longest ? [at(toSeam), last] : bluntCap(at(longest), seam, last);
  return { corner, way, carriedTo: moved(corner, way, Math.min(toSeam, longest) + away + SPARE), cap };
}

/** Cut off square to the seam, then along the mirrored edge. */
function bluntCap(end: Point, { x, away }: TipSeam, last: Point): readonly Point[] {
  const across = 2 * x - end.x;
  return across < x + away ? [end, { x: across, y: end.y }, last] : [end, { x: x + away, y: end.y }];
}

/** All three edges at their allowances, as parallels of any outline are. */
function plainCutLine({ inseam, crotch }: TipEdges, allowances: Allowances): readonly CutEdge[] {
  const outline: Outline<'inseamBack' | 'crotchBack' | 'piecing'> = [
    { name: 'inseamBack', curves: inseam },
    { name: 'crotchBack', curves: crotch },
    { name: 'piecing', curves: pathThrough(pathEnd(crotch), pathStart(inseam)) },
  ];
  return cutLineOf(outline, (name) => (name === 'crotchBack' ? allowances.crotch : allowances.inseam));
}

const endingAt = ([a, b, c]: Curve, end: Point): Curve => [a, b, c, end];

/** A cut line up to where its end's cap begins; undefined where it doesn't come there. */
function upTo(path: readonly Curve[], { cap, way }: End): readonly Curve[] | undefined {
  const [end] = cap as readonly [Point];
  for (let i = path.length - 1; i >= 0; i -= 1) {
    const curve = path[i] as Curve;
    const t = curveMeetsLine(curve, end, leftOf(way)).find((one) => distance(curvePoint(curve, one), end) < FOUND);
    if (t !== undefined) return [...path.slice(0, i), endingAt(curvePart(curve, 0, t), end)];
  }
  return undefined;
}
