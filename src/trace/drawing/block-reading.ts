import type { Mm } from '../../length';
import type { Point } from '../../plane';
import type { Landmark } from '../marks';
import type { Corner } from './corners';
import type { InnerLine } from './grain';
import type { WayRound } from './way-round';

/** The places round a block, in their order. */
export const ROUND_PLACES = [
  'waistSide',
  'waistCentre',
  'crotchTop',
  'crotchPoint',
  'hemInseam',
  'hemSide',
] as const satisfies readonly Landmark[];
export type RoundPlace = (typeof ROUND_PLACES)[number];

/** What of a block somebody should look at before it is used. */
export type ReadPart = RoundPlace | 'grain' | 'hip';

/** An outline of a drawing as a block: what is where. All in millimetres, as the drawing lies. */
export interface BlockReading {
  readonly way: WayRound;
  readonly corners: readonly Corner[];
  readonly lines: readonly InnerLine[];
  /** How far round the outline each place lies; undefined where nobody can tell. */
  readonly places: Readonly<Partial<Record<RoundPlace, Mm>>>;
  /** Both ends of the grainline, the upper one first. */
  readonly grain: readonly [Point, Point] | undefined;
  /** A point on the level of the hip, and of the knee where there is one. */
  readonly hip: Point | undefined;
  readonly knee: Point | undefined;
  /** What is a guess. */
  readonly doubts: ReadonlySet<ReadPart>;
}

/** Whether the places of a block follow one another as its outline runs; undefined where they don’t go round in their order. */
export function runsForward({ way, places }: Pick<BlockReading, 'way' | 'places'>): boolean | undefined {
  const round = ROUND_PLACES.map((name) => places[name]);
  if (round.includes(undefined)) return undefined;
  const from = round[0] as Mm;
  const far = round.map((place) => ((((place as Mm) - from) % way.length) + way.length) % way.length).slice(1);
  if (far.every((one, i) => one > (i === 0 ? 0 : (far[i - 1] as Mm)))) return true;
  if (far.every((one, i) => one > 0 && (i === 0 || one < (far[i - 1] as Mm)))) return false;
  return undefined;
}
