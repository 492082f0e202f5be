import {
  add,
  type Homography,
  homographyAfter,
  homographyInverse,
  homographyPoint,
  type Point,
  scale,
  subtract,
} from '../../plane';
import { bent, type Lens, straightened } from './lens';
import type { Shot } from './sightings';

/** How a picture shows the plane. */
export interface ShotView {
  readonly width: number;
  readonly height: number;
  readonly lens: Lens;
  /** From the plane, millimetres, to the picture of a true lens, in halves of its diagonal from its middle; and back. */
  readonly seen: Homography;
  readonly back: Homography;
}

/** The picture's middle, and half its diagonal, pixels. */
export function frameOf({ width, height }: Pick<Shot, 'width' | 'height'>) {
  return { middle: { x: width / 2, y: height / 2 }, half: Math.hypot(width, height) / 2 };
}

/** A view from the homography of its true lens. */
export const shotView = (
  { width, height }: Pick<Shot, 'width' | 'height'>,
  lens: Lens,
  seen: Homography,
): ShotView => ({
  width,
  height,
  lens,
  seen,
  back: homographyInverse(seen),
});

/** Where a place of the plane is on the picture, pixels; undefined where it can't be seen. */
export function viewToPicture(view: ShotView, onPlane: Point): Point | undefined {
  const { middle, half } = frameOf(view);
  const straight = homographyPoint(view.seen, onPlane);
  const found = straight && bent(view.lens, straight);
  return found && add(middle, scale(found, half));
}

/** Where a pixel lies on the plane, millimetres; undefined at the horizon and beyond. */
export function viewToPlane(view: ShotView, onPicture: Point): Point | undefined {
  const { middle, half } = frameOf(view);
  return homographyPoint(view.back, straightened(view.lens, scale(subtract(onPicture, middle), 1 / half)));
}

/** From the plane, millimetres, to the pixels of the picture of a true lens. */
export function straightPixels(view: ShotView): Homography {
  const { middle, half } = frameOf(view);
  return homographyAfter([half, 0, middle.x, 0, half, middle.y, 0, 0, 1], view.seen);
}

/** The same view of its plane turned about the origin, clockwise as seen; radians. */
export function turnedView(view: ShotView, turn: number): ShotView {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return shotView(view, view.lens, homographyAfter(view.seen, [cos, sin, 0, -sin, cos, 0, 0, 0, 1]));
}
