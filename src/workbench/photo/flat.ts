import type { Point } from '../../plane';
import {
  type BlockMarks,
  type Exactness,
  exactnessOf,
  type Flat,
  type FloorShot,
  flatsOf,
  LANDMARKS,
  type MarkedPoint,
  marksMapped,
  type Sight,
  type TracedPair,
  takenForOne,
  traceFromMarks,
  viewToPlane,
} from '../../trace';
import { Refusal, say } from '../../words';
import {
  hasRectangle,
  type MarkedPart,
  type Part,
  type PhotoWork,
  type Shot,
  shotOf,
  sidesOf,
  USUAL_DOTS,
} from './work';

/** Photographs stay the same while a block is marked on them: they are joined once. */
const joined = new WeakMap<PhotoWork['shots'], readonly (Flat | undefined)[]>();

/** How each photograph is flattened; undefined for one whose corners cross over, or that nothing joins to the others. */
export function flatsOfWork({ shots }: Pick<PhotoWork, 'shots'>): readonly (Flat | undefined)[] {
  const known = joined.get(shots);
  if (known) return known;
  const flats = flatsOf(shots.map(floorShotOf));
  joined.set(shots, flats);
  return flats;
}

const floorShotOf = (shot: Shot): FloorShot => ({
  width: shot.width,
  height: shot.height,
  rectangle: hasRectangle(shot) ? { corners: shot.corners, ...sidesOf(shot) } : undefined,
  dots: shot.rectangle === 'scan' ? (shot.dots ?? USUAL_DOTS) : undefined,
  joins: shot.joins ?? {},
  found: shot.found ?? [],
});

/** Which other photograph shows a rectangle that is taken to be this one's for its equal sides alone. */
export const rectangleTakenFor = ({ shots }: PhotoWork, index: number): number | undefined =>
  takenForOne(shots.map(floorShotOf), index);

/** Which of the marks found on a photograph lie so far beside their places that they are left out, by their numbers. */
export function wrongFound(work: PhotoWork, index: number): readonly number[] {
  const left = new Set(flatsOfWork(work)[index]?.joined.wrong.map(({ at }) => at));
  return (work.shots[index]?.found ?? []).filter(({ corners }) => left.has(corners)).map(({ number }) => number);
}

/** Where a block may lie on a photograph before it is marked: between the marks that were found, or else on most of the picture. */
function likelyPlaces(shot: Shot): readonly Point[] {
  const { width, height, corners, found = [] } = shot;
  const inner = [0.1, 0.9].flatMap((x) => [0.1, 0.9].map((y) => ({ x: x * width, y: y * height })));
  return [...(hasRectangle(shot) ? corners : []), ...(found.length > 0 ? found.map((mark) => mark.corners[0]) : inner)];
}

/** How exact most of a photograph is. */
export function exactnessOfShot(work: PhotoWork, index: number): Exactness | undefined {
  const shot = work.shots[index];
  if (!shot) return undefined;
  const places = likelyPlaces(shot).map((at) => ({ shot: index, at }));
  return exactnessOf(flatsOfWork(work), places, shot.check && { shot: index, ...shot.check });
}

/** How exact the places of a block are, once two are marked. */
export function exactnessOfBlock(work: PhotoWork, part: Part): Exactness | undefined {
  const places = placesOf(work[part]);
  const index = work.shots.findIndex(({ check }) => check !== undefined);
  const check = work.shots[index]?.check;
  return exactnessOf(flatsOfWork(work), places, check && { shot: index, ...check });
}

/** Every mark of a block, with its photograph. */
export function placesOf(part: MarkedPart): readonly Sight[] {
  const { landmarks, points } = part.marks;
  const marks: readonly MarkedPoint[] = [
    ...LANDMARKS.flatMap((name) => landmarks[name] ?? []),
    ...Object.values(points).flat(),
  ];
  return marks.map((mark) => ({ shot: shotOf(part, mark), at: { x: mark.x, y: mark.y } }));
}

/** The marks of a block on the paper, millimetres; those of a photograph that can't be flattened are left out. */
export function marksOnPaper(part: MarkedPart, flats: readonly (Flat | undefined)[]): BlockMarks {
  const at = (mark: MarkedPoint): Point | undefined => {
    const flat = flats[shotOf(part, mark)];
    return flat && viewToPlane(flat.view, mark);
  };
  const seen = ([, mark]: readonly [string, MarkedPoint]) => at(mark) !== undefined;
  const { landmarks, points } = part.marks;
  const shown: BlockMarks = {
    ...part.marks,
    landmarks: Object.fromEntries(Object.entries(landmarks).filter(seen)),
    points: Object.fromEntries(Object.entries(points).map(([edge, run]) => [edge, run.filter((mark) => at(mark))])),
  };
  return marksMapped(shown, (mark) => at(mark) ?? mark);
}

/**
 * Both blocks as they lie on their paper.
 *
 * @throws Refusal saying what is missing
 */
export function tracedBlocks(work: PhotoWork): TracedPair {
  const flats = flatsOfWork(work);
  const trace = (part: Part) => {
    const planes = new Set(placesOf(work[part]).map(({ shot }) => flats[shot]?.joined));
    if (planes.size > 1)
      throw new Refusal([
        {
          field: `${part}-photographs`,
          value: undefined,
          phrase: say`don’t show four places in common: mark them on both.`,
        },
      ]);
    return traceFromMarks(part, marksOnPaper(work[part], flats));
  };
  return { front: trace('front'), back: trace('back') };
}
