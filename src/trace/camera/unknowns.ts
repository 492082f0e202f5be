import type { Mm } from '../../length';
import { add, type Homography, homographyAfter, mapTuple, type Point, scale, subtract, turned } from '../../plane';
import type { Lens } from './lens';
import { type ShotView, shotView } from './shot-view';
import type { Shot, Sightings } from './sightings';

/**
 * The unknowns in one row: of each shot the eight of its homography and the two of its lens, of each sheet its place and
 * its turn, of each tie its place, of each straight edge its direction and its distance from the picture's middle.
 *
 * A shot's homography goes from the plane as seen from the middle of what the shot shows, in steps of `REACH`, so that
 * its ninth number is never near 0 and all are of one size.
 */
export interface Unknowns {
  readonly values: readonly number[];
  /** Which of them are looked for; the others stay. */
  readonly free: readonly boolean[];
  /** The middle of what each shot shows, millimetres. */
  readonly middles: readonly Point[];
  readonly places: Places;
}

/** Where the unknowns of each kind begin. */
export interface Places {
  readonly sheets: number;
  readonly ties: number;
  readonly edges: number;
  readonly count: number;
}

/** How many unknowns each of these has. @source geometry */
export const OF_SHOT = 10;
const OF_SHEET = 3;
const OF_POINT = 2;
/** About as far as a block goes from its middle. @source tolerance */
export const REACH: Mm = 500;

export function placesOf({ shots, sheets, ties, edges }: Sightings): Places {
  const afterShots = OF_SHOT * shots.length;
  const afterSheets = afterShots + OF_SHEET * sheets.length;
  const afterTies = afterSheets + OF_POINT * ties.length;
  return { sheets: afterShots, ties: afterSheets, edges: afterTies, count: afterTies + OF_POINT * edges.length };
}

export const shotAt = (shot: number): number => OF_SHOT * shot;
export const sheetAt = ({ sheets }: Places, sheet: number): number => sheets + OF_SHEET * sheet;
export const tieAt = ({ ties }: Places, tie: number): number => ties + OF_POINT * tie;
export const edgeAt = ({ edges }: Places, edge: number): number => edges + OF_POINT * edge;

/** Where a sheet lies: where its origin is, and how far it is turned, radians. */
export interface SheetPlace {
  readonly at: Point;
  readonly turn: number;
}

/** The sheet that holds the plane. */
export const FIRST_PLACE: SheetPlace = { at: { x: 0, y: 0 }, turn: 0 };

export const onPlane = ({ at, turn }: SheetPlace, p: Point): Point => add(at, turned(p, { x: 0, y: 0 }, turn));

export const sheetPlaceFrom = (values: readonly number[], at: number): SheetPlace => ({
  at: { x: values[at] as number, y: values[at + 1] as number },
  turn: values[at + 2] as number,
});

/** A view from the unknowns of its shot. */
export function viewFrom(shot: Shot, values: readonly number[], at: number, middle: Point): ShotView {
  const [k1, k2] = [values[at + 8] as number, values[at + 9] as number];
  const nearby = withNinth(values.slice(at, at + 8));
  const lens: Lens = { k1, k2 };
  return shotView(shot, lens, homographyAfter(nearby, towards(middle)));
}

/** A homography of eight numbers, its ninth at 1. */
export const withNinth = (eight: readonly number[]): Homography =>
  mapTuple([0, 1, 2, 3, 4, 5, 6, 7, 8], (i) => eight[i] ?? 1);

/** The eight numbers of a homography from the plane, as seen from the middle of what the shot shows. */
export function figuresOf(seen: Homography, middle: Point): readonly number[] {
  const nearby = homographyAfter(seen, [REACH, 0, middle.x, 0, REACH, middle.y, 0, 0, 1]);
  return nearby.slice(0, 8).map((value) => value / nearby[8]);
}

export const nearMiddle = (p: Point, middle: Point): Point => scale(subtract(p, middle), 1 / REACH);

const towards = ({ x, y }: Point): Homography => [1 / REACH, 0, -x / REACH, 0, 1 / REACH, -y / REACH, 0, 0, 1];
