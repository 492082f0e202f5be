import { type Centre, type Centres, overSide } from '../leg';
import type { Mm } from '../length';
import {
  type Curve,
  distance,
  leftOf,
  linesMeet,
  mirrored,
  moved,
  type Point,
  pathLength,
  subtract,
  unit,
} from '../plane';
import { sewnStretch } from './stretch';

export const WAIST_FINISHES = [
  'elasticCasing',
  'drawstringCasing',
  'elasticAndDrawstring',
  'separateCasing',
  'knitBand',
  'facedCasing',
] as const;
export type WaistFinish = (typeof WAIST_FINISHES)[number];

/** How the waist is finished, as chosen. */
export interface CasingChoices {
  readonly finish: WaistFinish;
  readonly elasticWidth: Mm;
  readonly rows: number;
  readonly turnOfCloth: Mm;
  readonly elastic: 'threaded' | 'sewnOn';
  readonly rawEdge: 'overlocked' | 'turnedUnder';
  /** How long to cut the elastic; by the rule of {@link elasticLength} where it is `auto`. */
  readonly elasticLength: Mm | 'auto';
  /** How much longer the elastic gets when it is pulled out, a fraction. */
  readonly elasticStretch: number;
  readonly cordWidth: Mm;
  /** How long to cut the cord; by the rule of {@link cordLength} where it is `auto`. */
  readonly cordLength: Mm | 'auto';
  /** A cord is bought, or sewn from the cloth. */
  readonly cord: 'bought' | 'ofCloth';
  /** Finished height of a knit band. */
  readonly bandHeight: Mm;
  /** Measured stretch of the knit band, a fraction. */
  readonly bandStretch: number;
}

/** Room for one elastic or one cord between two lines of stitching (or stitching and fold), above the waist edge. */
export interface Channel {
  readonly holds: 'elastic' | 'cord';
  /** Of what is drawn through. */
  readonly width: Mm;
  readonly from: Mm;
  readonly to: Mm;
}

/** Heights of a waist finish above the waist edge. */
export interface CasingHeights {
  /**
   * How the leg ends at the waist: `folded` over itself; `faced` with a piece of its own shape; `seamed` to a band or a
   * casing of its own.
   */
  readonly kind: 'folded' | 'faced' | 'seamed';
  /** What is built above the waist edge: folded 2 × elastic + turn of the cloth, without the catch. @source practice */
  readonly height: Mm;
  /** Of the fold, or of the upper edge of a faced casing. */
  readonly fold: Mm;
  /** Of cloth beyond the height, so that the raw edge is caught by the stitching. */
  readonly catch: Mm;
  /** From the waist edge up. */
  readonly channels: readonly Channel[];
}

/** Beyond the stitching: 6 mm to hold an overlocked edge, 10 mm to turn a raw one under. @source practice */
const CATCH = { overlocked: 6, turnedUnder: 10 } as const;
/** Rows of elastic lie 3 mm apart, counted on both layers. @source practice */
export const BETWEEN_ROWS = 3;
/** A cord's channel is ¼ in wider than the cord. @source a guild guideline, 12.150, as read */
export const CORD_ROOM = 6.35;

/** @param casing what was chosen */
export function casingHeights(casing: CasingChoices): CasingHeights {
  const channels = channelsOf(casing);
  const inner = channels.at(-1)?.to ?? casing.bandHeight;
  const catchOf = casing.elastic === 'sewnOn' && casing.finish === 'elasticCasing' ? 0 : CATCH[casing.rawEdge];
  if (casing.finish === 'separateCasing' || casing.finish === 'knitBand') {
    return { kind: 'seamed', height: 2 * inner, fold: 0, catch: 0, channels };
  }
  const kind = casing.finish === 'facedCasing' ? 'faced' : 'folded';
  return { kind, height: 2 * inner, fold: inner, catch: catchOf, channels };
}

/** The channels from the waist edge up: rows of elastic in equal parts, a cord above them. */
function channelsOf({ finish, elasticWidth, rows, turnOfCloth, cordWidth }: CasingChoices): readonly Channel[] {
  if (finish === 'knitBand') return [];
  const elastic =
    finish === 'drawstringCasing' ? 0 : rows * elasticWidth + ((rows - 1) * BETWEEN_ROWS) / 2 + turnOfCloth / 2;
  const rowsOf = Array.from(
    { length: elastic > 0 ? rows : 0 },
    (_, i): Channel => ({
      holds: 'elastic',
      width: elasticWidth,
      from: (elastic * i) / rows,
      to: (elastic * (i + 1)) / rows,
    }),
  );
  if (finish !== 'drawstringCasing' && finish !== 'elasticAndDrawstring') return rowsOf;
  const turn = finish === 'drawstringCasing' ? turnOfCloth / 2 : 0;
  return [...rowsOf, { holds: 'cord', width: cordWidth, from: elastic, to: elastic + cordWidth + CORD_ROOM + turn }];
}

/** The lines of a casing on one leg, each from centre back to centre front. */
export interface CasingLines {
  readonly waistEdge: readonly [Point, Point];
  /** The fold, the upper edge of a faced casing, or again the waist edge where something is seamed to it. */
  readonly fold: readonly [Point, Point];
  /** The raw edge of a folded casing; else the same as the fold. */
  readonly raw: readonly [Point, Point];
  /** Where the channels are parted, without the waist edge itself. */
  readonly partings: readonly (readonly [Point, Point])[];
  /** How much higher all of them lie over the side than straight lines; 0 but for a higher hip. */
  readonly higher: Mm;
}

/** One of a casing's lines as it is drawn. */
export const casingCurves = ({ higher }: CasingLines, line: readonly [Point, Point]): readonly Curve[] =>
  overSide(line, higher);

/**
 * Builds the casing above the waist edge: the centre lines run on to the fold; above it they are mirrored in it, so
 * that the turned part lies exactly on the leg below.
 *
 * @param centres the straightened centre lines; the waist edge is the straight line between their waist points
 * @param heights of the casing
 * @param higher how much higher it lies over the side
 */
export function casingLines(centres: Centres, heights: CasingHeights, higher: Mm = 0): CasingLines {
  const edge = [centres.back.waistPoint, centres.front.waistPoint] as const;
  if (heights.kind === 'seamed') return { waistEdge: edge, fold: edge, raw: edge, partings: [], higher };
  const fold = lineAt(centres, heights.fold);
  const partings = heights.channels.slice(1).map((channel) => lineAt(centres, channel.from));
  if (heights.kind === 'faced') return { waistEdge: edge, fold, raw: fold, partings, higher };
  const caught = lineAt(centres, -heights.catch);
  const raw = [mirrored(caught[0], fold[0], fold[1]), mirrored(caught[1], fold[0], fold[1])] as const;
  return { waistEdge: edge, fold, raw, partings, higher };
}

/** The parallel of the waist edge at a height, between the centre lines carried on straight. */
export function lineAt({ front, back }: Centres, height: Mm): readonly [Point, Point] {
  const way = unit(subtract(front.waistPoint, back.waistPoint));
  const onto = (centre: Centre) =>
    linesMeet(moved(back.waistPoint, leftOf(way), height), way, centre.curveEnd, centre.way) ?? centre.waistPoint;
  return [onto(back), onto(front)];
}

/**
 * The opening that must pass over the fullest part: the smallest ring from the casing stitching to the raw edge, both
 * legs. The centre lines are straight up to the fold and mirrored above it, so it is at one of the three lines.
 *
 * @param lines of one leg's casing
 */
export function waistOpening(lines: CasingLines): Mm {
  const round = (line: readonly [Point, Point]): Mm =>
    lines.higher === 0 ? distance(...line) : pathLength(casingCurves(lines, line));
  return 2 * Math.min(round(lines.waistEdge), round(lines.fold), round(lines.raw));
}

export const ELASTIC_SHARE = 0.92;
/** A large waist is drawn in by no more than this. */
export const MOST_DRAWN_IN = 70;
export const ELASTIC_LAP = 25;

/**
 * How long to cut the elastic: 0.92 × waist, but at most 70 mm under it, and 25 for the lap; never longer than the
 * opening.
 *
 * @param waistGirth the body's waist
 * @param opening the finished opening
 * @source practice: the waist less 2 to 3 in, and 1 in of lap, are common
 */
export const elasticLength = (waistGirth: Mm, opening: Mm): Mm =>
  Math.min(Math.max(ELASTIC_SHARE * waistGirth, waistGirth - MOST_DRAWN_IN) + ELASTIC_LAP, opening);

/** A knit band is sewn on stretched: 0.85 × the waist. @source practice */
export const BAND_SHARE = 0.85;

/**
 * How long a knit band is round: 0.85 × waist, so that it holds, but as much as the fullest part needs to pass its own
 * stretch, and never longer than the waist edge that it is sewn to.
 *
 * @param waistGirth the body's waist
 * @param fullest the fullest part
 * @param stretch of the band, measured, a fraction
 * @param opening the waist edge all round
 * @source practice
 */
export const bandLength = (waistGirth: Mm, fullest: Mm, stretch: number, opening: Mm): Mm =>
  Math.min(opening, Math.max(BAND_SHARE * waistGirth, fullest / sewnStretch(stretch)));

/** Each end of a cord, to tie a bow: opening + 50–60 cm in all. @source memory */
export const TIE = 275;

/**
 * How long to cut a waist cord: the opening and two ends to tie.
 *
 * @param opening the finished opening
 */
export const cordLength = (opening: Mm): Mm => opening + 2 * TIE;
