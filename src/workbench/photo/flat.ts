import type { Mm } from '../../length';
import {
  type Box,
  distance,
  type FourSeen,
  type Homography,
  homographyInverse,
  homographyPoint,
  homographyThrough,
  mapTuple,
  type Point,
  pointsBounds,
  seenError,
} from '../../plane';
import { type BlockMarks, crotchTrued, LANDMARKS, marksMapped, type TracedPair, traceFromMarks } from '../../trace';
import { type MarkedPart, type PhotoWork, type Shot, sidesOf } from './work';

/** A mark that is set with care lies within so many pixels of its place, both ways. */
export const CLICK = 1;

/** A photograph that can be flattened: from its pixels to millimetres on the paper, and back. */
export interface Flat {
  readonly seen: FourSeen;
  readonly toPaper: Homography;
  readonly toPicture: Homography;
}

/** The corners of a marked rectangle on the paper, from A. */
function rectangleOf(shot: Shot): readonly Point[] {
  const { across, along } = sidesOf(shot);
  return [
    { x: 0, y: 0 },
    { x: across, y: 0 },
    { x: across, y: along },
    { x: 0, y: along },
  ];
}

/** How a photograph is flattened; undefined where its four corners cross over or lie on a line. */
export function flatOf(shot: Shot): Flat | undefined {
  const paper = rectangleOf(shot);
  const seen = mapTuple(shot.corners, (from, i) => ({ from, to: paper[i] as Point }));
  const toPaper = homographyThrough(seen);
  return toPaper && { seen, toPaper, toPicture: homographyInverse(toPaper) };
}

/** Round a rectangle that was laid round the block there is as much to see, of its longer side; round a sheet beside it, more. */
const ROUND_IT = { own: 0.12, sheet: 4 } as const;

/** What of the floor is shown at first, millimetres: what is on the picture, and not too far from the rectangle. */
export function floorBox(shot: Shot, { toPaper }: Flat): Box {
  const { across, along } = sidesOf(shot);
  const reach = ROUND_IT[shot.rectangle] * Math.max(across, along);
  const edge = Array.from({ length: 10 }, (_, i) => i / 10).flatMap((t) => [
    { x: t, y: 0 },
    { x: 1, y: t },
    { x: 1 - t, y: 1 },
    { x: 0, y: 1 - t },
  ]);
  const far = [
    { x: -reach, y: -reach },
    { x: across + reach, y: along + reach },
  ];
  // Beyond the horizon there is no end to the floor.
  const seen = edge.flatMap(({ x, y }) => homographyPoint(toPaper, { x: x * shot.width, y: y * shot.height }) ?? far);
  const box = pointsBounds([...rectangleOf(shot), ...seen]);
  return {
    left: Math.max(box.left, -reach),
    top: Math.max(box.top, -reach),
    right: Math.min(box.right, across + reach),
    bottom: Math.min(box.bottom, along + reach),
  };
}

/** How far off the paper may be. */
export interface Exactness {
  /** By marks that lie beside their places, at the worst of the places asked for. */
  readonly byMarks: Mm;
  /** How long the fifth length comes out, and how far off by that the longest way across the block may be. */
  readonly check: { readonly found: Mm; readonly length: Mm; readonly across: Mm } | undefined;
  /** The larger of both. */
  readonly off: Mm;
}

/**
 * How far off places of a photograph may be when it is flattened.
 *
 * @param places in pixels; the corners of the picture's middle part where nothing is marked yet
 * @returns undefined where it can't be flattened so far out
 */
export function exactnessOf(shot: Shot, flat: Flat, places: readonly Point[]): Exactness | undefined {
  const errors = places.map((place) => seenError(flat.seen, place, CLICK));
  const onPaper = places.map((place) => homographyPoint(flat.toPaper, place));
  if (errors.includes(undefined) || onPaper.includes(undefined)) return undefined;
  const byMarks = Math.max(0, ...(errors as Mm[]));
  const found = checkFound(shot, flat);
  const { left, top, right, bottom } = pointsBounds(onPaper as Point[]);
  const longest = places.length > 1 ? Math.hypot(right - left, bottom - top) : 0;
  const check =
    shot.check && found !== undefined && shot.check.length > 0
      ? { found, length: shot.check.length, across: Math.abs(found / shot.check.length - 1) * longest }
      : undefined;
  return { byMarks, check, off: Math.max(byMarks, check?.across ?? 0) };
}

function checkFound({ check }: Shot, { toPaper }: Flat): Mm | undefined {
  const [a, b] = check?.ends.map((end) => homographyPoint(toPaper, end)) ?? [];
  return a && b && distance(a, b);
}

/** Where a block may lie before it is marked: the corners of the rectangle, and of most of the picture. */
export function likelyPlaces({ width, height, corners }: Shot): readonly Point[] {
  const inner = [0.1, 0.9].flatMap((x) => [0.1, 0.9].map((y) => ({ x: x * width, y: y * height })));
  return [...corners, ...inner];
}

/** Every mark of a block. */
export const placesOf = ({ landmarks, points }: BlockMarks): readonly Point[] => [
  ...LANDMARKS.flatMap((name) => landmarks[name] ?? []),
  ...Object.values(points).flat(),
];

/** The marks of a block on the paper, millimetres. */
export const marksOnPaper = ({ marks }: MarkedPart, { toPaper }: Flat): BlockMarks =>
  marksMapped(marks, (p) => homographyPoint(toPaper, p) ?? { x: 0, y: 0 });

/**
 * Both blocks as traced, their crotch curves trued to each other.
 *
 * @throws Refusal saying what is missing
 */
export function tracedBlocks(work: PhotoWork): TracedPair {
  const { waist, crotch, inseam, hem, side } = work.allowances;
  const trace = (part: 'front' | 'back') => {
    const shot = work.shots[work[part].shot];
    const flat = shot && flatOf(shot);
    const marks = flat ? marksOnPaper(work[part], flat) : { landmarks: {}, points: {} };
    return traceFromMarks(part, marks, { waist, centre: crotch, crotch, inseam, hem, side });
  };
  return crotchTrued({ front: trace('front'), back: trace('back') });
}
