import type { Box, Homography, Point } from '../../plane';

/**
 * How what is looked at lies in its window: a drawing or flattened paper in millimetres, or a picture in its pixels. A point
 * (x, y) of it is seen at (x·scale + left, y·scale + top), pixels of the window.
 */
export interface View {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** Where a point of what is looked at is seen in the window. */
export const inWindow = ({ x, y }: Point, { scale, left, top }: View): Point => ({
  x: x * scale + left,
  y: y * scale + top,
});

/** Where a point of the window lies on what is looked at. */
export const outOfWindow = ({ x, y }: Point, { scale, left, top }: View): Point => ({
  x: (x - left) / scale,
  y: (y - top) / scale,
});

/** The same as a map of the plane, to go on with the one by which a photograph is flattened. */
export const windowMap = ({ scale, left, top }: View): Homography => [
  1 / scale,
  0,
  -left / scale,
  0,
  1 / scale,
  -top / scale,
  0,
  0,
  1,
];

/** The style of what stands at a point and doesn't grow with what is looked at. */
export function standingAt(p: Point, view: View): { readonly transform: string } {
  const { x, y } = inWindow(p, view);
  return { transform: `translate(${x}px, ${y}px)` };
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** From a whole class set at a glance to a notch over the whole window, pixels a millimetre. */
const NEAREST = 20;
const FARTHEST = 0.03;

/** Room for rulers and words round the fitted drawing, pixels. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The largest view that shows the whole box, in the middle of the room that is left. */
export function fitView(box: Box, window: Size, room: Room): View {
  const width = Math.max(40, window.width - room.left - room.right);
  const height = Math.max(40, window.height - room.top - room.bottom);
  const scale = kept(Math.min(width / (box.right - box.left), height / (box.bottom - box.top)));
  return {
    scale,
    left: room.left + width / 2 - ((box.left + box.right) / 2) * scale,
    top: room.top + height / 2 - ((box.top + box.bottom) / 2) * scale,
  };
}

/** Nearer or farther by a factor, about a point of the window that stays where it is. */
export function zoomView(view: View, factor: number, about: Point): View {
  const scale = kept(view.scale * factor);
  const ratio = scale / view.scale;
  return { scale, left: about.x - (about.x - view.left) * ratio, top: about.y - (about.y - view.top) * ratio };
}

export function panView(view: View, dx: number, dy: number): View {
  return { ...view, left: view.left + dx, top: view.top + dy };
}

const kept = (scale: number): number => Math.min(NEAREST, Math.max(FARTHEST, scale));
