import type { Mm } from '../../length';
import { add, distance, type Point, point, scale, turned } from '../../plane';
import { type BlockMarks, LANDMARKS, type Landmark } from './marks';
import { middleOf, movedOnto } from './rigid';

/** The places of a block for an adult, millimetres. @source practice: the block of the example, to a centimetre */
const USUAL: Readonly<Record<'front' | 'back', Readonly<Record<Landmark, Point>>>> = {
  front: {
    waistSide: point(30, 0),
    waistCentre: point(260, 10),
    crotchTop: point(260, 220),
    crotchPoint: point(330, 300),
    knee: point(280, 600),
    hemInseam: point(280, 970),
    hemSide: point(50, 970),
    hipSide: point(0, 210),
    hipCentre: point(260, 210),
    grainTop: point(160, 210),
    grainBottom: point(160, 930),
  },
  back: {
    waistSide: point(-30, 0),
    waistCentre: point(-240, -40),
    crotchTop: point(-290, 200),
    crotchPoint: point(-400, 310),
    knee: point(-300, 600),
    hemInseam: point(-280, 970),
    hemSide: point(-50, 970),
    hipSide: point(0, 210),
    hipCentre: point(-290, 210),
    grainTop: point(-170, 210),
    grainBottom: point(-170, 930),
  },
};

/** A block is unlike the usual one by so much of the way from the nearest mark, and by so much at least, millimetres. @source practice */
const UNLIKE = { share: 0.6, least: 100, waist: 450 } as const;

/** Laid one way a block must lie so much better than the other, millimetres. @source tolerance */
const ALIKE: Mm = 1;

/** Where a place of a block likely lies, and how far about it one has to look, millimetres. */
export interface LikelyPlace {
  readonly at: Point;
  readonly reach: Mm;
}

/**
 * Where the next place of a block likely lies, so that the picture can be shown close there: where it would be if the block
 * were the usual one, laid on the marks that are there as well as it goes, turned over where that goes better.
 *
 * @param marks on the paper, millimetres, lying any way round
 * @returns undefined as long as nothing is marked
 */
export function likelyPlace(
  part: 'front' | 'back',
  { landmarks }: BlockMarks,
  next: Landmark,
): LikelyPlace | undefined {
  const known = LANDMARKS.filter((name) => name !== next && landmarks[name]);
  const to = known.map((name) => landmarks[name] as Point);
  const [first] = to;
  if (!first) return undefined;
  if (to.length < 2) return { at: first, reach: UNLIKE.waist };
  const ways = [1, -1].map((side) => {
    const usual = (name: Landmark) => point(side * USUAL[part][name].x, USUAL[part][name].y);
    const larger = spreadOf(to) / spreadOf(known.map(usual));
    const from = known.map((name) => scale(usual(name), larger));
    const { at, turn } = movedOnto(from, to);
    const laid = (p: Point) => add(at, turned(p, point(0, 0), turn));
    return {
      at: laid(scale(usual(next), larger)),
      off: Math.max(...from.map((p, i) => distance(laid(p), to[i] as Point))),
    };
  });
  // Two marks alone fit either way: then it lies as it is drawn.
  const { at } = ways.reduce((one, other) => (other.off < one.off - ALIKE ? other : one));
  const nearest = Math.min(...to.map((p) => distance(p, at)));
  return { at, reach: Math.max(UNLIKE.least, UNLIKE.share * nearest) };
}

/** How far some points lie from their middle, all in all. */
function spreadOf(points: readonly Point[]): number {
  const middle = middleOf(points);
  return Math.hypot(...points.map((p) => distance(p, middle)));
}
