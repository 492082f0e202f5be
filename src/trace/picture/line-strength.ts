import type { Box } from '../../plane';
import { brightness, type GreyPicture } from './grey';

/** How clearly a line or the edge of a paper runs through each pixel of a part of a picture: 0 to 1. */
export interface LineStrength {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** A line is looked for in these widths, in shares of the wanted one. @source tolerance */
const WIDTHS = [0.6, 1.2] as const;

/**
 * How strongly lines and edges show on a part of a picture, each held against what shows elsewhere on it.
 *
 * A line is darker than what lies to both sides of it, an edge has another brightness on either side; of the four
 * directions the clearest counts.
 *
 * @param within in pixels of the picture
 * @param wide how wide a pencil line is there, pixels
 */
export function lineStrength(picture: GreyPicture, within: Box, wide: number): LineStrength {
  const [left, top] = [Math.max(0, Math.floor(within.left)), Math.max(0, Math.floor(within.top))];
  const width = Math.max(1, Math.min(picture.width, Math.ceil(within.right)) - left);
  const height = Math.max(1, Math.min(picture.height, Math.ceil(within.bottom)) - top);
  const soft = softened(picture, left, top, width, height);
  const data = new Float32Array(width * height);
  for (const share of WIDTHS) addLines(soft, data, width, height, Math.max(1, Math.round(share * wide)));
  const clear = Math.max(CLEAR * quantile(data, USUAL), quantile(data, CLEAREST), 1);
  for (let i = 0; i < data.length; i += 1) data[i] = Math.min(1, (data[i] as number) / clear);
  return { left, top, width, height, data };
}

/** What shows on most of a picture is noise: this share of it. @source tolerance */
const USUAL = 0.7;
/** So many times as strong is clear. @source tolerance */
const CLEAR = 6;
/** Where more is to be seen, a line of a pixel or two on a part of some hundreds covers this share of it. @source tolerance */
const CLEAREST = 0.995;

/** The part, each pixel the mean of nine: noise counts less than a line. */
function softened(picture: GreyPicture, left: number, top: number, width: number, height: number): Float32Array {
  const soft = new Float32Array(width * height);
  const { width: w, height: h, data } = picture;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let dy = -1; dy <= 1; dy += 1) {
        const row = Math.max(0, Math.min(h - 1, top + y + dy)) * w;
        for (let dx = -1; dx <= 1; dx += 1) sum += data[row + Math.max(0, Math.min(w - 1, left + x + dx))] as number;
      }
      soft[y * width + x] = sum / 9;
    }
  return soft;
}

/** Along the rows, the columns and both diagonals. @source geometry */
const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
] as const;

/** Adds to each pixel what shows there at one width, where that is more. */
function addLines(soft: Float32Array, data: Float32Array, width: number, height: number, away: number): void {
  for (let y = away; y < height - away; y += 1)
    for (let x = away; x < width - away; x += 1) {
      const at = y * width + x;
      const here = soft[at] as number;
      let best = data[at] as number;
      for (const [dx, dy] of DIRECTIONS) {
        const off = away * (dy * width + dx);
        const [one, other] = [(soft[at - off] as number) - here, (soft[at + off] as number) - here];
        const line = Math.min(one, other);
        const edge = Math.abs(one - other) / 2;
        if (line > best) best = line;
        if (EDGE * edge > best) best = EDGE * edge;
      }
      data[at] = best;
    }
}

/** Beside a line there is an edge on either side of it: the line itself counts more. @source tolerance */
const EDGE = 0.6;

function quantile(data: Float32Array, share: number): number {
  // Every so many pixels say enough of all.
  const step = Math.max(1, Math.floor(data.length / 60_000));
  const some = Float32Array.from({ length: Math.floor(data.length / step) }, (_, i) => data[i * step] as number).sort();
  return some[Math.floor(share * (some.length - 1))] ?? 0;
}

/** How bright the picture is across a place, from one side to the other, every half pixel. */
export function profileAcross(
  picture: GreyPicture,
  at: { readonly x: number; readonly y: number },
  across: { readonly x: number; readonly y: number },
  reach: number,
): readonly number[] {
  const steps = Math.ceil(2 * reach);
  return Array.from({ length: 2 * steps + 1 }, (_, i) => {
    const off = (i - steps) / 2;
    return brightness(picture, { x: at.x + off * across.x, y: at.y + off * across.y });
  });
}
