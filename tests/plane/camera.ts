import fc from 'fast-check';
import type { Mm } from '../../src/length';
import type { Point } from '../../src/plane';
import { between } from '../properties/seed';

/** A pinhole camera over the floor: sees a point of it, in pixels. Nothing of ours is used, so that it can judge. */
export type Camera = (onFloor: Point) => Point;

/** A picture of 12 megapixels. */
const PICTURE = { width: 4000, height: 3000 };
/** A phone's lens: about 67° over the longer side. */
const FOCAL = 3000;

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
 */
export function cameraOver(scene: readonly Point[], middle: Point, { tilt, azimuth, roll }: Stand): Camera {
  const seenFrom = (height: Mm): Camera => {
    const [t, a, r] = [rad(tilt), rad(azimuth), rad(roll)];
    return ({ x, y }) => {
      // Turned about the plumb line, tilted, held: x to the right, y down, z away from the camera.
      const [dx, dy] = [x - middle.x, y - middle.y];
      const [u, v] = [dx * Math.cos(a) + dy * Math.sin(a), -dx * Math.sin(a) + dy * Math.cos(a)];
      const [right, down, away] = [u, v * Math.cos(t), height + v * Math.sin(t)];
      const [px, py] = [(FOCAL * right) / away, (FOCAL * down) / away];
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
