import { type Block, LEAST_BACK_RAISE } from '../block';
import type { Mm } from '../length';
import {
  distance,
  linesMeet,
  moved,
  outlineEdge,
  type Point,
  pathEnd,
  pathStart,
  subtract,
  turned,
  unit,
} from '../plane';
import type { JoinedBlocks } from './join';

/** A centre line above the crotch curve, after straightening. */
export interface Centre {
  readonly waistPoint: Point;
  /** The crotch curve's upper end: the point about which the centre line is straightened. */
  readonly curveEnd: Point;
  /** Downwards, length 1. */
  readonly way: Point;
  /** Degrees from the grain; positive where it leans inwards above the hip. */
  readonly lean: number;
}

export interface Centres {
  readonly front: Centre;
  readonly back: Centre;
}

/** The centre lines with the waist edge between them, and what was done to it to make its casing lie flat. */
export interface SquaredCentres extends Centres {
  /** By how much the waist edge was turned about centre front, degrees; positive where centre back sank. */
  readonly turned: number;
  /** By how much it was lifted after that, so that centre back kept its raise. */
  readonly lifted: Mm;
}

/** The waist edge may be this far from square to a centre line (degrees), where its fold must be straight; a hair inside the limit of 6°. @source practice: beyond it a turning pulls */
const LEAST_SQUARE = 5.99;

/**
 * The two centre lines, turned about their lower ends by their inward lean × t, and the waist edge between them: what
 * leans outwards, over a belly, stays. So nothing below the crotch curves' upper ends moves.
 *
 * The waist edge is one straight line: a fold-over casing only lies flat on a straight fold (a fold that bends by Δθ
 * makes the raw edge short by 2·h·Δθ), and where a bent one would still pass, it lies within a few millimetres of the
 * straight one. It runs from the back's waist point to the front's and is turned about centre front, so that only the
 * back gives, where it would otherwise be more than 6° off square to a centre line. Where that would leave centre back
 * less than its least raise (on small children), the whole edge is lifted.
 *
 * @param joined the joined and spread blocks
 * @param straighten t: 0 leaves the leans, 1 makes both centre lines upright
 * @param raiseWaist how far the waist edge is moved up (negative: down) along the centre lines
 * @source practice
 */
export function centresOf(joined: JoinedBlocks, straighten: number, raiseWaist: Mm): SquaredCentres {
  const front = centreTurned(joined.front, straighten, raiseWaist, 1);
  const back = centreTurned(joined.back, straighten, raiseWaist, -1);
  const slope = degreesOf(Math.atan2(front.waistPoint.y - back.waistPoint.y, front.waistPoint.x - back.waistPoint.x));
  // An edge square to centre back slopes by that one's lean, an edge square to centre front by the other's, turned round.
  const low = Math.max(back.lean, -front.lean) - LEAST_SQUARE;
  const high = Math.min(back.lean, -front.lean) + LEAST_SQUARE;
  if (slope >= low && slope <= high) return { front, back, turned: 0, lifted: 0 };
  const wanted = low > high ? (low + high) / 2 : Math.min(high, Math.max(low, slope));
  const turnedOnly = cutByEdge({ front, back }, front.waistPoint, wanted);
  const raised = raiseWaist * back.way.y;
  const lowest = Math.max(back.waistPoint.y, -LEAST_BACK_RAISE - raised);
  const lifted = Math.max(0, turnedOnly.back.waistPoint.y - lowest);
  if (lifted === 0) return { ...turnedOnly, turned: slope - wanted, lifted };
  const kept = moved(turnedOnly.back.waistPoint, back.way, -lifted / back.way.y);
  return { ...cutByEdge({ front, back }, kept, wanted), turned: slope - wanted, lifted };
}

/** The centre lines cut off by a straight waist edge through a point, sloping by so many degrees. */
function cutByEdge({ front, back }: Centres, through: Point, slope: number): Centres {
  const way = { x: Math.cos(radiansOf(slope)), y: Math.sin(radiansOf(slope)) };
  const onto = (centre: Centre): Centre => ({
    ...centre,
    waistPoint: linesMeet(through, way, centre.curveEnd, centre.way) ?? centre.waistPoint,
  });
  return { front: onto(front), back: onto(back) };
}

const degreesOf = (radians: number): number => (radians * 180) / Math.PI;
const radiansOf = (degrees: number): number => (degrees * Math.PI) / 180;

function centreTurned(block: Block, straighten: number, raiseWaist: Mm, outwards: 1 | -1): Centre {
  const curves = outlineEdge(block.edges, 'centre').curves;
  const [waist, curveEnd] = [pathStart(curves), pathEnd(curves)];
  const wayBefore = unit(subtract(curveEnd, waist));
  const lean = Math.atan2(outwards * wayBefore.x, wayBefore.y);
  const inwards = Math.max(0, lean) * straighten;
  const way = turned(wayBefore, { x: 0, y: 0 }, outwards * inwards);
  return {
    waistPoint: moved(curveEnd, way, -(distance(waist, curveEnd) + raiseWaist)),
    curveEnd,
    way,
    lean: degreesOf(lean - inwards),
  };
}

/** What the pull-on check asks of a straightening. */
export interface Straightening {
  /** The least t that passes, or 1. */
  readonly straighten: number;
  readonly passes: boolean;
}

/** Straightening is found this closely, a share: far below what the opening shows. @source tolerance */
const SETTLED = 1e-7;

/**
 * The least straightening at which the opening is wide enough, by halving: unstretched, the opening must pass
 * the fullest girth.
 *
 * @param openingAt the opening at a straightening 0…1; grows with it
 * @param needed what must pass
 * @source practice
 */
export function leastStraightening(openingAt: (straighten: number) => Mm, needed: Mm): Straightening {
  if (openingAt(0) >= needed) return { straighten: 0, passes: true };
  if (openingAt(1) < needed) return { straighten: 1, passes: false };
  let [low, high] = [0, 1];
  while (high - low > SETTLED) {
    const middle = (low + high) / 2;
    if (openingAt(middle) >= needed) high = middle;
    else low = middle;
  }
  return { straighten: high, passes: true };
}
