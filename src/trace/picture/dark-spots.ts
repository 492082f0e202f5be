import { type Point, point } from '../../plane';
import type { GreyPicture } from './grey';

/** A dark spot on a picture: its outermost pixels in every row and column, and how many it has. */
export interface DarkSpot {
  readonly rim: readonly Point[];
  readonly size: number;
  readonly width: number;
  readonly height: number;
}

/** Darker than its surroundings by this share of their brightness is dark. @source tolerance */
const DARKER = 0.85;
/** The surroundings reach so far, as a share of the picture's longer side. @source tolerance */
const AROUND = 1 / 40;

/**
 * The dark spots of a picture, whatever the light: each pixel is held against the mean of those around it.
 *
 * @param least smaller spots, in pixels either way, are passed over
 * @param most larger ones, too
 */
export function darkSpots(picture: GreyPicture, least: number, most: number): readonly DarkSpot[] {
  const spot = labelled(darkPixels(picture), picture.width, picture.height);
  return spotsOf(spot, picture.width, picture.height).filter(
    ({ width, height }) => Math.min(width, height) >= least && Math.max(width, height) <= most,
  );
}

/** 1 where a pixel is dark, by sums over rectangles. */
function darkPixels({ width, height, data }: GreyPicture): Uint8Array {
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y += 1) {
    let row = 0;
    for (let x = 0; x < width; x += 1) {
      row += data[y * width + x] as number;
      sums[(y + 1) * (width + 1) + x + 1] = (sums[y * (width + 1) + x + 1] as number) + row;
    }
  }
  const reach = Math.max(4, Math.round(AROUND * Math.max(width, height)));
  const dark = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const [top, bottom] = [Math.max(0, y - reach), Math.min(height, y + reach + 1)];
    for (let x = 0; x < width; x += 1) {
      const [left, right] = [Math.max(0, x - reach), Math.min(width, x + reach + 1)];
      const sum =
        (sums[bottom * (width + 1) + right] as number) -
        (sums[top * (width + 1) + right] as number) -
        (sums[bottom * (width + 1) + left] as number) +
        (sums[top * (width + 1) + left] as number);
      const mean = sum / ((bottom - top) * (right - left));
      if ((data[y * width + x] as number) < DARKER * mean) dark[y * width + x] = 1;
    }
  }
  return dark;
}

/** Which spot each dark pixel belongs to, by the first of its pixels; those that meet by a side are one. */
function labelled(dark: Uint8Array, width: number, height: number): Int32Array {
  const parent = new Int32Array(width * height).fill(-1);
  const root = (at: number): number => {
    let top = at;
    while (parent[top] !== top) top = parent[top] as number;
    while (parent[at] !== top) [parent[at], at] = [top, parent[at] as number];
    return top;
  };
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = y * width + x;
      if (!dark[at]) continue;
      const left = x > 0 && dark[at - 1] ? root(at - 1) : -1;
      const above = y > 0 && dark[at - width] ? root(at - width) : -1;
      if (left < 0 && above < 0) parent[at] = at;
      else if (left < 0 || above < 0) parent[at] = Math.max(left, above);
      else {
        const [first, second] = [Math.min(left, above), Math.max(left, above)];
        parent[second] = first;
        parent[at] = first;
      }
    }
  for (let at = 0; at < parent.length; at += 1) if ((parent[at] as number) >= 0) parent[at] = root(at);
  return parent;
}

interface Reach {
  left: number;
  right: number;
  top: number;
  bottom: number;
  size: number;
}

function spotsOf(spot: Int32Array, width: number, height: number): readonly DarkSpot[] {
  const found = new Map<number, Reach>();
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const name = spot[y * width + x] as number;
      if (name < 0) continue;
      const reach = found.get(name);
      if (!reach) found.set(name, { left: x, right: x, top: y, bottom: y, size: 1 });
      else {
        reach.left = Math.min(reach.left, x);
        reach.right = Math.max(reach.right, x);
        reach.bottom = y;
        reach.size += 1;
      }
    }
  return [...found].flatMap(([name, reach]) => {
    const [w, h] = [reach.right - reach.left + 1, reach.bottom - reach.top + 1];
    // A spot of a few pixels, or a line, has no rim worth reading.
    if (Math.min(w, h) < 4) return [];
    return [{ rim: rimOf(spot, width, name, reach), size: reach.size, width: w, height: h }];
  });
}

/** The outer corners of the outermost pixels of each row: all that a convex outline needs. */
function rimOf(spot: Int32Array, width: number, name: number, { left, right, top, bottom }: Reach): readonly Point[] {
  const rim: Point[] = [];
  for (let y = top; y <= bottom; y += 1) {
    let [from, to] = [left, right];
    while (from <= right && spot[y * width + from] !== name) from += 1;
    while (to >= from && spot[y * width + to] !== name) to -= 1;
    if (from > right) continue;
    rim.push(point(from, y), point(from, y + 1), point(to + 1, y), point(to + 1, y + 1));
  }
  return rim;
}
