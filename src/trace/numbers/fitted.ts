import type { Mm } from '../../length';
import { leastSquares, type Row } from '../../plane';
import { tapeReads, tapesOn } from './measured';
import { BEND_KEYS, type BendKey, type BlockShape, PLACE_KEYS, type PlaceKey, shapeDrawn } from './shape';
import { type BlockNumbers, TAPE_KEYS, type TapeKey } from './table';

/** A tape on paper is read to a millimetre, by an eye that sees half of one, standard deviation. @source practice */
const TAPE: Mm = 0.5;
/** What was not measured differs from the usual proportions by this share of it, standard deviation, and so much at least. @source practice */
const UNUSUAL = { share: 0.12, least: 12 } as const;
/** How far the edges of blocks bend otherwise than those of a drafted one: radians, and of the crotch curve a share. @source practice */
const BENDS: Readonly<Record<BendKey, number>> = {
  waistAtSide: 0.08,
  waistAtCentre: 0.08,
  crotchFuller: 0.12,
  crotchAtPoint: 0.04,
  inseamAtPoint: 0.05,
  inseamAtKnee: 0.02,
  inseamAtHem: 0.02,
  sideAtHem: 0.02,
  sideAtKnee: 0.02,
  sideAtHip: 0.02,
  sideAtWaist: 0.06,
};

/** Proportions differ by so many times as many spreads as bends do before it is strange. @source practice */
const PROPORTIONS = 1.6;

const isPlace = (key: TapeKey): key is PlaceKey => PLACE_KEYS.some((one) => one === key);
const UNKNOWNS = [...PLACE_KEYS, ...BEND_KEYS];
const FREE = UNKNOWNS.map(() => true);
const shapeOf = (unknowns: readonly number[]): BlockShape =>
  Object.fromEntries(UNKNOWNS.map((key, i) => [key, unknowns[i]])) as BlockShape;

/**
 * A step for a slope of a length by a place, millimetres, or by a bend, radians: the lengths are smooth far beyond that.
 *
 * @source tolerance
 */
const STEP = { place: 0.01, bend: 1e-5 } as const;
const stepOf = (i: number): number => (i < PLACE_KEYS.length ? STEP.place : STEP.bend);

/** A shape, and how ill it agrees. */
export interface FittedShape {
  readonly shape: BlockShape;
  /** The sum of the squares of what each number and bend is off, in its own spreads. */
  readonly strain: number;
  /** How far from usual it is, where that is most, in spreads of a bend: no real block is so by many. */
  readonly unusual: number;
}

/**
 * The shape that agrees best with what was measured: each number to within a tape's error, what was not measured near the
 * usual proportions, edges bent as usual where no length along them says otherwise.
 *
 * @param part whose block
 * @param given what was measured of it
 * @param usual a length for each place; what was measured as it was
 * @source practice, by least squares
 */
export function shapeFitted(
  part: 'front' | 'back',
  given: BlockNumbers,
  usual: Readonly<Record<PlaceKey, Mm>>,
): FittedShape {
  const outwards = part === 'front' ? 1 : -1;
  const along = TAPE_KEYS.filter((key) => !isPlace(key) && given[key] !== undefined);
  const readings = (unknowns: readonly number[]): readonly Mm[] => {
    const tapes = tapesOn(shapeDrawn(part, shapeOf(unknowns)));
    return along.map((key) => tapeReads(tapes[key], outwards));
  };
  const start = [...PLACE_KEYS.map((key) => usual[key]), ...BEND_KEYS.map(() => 0)];
  const spreads = [
    ...PLACE_KEYS.map((key) =>
      given[key] === undefined ? Math.max(UNUSUAL.least, UNUSUAL.share * Math.abs(usual[key])) : TAPE,
    ),
    ...BEND_KEYS.map((key) => BENDS[key]),
  ];
  const rowsAt = (unknowns: readonly number[]): readonly Row[] | undefined => {
    const own = unknowns.map((value, i): Row => {
      const spread = spreads[i] as number;
      return { off: (value - (start[i] as number)) / spread, at: [i], by: [1 / spread] };
    });
    if (along.length === 0) return own;
    const now = readings(unknowns);
    if (now.some((reading) => !Number.isFinite(reading))) return undefined;
    const moved = unknowns.map((value, i) => readings(unknowns.with(i, value + stepOf(i))));
    const lengths = along.map((key, k): Row => {
      const reading = now[k] as Mm;
      return {
        off: (reading - (given[key] as Mm)) / TAPE,
        at: unknowns.map((_, i) => i),
        by: moved.map((read, i) => ((read[k] as Mm) - reading) / stepOf(i) / TAPE),
      };
    });
    return [...own, ...lengths];
  };
  const found = leastSquares(start, FREE, rowsAt);
  const shape = shapeOf(found?.unknowns ?? start);
  const bent = BEND_KEYS.map((key) => Math.abs(shape[key]) / BENDS[key]);
  const placed = PLACE_KEYS.map((key, i) =>
    given[key] === undefined ? Math.abs(shape[key] - usual[key]) / (spreads[i] as number) / PROPORTIONS : 0,
  );
  return { shape, strain: found?.cost ?? Number.POSITIVE_INFINITY, unusual: Math.max(...bent, ...placed) };
}
