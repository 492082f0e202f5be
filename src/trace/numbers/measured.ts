import type { Block } from '../../block';
import type { Mm } from '../../length';
import {
  type Curve,
  curveMeetsLine,
  curvePoint,
  distance,
  outlineEdge,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  point,
} from '../../plane';
import type { DrawnBlock } from './shape';
import type { BlockNumbers, DartNumbers, TapeKey } from './table';

/** From where to where a tape lies, or along which edge. */
export type Tape = readonly [Point, Point] | readonly Curve[];

/** What of a block a tape is laid on: its corners and where its lines meet the levels. */
interface Places {
  readonly waistSide: Point;
  readonly waistCentre: Point;
  readonly hipSide: Point;
  readonly hipCentre: Point;
  readonly curveEnd: Point;
  readonly corner: Point;
  readonly crotchPoint: Point;
  readonly crotchSide: Point;
  readonly kneeSide: Point;
  readonly kneeInseam: Point;
  readonly hemSide: Point;
  readonly hemInseam: Point;
  readonly grainAt: (level: Mm) => Point;
}

function placesOf({ edges, grainline: [top, bottom], hipLevel, kneeLevel }: DrawnBlock): Places {
  const curves = (name: Parameters<typeof outlineEdge<(typeof edges)[number]['name']>>[1]) =>
    outlineEdge(edges, name).curves;
  const [side, inseam, centre] = [curves('side'), curves('inseam'), curves('centre')];
  const [waistCentre, curveEnd] = [pathStart(centre), pathEnd(centre)];
  const onCentre = (level: Mm): Point => onLine(waistCentre, curveEnd, level);
  // A drafted pair has one crotch line, and the back's crotch point below it; a tape on the paper goes to the point.
  const crotchLevel = pathStart(inseam).y;
  return {
    waistSide: pathEnd(side),
    waistCentre,
    hipSide: atLevel(side, hipLevel),
    hipCentre: onCentre(hipLevel),
    curveEnd,
    corner: onCentre(crotchLevel),
    crotchPoint: pathStart(inseam),
    crotchSide: atLevel(side, crotchLevel),
    kneeSide: atLevel(side, kneeLevel),
    kneeInseam: atLevel(inseam, kneeLevel),
    hemSide: pathStart(side),
    hemInseam: pathEnd(inseam),
    grainAt: (level) => onLine(top, bottom, level),
  };
}

/** Where the line through two points is at a level; straight below or above where they lie level themselves. */
function onLine(a: Point, b: Point, level: Mm): Point {
  const down = b.y - a.y;
  return point(down === 0 ? a.x : a.x + ((b.x - a.x) * (level - a.y)) / down, level);
}

/** Where an edge that runs down the leg is at a level; its nearer end where it doesn't reach so far. */
function atLevel(path: readonly Curve[], level: Mm): Point {
  for (const curve of path) {
    const t = curveMeetsLine(curve, point(0, level), { x: 1, y: 0 })[0];
    if (t !== undefined) return curvePoint(curve, t);
  }
  const [a, b] = [pathStart(path), pathEnd(path)];
  return Math.abs(a.y - level) < Math.abs(b.y - level) ? a : b;
}

/**
 * Where the tape lies for each length of the table, on a block that is drawn: two points for a straight one, else the edge.
 *
 * @param block with its grainline upright, as every block has it
 */
export function tapesOn(block: DrawnBlock): Readonly<Record<TapeKey, Tape>> {
  const on = placesOf(block);
  const { edges, hipLevel, kneeLevel } = block;
  const crotchLevel = on.crotchPoint.y;
  const edge = (name: 'waist' | 'centre' | 'crotch' | 'inseam' | 'side') => outlineEdge(edges, name).curves;
  const down = (from: Mm, to: Mm, { x }: Point): readonly [Point, Point] => [point(x, from), point(x, to)];
  const grainline = on.grainAt(kneeLevel);
  const hemLevel = on.hemInseam.y;
  return {
    waistToHip: down(on.waistSide.y, hipLevel, on.waistSide),
    hipToCrotch: down(hipLevel, crotchLevel, grainline),
    crotchToKnee: down(crotchLevel, kneeLevel, grainline),
    crotchToHem: down(crotchLevel, hemLevel, on.grainAt(hemLevel)),
    waistWidth: [on.waistSide, point(on.waistCentre.x, on.waistSide.y)],
    hipWidth: [on.hipSide, on.hipCentre],
    crotchWidth: [on.crotchSide, point(on.crotchPoint.x, on.crotchSide.y)],
    kneeWidth: [on.kneeSide, on.kneeInseam],
    hemWidth: [point(on.hemSide.x, hemLevel), on.hemInseam],
    fork: [on.corner, on.crotchPoint],
    centreRise: down(on.waistCentre.y, on.waistSide.y, on.waistCentre),
    centreLean: [on.waistCentre, point(on.hipCentre.x, on.waistCentre.y)],
    curveStart: down(on.curveEnd.y, crotchLevel, on.curveEnd),
    grainHip: [on.hipSide, on.grainAt(hipLevel)],
    grainKnee: [on.kneeSide, on.grainAt(kneeLevel)],
    grainHem: [on.hemSide, on.grainAt(on.hemSide.y)],
    waistEdge: edge('waist'),
    crotchSeam: [...edge('centre'), ...edge('crotch')],
    inseam: edge('inseam'),
    side: edge('side'),
  };
}

/** Whether a tape is stretched between two points, and doesn't follow an edge. */
export const isStraightTape = (tape: Tape): tape is readonly [Point, Point] => !Array.isArray(tape[0]);

/** What a tape reads: along an edge its length; straight, how far down or outwards its second end lies from its first. */
export function tapeReads(tape: Tape, outwards: 1 | -1): Mm {
  if (!isStraightTape(tape)) return pathLength(tape);
  const [a, b] = tape;
  const [across, down] = [outwards * (b.x - a.x), b.y - a.y];
  return Math.abs(across) >= Math.abs(down) ? across : down;
}

/**
 * The whole table as a tape measures it on a block, whatever made it: the way back from a block to its numbers.
 *
 * @param block as later rooms have it
 */
export function numbersOf(block: Block): Required<BlockNumbers> {
  const outwards = block.part === 'front' ? 1 : -1;
  const read = Object.fromEntries(
    Object.entries(tapesOn(block)).map(([key, tape]) => [key, tapeReads(tape, outwards)]),
  ) as Record<TapeKey, Mm>;
  return { ...read, darts: block.darts.map((dart) => dartNumbers(block, dart)) };
}

function dartNumbers(block: Block, { left, right, tip }: Block['darts'][number]): DartNumbers {
  const [waist] = outlineEdge(block.edges, 'waist').curves;
  const middle = point((left.x + right.x) / 2, (left.y + right.y) / 2);
  const from = waist ? waist[0] : middle;
  return { intake: distance(left, right), length: distance(middle, tip), fromSide: distance(from, middle) };
}
