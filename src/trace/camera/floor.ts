import type { Mm } from '../../length';
import type { Point } from '../../plane';
import { type FoundMark, MARKS_A_SHEET, marksOfSheet, sheetOfMark } from '../picture';
import { HAND_OFF } from './exactness';
import { glassOf } from './glass';
import type { Sheet, Sightings } from './sightings';

/** A photograph and what was marked of the floor on it, by hand or found; points are in its own pixels. */
export interface FloorShot {
  readonly width: number;
  readonly height: number;
  /** A, B, C, D, round a rectangle of which the sides are known; undefined where the photograph shows none. */
  readonly rectangle:
    | { readonly corners: readonly [Point, Point, Point, Point]; readonly across: Mm; readonly along: Mm }
    | undefined;
  /** Of a scan, which sees no perspective: how many dots of it are an inch. */
  readonly dots?: number | undefined;
  /** Places that another photograph shows, too, by their number. */
  readonly joins: Readonly<Record<string, Point>>;
  /** The printed marks that it shows. */
  readonly found: readonly FoundMark[];
}

/** Corners of a found mark lie so far off the floor's plane and their places, a standard deviation, pixels: paper curls. @source practice */
const FOUND_OFF = 0.5;

const sidesOf = ({ rectangle }: FloorShot): string => (rectangle ? `${rectangle.across} ${rectangle.along}` : '');
const sheetsOf = ({ found }: FloorShot): readonly number[] => [
  ...new Set(found.map(({ number }) => sheetOfMark(number))),
];

/** Whether two photographs show anything of each other by which they are joined, rectangles aside. */
const share = (a: FloorShot, b: FloorShot): boolean =>
  Object.keys(a.joins).some((key) => key in b.joins) || sheetsOf(a).some((sheet) => sheetsOf(b).includes(sheet));

/**
 * The first other photograph with a rectangle of the same sides and nothing else in common: both are taken to show one
 * rectangle, which may be wrong.
 */
export function takenForOne(shots: readonly FloorShot[], index: number): number | undefined {
  const shot = shots[index];
  if (!shot?.rectangle) return undefined;
  const alike = shots.findIndex((other, i) => i !== index && sidesOf(other) === sidesOf(shot) && !share(other, shot));
  return alike < 0 ? undefined : alike;
}

/** Which photographs hang together, each by its index. */
export function planesOf(shots: readonly FloorShot[]): readonly (readonly number[])[] {
  const together = (a: FloorShot, b: FloorShot) => (sidesOf(a) !== '' && sidesOf(a) === sidesOf(b)) || share(a, b);
  const planes: number[][] = [];
  for (const [i, shot] of shots.entries()) {
    const meets = planes.filter((plane) => plane.some((other) => together(shots[other] as FloorShot, shot)));
    const rest = planes.filter((plane) => !meets.includes(plane));
    planes.splice(0, planes.length, ...rest, [...meets.flat(), i]);
  }
  return planes.map((plane) => plane.toSorted((a, b) => a - b));
}

/**
 * What some photographs show. The first printed sheet holds the plane, or else the rectangle of the first photograph that
 * has one.
 */
export function sightingsOf(all: readonly FloorShot[], members: readonly number[]): Sightings {
  const shots = members.map((member) => all[member] as FloorShot);
  const printed = [...new Set(shots.flatMap(sheetsOf))];
  const kinds = [...new Set(shots.map(sidesOf).filter((sides) => sides !== ''))];
  const rectangles = kinds.map((kind): Sheet => {
    const { across, along } = shots.find((shot) => sidesOf(shot) === kind)?.rectangle ?? { across: 0, along: 0 };
    return { marks: [[at(0, 0)], [at(across, 0)], [at(across, along)], [at(0, along)]] };
  });
  const glasses = shots.flatMap(({ width, height, dots }, shot) =>
    dots === undefined ? [] : [{ width, height, dots, shot }],
  );
  const scanned = glasses.map(({ shot, dots, ...size }, i) =>
    glassOf(size, { shot, sheet: printed.length + kinds.length + i }, dots),
  );
  const names = [...new Set(shots.flatMap(({ joins }) => Object.keys(joins)))];
  return {
    shots: shots.map(({ width, height, dots }) => ({ width, height, flat: dots !== undefined })),
    sheets: [
      ...printed.map((sheet) => ({ marks: marksOfSheet(sheet).map(({ corners }) => corners) })),
      ...rectangles,
      ...scanned.map(({ sheet }) => sheet),
    ],
    marks: [
      ...scanned.flatMap(({ marks }) => marks),
      ...shots.flatMap((shot, i) => [
        ...shot.found.map(({ number, corners }) => ({
          shot: i,
          sheet: printed.indexOf(sheetOfMark(number)),
          mark: (number - 1) % MARKS_A_SHEET,
          at: corners,
          off: FOUND_OFF,
        })),
        ...(shot.rectangle?.corners ?? []).map((corner, mark) => ({
          shot: i,
          sheet: printed.length + kinds.indexOf(sidesOf(shot)),
          mark,
          at: [corner],
          off: HAND_OFF,
        })),
      ]),
    ],
    ties: names.map((name) => ({
      seen: shots.flatMap(({ joins }, shot) => (joins[name] ? [{ shot, at: joins[name] }] : [])),
      off: HAND_OFF,
    })),
    edges: [],
    lengths: [],
  };
}

const at = (x: Mm, y: Mm): Point => ({ x, y });
