import { type Block, type BlockEdge, crotchCurve, inseamThrough, sideLine, waistLine } from '../../block';
import type { Mm } from '../../length';
import {
  add,
  between,
  type Curve,
  type Outline,
  type Point,
  pathEnd,
  pathStart,
  point,
  scale,
  straight,
  subtract,
  turned,
  unit,
} from '../../plane';
import { EDGE_KEYS, TAPE_KEYS, type TapeKey } from './table';

/** What of the table follows from where the corners lie and how the edges between them bend. */
const FOLLOWING = ['crotchWidth', ...EDGE_KEYS] as const;
export type PlaceKey = Exclude<TapeKey, (typeof FOLLOWING)[number]>;

/** What of the table sets where the corners of a block lie: all the rest. */
export const PLACE_KEYS = TAPE_KEYS.filter((key): key is PlaceKey => FOLLOWING.every((one) => one !== key));

/**
 * What no tape tells: how the edges bend between their corners. Each edge is drawn as that of a drafted block; its direction
 * at a corner is turned by so many radians, and the crotch curve's handles are so much longer, as a share.
 */
export const BEND_KEYS = [
  'waistAtSide',
  'waistAtCentre',
  'crotchFuller',
  'crotchAtPoint',
  'inseamAtPoint',
  'inseamAtKnee',
  'inseamAtHem',
  'sideAtHem',
  'sideAtKnee',
  'sideAtHip',
  'sideAtWaist',
] as const;
export type BendKey = (typeof BEND_KEYS)[number];

/** A block with nothing left open: where its corners lie, and how its edges bend. */
export type BlockShape = Readonly<Record<PlaceKey, Mm> & Record<BendKey, number>>;

/** A block drawn from its shape: its edges and levels as those of any block. */
export type DrawnBlock = Pick<Block, 'part' | 'edges' | 'grainline' | 'hipLevel' | 'crotchLevel' | 'kneeLevel'>;

/**
 * The edges of a block of this shape, cubics throughout, its waist at the side at the origin and its grainline upright.
 *
 * @param part a front lies at x > 0, a back at x < 0
 * @param shape millimetres and radians
 * @source practice, as a drafted block
 */
export function shapeDrawn(part: Block['part'], shape: BlockShape): DrawnBlock {
  const outwards = part === 'front' ? 1 : -1;
  const hipLevel = shape.waistToHip;
  const crotchLevel = hipLevel + shape.hipToCrotch;
  const [kneeLevel, hemLevel] = [crotchLevel + shape.crotchToKnee, crotchLevel + shape.crotchToHem];
  // Across is counted from the waist's end at the side; the hip's lies farther out by what the side takes in.
  const hipSide = shape.centreLean + shape.waistWidth - shape.hipWidth;
  const grain = hipSide + shape.grainHip;
  const [kneeSide, hemSide] = [grain - shape.grainKnee, grain - shape.grainHem];
  const at = (across: Mm, level: Mm): Point => point(outwards * across, level);
  const [waistSide, waistCentre] = [at(0, 0), at(shape.waistWidth, -shape.centreRise)];
  const centreWay = unit(subtract(at(hipSide + shape.hipWidth, hipLevel), waistCentre));
  const onCentre = (level: Mm): Point =>
    add(waistCentre, scale(centreWay, (level - waistCentre.y) / Math.max(LEAST_DOWN, centreWay.y)));
  const curveEnd = onCentre(crotchLevel - shape.curveStart);
  const crotchPoint = point(onCentre(crotchLevel).x + outwards * shape.fork, crotchLevel);
  const inseam = bent(
    inseamThrough(crotchPoint, at(kneeSide + shape.kneeWidth, kneeLevel), at(hemSide + shape.hemWidth, hemLevel)),
    [shape.inseamAtPoint, shape.inseamAtKnee, shape.inseamAtHem].map((angle) => outwards * angle),
  );
  const side = bent(
    sideLine(waistSide, at(hipSide, hipLevel), at(kneeSide, kneeLevel), at(hemSide, hemLevel)),
    [shape.sideAtHem, shape.sideAtKnee, shape.sideAtHip, shape.sideAtWaist].map((angle) => outwards * angle),
  );
  const inseamWay = unit(subtract((inseam[0] as Curve)[1], crotchPoint));
  const curve = crotchCurve(curveEnd, centreWay, crotchPoint, inseamWay, outwards);
  const waist = waistLine(waistSide, waistCentre, centreWay, outwards);
  const edges: Outline<BlockEdge> = [
    { name: 'waist', curves: bent([waist], [outwards * shape.waistAtSide, outwards * shape.waistAtCentre]) },
    { name: 'centre', curves: [straight(waistCentre, curveEnd)] },
    { name: 'crotch', curves: bent([fuller(curve, 1 + shape.crotchFuller)], [0, outwards * shape.crotchAtPoint]) },
    { name: 'inseam', curves: inseam },
    { name: 'hem', curves: [straight(pathEnd(inseam), pathStart(side))] },
    { name: 'side', curves: side },
  ];
  return { part, edges, grainline: [at(grain, hipLevel), at(grain, hemLevel)], hipLevel, crotchLevel, kneeLevel };
}

/** A centre line goes down by at least so much of its length: one that lay flat would meet no crotch line. @source geometry */
const LEAST_DOWN = 0.2;

/** A run of curves with its direction turned at each of its corners, both handles there alike, so that it stays smooth. */
const bent = (curves: readonly Curve[], angles: readonly number[]): readonly Curve[] =>
  curves.map(([a, b, c, d], i) => [a, turned(b, a, angles[i] ?? 0), turned(c, d, angles[i + 1] ?? 0), d]);

/** A curve with both its handles longer by a factor. */
const fuller = ([a, b, c, d]: Curve, by: number): Curve => [a, between(a, b, by), between(d, c, by), d];
