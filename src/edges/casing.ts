import type { Centre, Centres } from '../leg';
import type { Mm } from '../length';
import { distance, leftOf, linesMeet, mirrored, moved, type Point, subtract, unit } from '../plane';

/** A fold-over elastic casing, as chosen. */
export interface CasingChoices {
  readonly elasticWidth: Mm;
  readonly rows: number;
  readonly turnOfCloth: Mm;
  readonly elastic: 'threaded' | 'sewnOn';
  readonly rawEdge: 'overlocked' | 'turnedUnder';
}

/** Heights of a casing above the waist edge. */
export interface CasingHeights {
  /** 2 × elastic + turn of the cloth (practice); rows of elastic lie 3 mm apart. */
  readonly height: Mm;
  /** Of the fold: half of the height. */
  readonly fold: Mm;
  /** Of cloth beyond the height, so that the raw edge is caught by the stitching. */
  readonly catch: Mm;
}

/** Beyond the stitching: 6 mm to hold an overlocked edge, 10 mm to turn a raw one under (practice). */
const CATCH = { overlocked: 6, turnedUnder: 10 } as const;
const BETWEEN_ROWS = 3;

/** @param casing what was chosen */
export function casingHeights({ elasticWidth, rows, turnOfCloth, elastic, rawEdge }: CasingChoices): CasingHeights {
  const height = 2 * rows * elasticWidth + (rows - 1) * BETWEEN_ROWS + turnOfCloth;
  return { height, fold: height / 2, catch: elastic === 'threaded' ? CATCH[rawEdge] : 0 };
}

/** The lines of a casing on one leg, each from centre back to centre front. */
export interface CasingLines {
  readonly waistEdge: readonly [Point, Point];
  readonly fold: readonly [Point, Point];
  readonly raw: readonly [Point, Point];
}

/**
 * Builds the casing above the waist edge: the centre lines run on to the fold; above it they are mirrored in it, so that
 * the turned part lies exactly on the leg below.
 *
 * @param centres the straightened centre lines; the waist edge is the straight line between their waist points
 * @param heights of the casing
 */
export function casingLines(centres: Centres, heights: CasingHeights): CasingLines {
  const edge = [centres.back.waistPoint, centres.front.waistPoint] as const;
  const up = leftOf(unit(subtract(edge[1], edge[0])));
  const fold = lineAt(centres, up, heights.fold);
  const caught = lineAt(centres, up, -heights.catch);
  return { waistEdge: edge, fold, raw: [mirrored(caught[0], fold[0], fold[1]), mirrored(caught[1], fold[0], fold[1])] };
}

/** The parallel of the waist edge at a height, between the centre lines carried on straight. */
function lineAt({ front, back }: Centres, up: Point, height: Mm): readonly [Point, Point] {
  const way = { x: -up.y, y: up.x };
  const onto = (centre: Centre) =>
    linesMeet(moved(back.waistPoint, up, height), way, centre.hipPoint, centre.way) ?? centre.waistPoint;
  return [onto(back), onto(front)];
}

/**
 * The opening that must pass over the fullest part: the smallest ring from the casing stitching to the raw edge, both
 * legs. The centre lines are straight up to the fold and mirrored above it, so it is at one of the three lines.
 *
 * @param lines of one leg's casing
 */
export function waistOpening(lines: CasingLines): Mm {
  return 2 * Math.min(distance(...lines.waistEdge), distance(...lines.fold), distance(...lines.raw));
}

const ELASTIC_SHARE = 0.92;
const ELASTIC_LAP = 25;

/**
 * How long to cut the elastic: 0.92 × waist + 25 for the lap, never longer than the opening (practice; the home-sewing
 * pages say waist less 2–3 in, lap 1 in).
 *
 * @param waistGirth the body's waist
 * @param opening the finished opening
 */
export const elasticLength = (waistGirth: Mm, opening: Mm): Mm =>
  Math.min(ELASTIC_SHARE * waistGirth + ELASTIC_LAP, opening);
