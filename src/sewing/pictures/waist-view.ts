import type { Mm } from '../../length';
import { distance, type Point } from '../../plane';
import { BEYOND_STITCHING } from '../channels';
import type { Garment } from '../garment';
import { elasticSewnOn } from '../steps-flat';
import { sewnLeg } from './leg-views';
import { cutOff, type Move } from './polygon';

/**
 * One half of the waist, seen from in front or behind: its centre seam upright at x = 0, y from the waist edge down. Levels
 * stay as they are worn, so that the waist rises to centre back, its highest point, and dips at centre front.
 */
export interface WaistView {
  readonly move: Move;
  /** Of one half, from its upper end to where the picture ends; the casing, if it is folded, turned in. */
  readonly body: readonly Point[];
  /** The same with everything that is turned laid open. */
  readonly open: readonly Point[];
  /** Lines from the centre to the side. */
  readonly upper: readonly [Point, Point];
  readonly waistEdge: readonly [Point, Point];
  readonly raw: readonly [Point, Point];
  /** The edge of the turned part, or of the facing, on the inside. */
  readonly inner: readonly [Point, Point];
  /** Where the channels are parted. */
  readonly partings: readonly (readonly [Point, Point])[];
  /** From the centre along the waist edge to the quarter. */
  readonly quarter: Mm;
  readonly depth: Mm;
}

type Line = readonly [Point, Point];

/** @param part which half looks up */
export function waistView(g: Garment, part: 'front' | 'back'): WaistView {
  const { casing, heights } = g.finished;
  const half = g.leg[part];
  const origin: Point = { x: 0, y: 0 };
  const { waistPoint, curveEnd } = half;
  const slant = (curveEnd.x - waistPoint.x) / (curveEnd.y - waistPoint.y);
  const move: Move = ({ x, y }) => ({
    x: x - waistPoint.x - slant * (y - waistPoint.y),
    y: y - waistPoint.y,
  });
  const line = ([back, front]: Line): Line => {
    const share = (0 - back.x) / (front.x - back.x);
    const side: Point = { x: 0, y: back.y + share * (front.y - back.y) };
    return [move(part === 'front' ? front : back), move(side)];
  };
  const upper = line(heights.kind === 'seamed' ? casing.waistEdge : casing.fold);
  const depth = Math.min(0.9 * distance(waistPoint, curveEnd), 170);
  const sideCut = (points: readonly Point[]) => cutOff(points, origin, { x: 0, y: part === 'front' ? -1 : 1 });
  const outline = cutOff(sideCut(sewnLeg(g)).map(move), { x: 0, y: depth }, { x: -1, y: 0 });
  const below = ([a, b]: Line): Line => (a.x < b.x ? [a, b] : [b, a]);
  const [left, right] = below(upper);
  const waistEdge = line(casing.waistEdge);
  const beyond = elasticSewnOn(g) ? 0 : g.waist.rawEdge === 'turnedUnder' ? BEYOND_STITCHING : heights.catch;
  const lower = (by: Mm): Line => [
    { x: waistEdge[0].x, y: waistEdge[0].y + by },
    { x: waistEdge[1].x, y: waistEdge[1].y + by },
  ];
  return {
    move,
    body: cutOff(outline, left, { x: right.x - left.x, y: right.y - left.y }),
    open: outline,
    upper,
    waistEdge,
    raw: line(casing.raw),
    inner: lower(beyond),
    partings: casing.partings.map(line),
    quarter: distance(...casing.waistEdge) / 2,
    depth,
  };
}
