import fc from 'fast-check';
import type { Block } from '../../../src/block';
import { add, flattenCurves, outlineCurves, type Point, point, pointsBounds, turned } from '../../../src/plane';
import { draft, exampleProject } from '../../../src/project';
import { type BlockMarks, LANDMARKS, type MarkSeen, type Sheet, type Sightings } from '../../../src/trace';
import { type Camera, cameraOver, PICTURE, type Stand, stands } from '../../plane/camera';
import { between } from '../../properties/seed';
import { markedBlock } from '../marks/marked-block';
import { LENSES } from './lenses';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
const { blocks } = drafted.value;

/** Five marks of 40 mm on a sheet, one at each corner and one amid; each place is a corner of a mark, clockwise. */
const MARK = 40;
export const SHEET: Sheet = {
  marks: [
    [0, 0],
    [150, 0],
    [150, 220],
    [0, 220],
    [75, 110],
  ].map(([x, y]) => [
    point(x as number, y as number),
    point((x as number) + MARK, y as number),
    point((x as number) + MARK, (y as number) + MARK),
    point(x as number, (y as number) + MARK),
  ]),
};

/** Numbers by chance, the same for the same seed: even, and scattered round 0 with the standard deviation 1. */
export function dice(seed: number) {
  let state = seed >>> 0;
  const even = () => {
    // A linear congruential generator, Knuth's MMIX constants cut to 32 bits, its lower bits left out.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return ((state >>> 8) + 0.5) / 2 ** 24;
  };
  for (let i = 0; i < 10; i += 1) even();
  const scattered = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  return { even, scattered };
}

/** What is drawn by chance of one view. */
export interface Chances {
  readonly stand: Stand;
  readonly share: number;
  readonly lens: string;
  readonly focal: number;
  readonly part: 'front' | 'back';
  readonly sheets: number;
  readonly seed: number;
}

export const chances: fc.Arbitrary<Chances> = fc.record({
  stand: stands,
  share: between(-0.15, 0.05),
  lens: fc.constantFrom(...Object.keys(LENSES)),
  focal: between(2700, 3600),
  part: fc.constantFrom('front', 'back'),
  sheets: fc.integer({ min: 4, max: 6 }),
  seed: fc.integer({ min: 1, max: 2 ** 31 - 1 }),
});

/** A block on the floor, and sheets round it as a hand lays them; paper lies off the plane by up to so much, both ways. */
export type Floor = ReturnType<typeof floorOf>;

export function floorOf({ part, sheets, seed }: Chances, offPlane: number) {
  const { even, scattered } = dice(seed);
  const block: Block = blocks[part];
  const outline = flattenCurves(outlineCurves(block.edges));
  const { left, top, right, bottom } = pointsBounds(outline);
  const [middle, out] = [point((left + right) / 2, (top + bottom) / 2), 150];
  const round = [
    point(left - out, top),
    point(right + out, top + 60),
    point(right + out, bottom - 60),
    point(left - out, bottom),
    point(left - out, middle.y),
    point(right + out, middle.y),
  ].slice(0, sheets);
  const laid = round.map((at) => ({
    at: add(at, point((even() - 0.5) * 60, (even() - 0.5) * 120)),
    turn: (even() - 0.5) * 0.8 + (even() < 0.5 ? Math.PI : 0),
  }));
  // A smooth surface by chance: a few waves of a hand's length to an arm's, as high together as the bound.
  const waves = Array.from({ length: 8 }, () => {
    const [length, way] = [250 + 500 * even(), 2 * Math.PI * even()];
    return {
      x: (2 * Math.PI * Math.cos(way)) / length,
      y: (2 * Math.PI * Math.sin(way)) / length,
      from: 2 * Math.PI * even(),
      high: Math.abs(scattered()),
    };
  });
  const highest = waves.reduce((sum, { high }) => sum + high, 0);
  const above = (p: Point) =>
    (offPlane * waves.reduce((sum, w) => sum + w.high * Math.sin(w.x * p.x + w.y * p.y + w.from), 0)) / (0.7 * highest);
  return { block: markedBlock(block), edges: block.edges, outline, middle, laid, above };
}

export const onSheet = ({ at, turn }: { readonly at: Point; readonly turn: number }, p: Point): Point =>
  add(at, turned(add(p, point(-95, -130)), point(0, 0), turn));

/** A camera that sees the sheets and the block, or of them what lies within a part of the floor. */
export function cameraOf(chance: Chances, floor: Floor, within?: (p: Point) => boolean): Camera {
  const { stand, share, lens, focal } = chance;
  const all = [...floor.laid.flatMap((sheet) => SHEET.marks.flat().map((p) => onSheet(sheet, p))), ...floor.outline];
  const seen = within ? all.filter(within) : all;
  const { left, top, right, bottom } = pointsBounds(seen);
  const bend = (LENSES[lens] as (typeof LENSES)[string])(share);
  return cameraOver(seen, point((left + right) / 2, (top + bottom) / 2), stand, { focal, bend });
}

/** The marks of the sheets as a finder sees them, off by `noise` pixels. */
export function marksOf(
  floor: Floor,
  cameras: readonly Camera[],
  { scattered }: ReturnType<typeof dice>,
  noise: number,
): Sightings {
  const marks = cameras.flatMap((camera, shot) =>
    floor.laid.flatMap((laid, sheet) =>
      SHEET.marks.flatMap((mark, i): MarkSeen[] => {
        const at = mark.map((p) => {
          const on = onSheet(laid, p);
          return add(camera({ ...on, above: floor.above(on) }), point(noise * scattered(), noise * scattered()));
        });
        return at.every(isOnPicture) ? [{ shot, sheet, mark: i, at, off: 0.3 }] : [];
      }),
    ),
  );
  return {
    shots: cameras.map(() => ({ ...PICTURE, flat: false })),
    sheets: floor.laid.map(() => SHEET),
    marks,
    ties: [],
    edges: [],
    lengths: [],
  };
}

const isOnPicture = ({ x, y }: Point): boolean => x > 5 && y > 5 && x < PICTURE.width - 5 && y < PICTURE.height - 5;

/** All places of a block that are marked, in a fixed order. */
export const allPlaces = ({ landmarks, points }: BlockMarks): readonly Point[] => [
  ...LANDMARKS.flatMap((name) => landmarks[name] ?? []),
  ...Object.values(points).flat(),
];
