import fc from 'fast-check';
import type { Mm } from '../../src/length';
import type { Point } from '../../src/plane';
import { between } from '../properties/seed';

/** A point of the floor, or so far above it. */
export interface OnFloor extends Point {
  readonly above?: Mm;
}

/** A camera over the floor: what it sees of it, in pixels. Nothing of ours is used, so that it can judge. */
export type Camera = (onFloor: OnFloor) => Point;

/** A picture of 12 megapixels. */
export const PICTURE = { width: 4000, height: 3000 };
const HALF_DIAGONAL = Math.hypot(PICTURE.width, PICTURE.height) / 2;
/** A phone's lens: about 67° over the longer side. */
const FOCAL = 3000;

/** A pinhole, which draws what is straight as straight. */
const PINHOLE = { focal: FOCAL, bend: (p: Point): Point => p };

export interface Stand {
  /** Off the plumb line, degrees. */
  readonly tilt: number;
  /** In which direction, and how the camera is held, degrees. */
  readonly azimuth: number;
  readonly roll: number;
}

const rad = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * A camera that looks at `middle`, and stands as near as it can so that all of `scene` is on the picture, with a border.
 *
 * @param lens its focal length, pixels, and how it bends a point of the true picture, in halves of the diagonal
 */
export function cameraOver(
  scene: readonly Point[],
  middle: Point,
  { tilt, azimuth, roll }: Stand,
  { focal, bend } = PINHOLE,
): Camera {
  const seenFrom = (height: Mm): Camera => {
    const [t, a, r] = [rad(tilt), rad(azimuth), rad(roll)];
    return ({ x, y, above = 0 }) => {
      // Turned about the plumb line, tilted, held: x to the right, y down, z away from the camera.
      const [dx, dy] = [x - middle.x, y - middle.y];
      const [u, v] = [dx * Math.cos(a) + dy * Math.sin(a), -dx * Math.sin(a) + dy * Math.cos(a)];
      const [right, down, away] = [
        u,
        v * Math.cos(t) + above * Math.sin(t),
        height + v * Math.sin(t) - above * Math.cos(t),
      ];
      const sharp = bend({ x: (focal * right) / away / HALF_DIAGONAL, y: (focal * down) / away / HALF_DIAGONAL });
      const [px, py] = [sharp.x * HALF_DIAGONAL, sharp.y * HALF_DIAGONAL];
      return {
        x: PICTURE.width / 2 + px * Math.cos(r) - py * Math.sin(r),
        y: PICTURE.height / 2 + px * Math.sin(r) + py * Math.cos(r),
      };
    };
  };
  const border = 60;
  const fits = (camera: Camera) =>
    scene.every((p) => {
      const { x, y } = camera(p);
      return x > border && y > border && x < PICTURE.width - border && y < PICTURE.height - border;
    });
  const farthest = Math.max(...scene.map((p) => Math.hypot(p.x - middle.x, p.y - middle.y)));
  let height = 1.05 * farthest;
  while (!fits(seenFrom(height))) height *= 1.02;
  return seenFrom(height);
}

/** Up to 45° off the plumb line, any way round. */
export const stands: fc.Arbitrary<Stand> = fc.record({
  tilt: between(0, 45),
  azimuth: between(0, 360),
  roll: between(0, 360),
});
