import type { Point } from '../../plane';

/** A picture without colours: row by row, 0 for black to 255 for white. Its pixel (0, 0) covers the unit square there. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/**
 * A picture in grey, from its colours.
 *
 * @param colours red, green, blue and one more byte a pixel
 * @source *Recommendation ITU-R BT.601*, 2011: how bright each colour is to the eye, in 256ths, from memory
 */
export function greyPicture(width: number, height: number, colours: Uint8Array | Uint8ClampedArray): GreyPicture {
  const data = new Uint8Array(width * height);
  for (let i = 0, from = 0; i < data.length; i += 1, from += 4)
    data[i] = (77 * (colours[from] ?? 0) + 150 * (colours[from + 1] ?? 0) + 29 * (colours[from + 2] ?? 0)) >> 8;
  return { width, height, data };
}

/** The picture with half as many pixels each way, each the mean of four. */
export function halved({ width, height, data }: GreyPicture): GreyPicture {
  const [w, h] = [width >> 1, height >> 1];
  const half = new Uint8Array(w * h);
  for (let y = 0; y < h; y += 1) {
    let from = 2 * y * width;
    for (let x = 0; x < w; x += 1, from += 2) {
      const four =
        (data[from] as number) +
        (data[from + 1] as number) +
        (data[from + width] as number) +
        (data[from + width + 1] as number);
      half[y * w + x] = (four + 2) >> 2;
    }
  }
  return { width: w, height: h, data: half };
}

/** How bright a picture is at a place between the middles of four pixels; beyond its rim as bright as there. */
export function brightness({ width, height, data }: GreyPicture, { x, y }: Point): number {
  const [left, top] = [clamp(x - 0.5, width - 1), clamp(y - 0.5, height - 1)];
  const [column, row] = [Math.min(Math.floor(left), width - 2), Math.min(Math.floor(top), height - 2)];
  const [across, down] = [left - column, top - row];
  const at = row * width + column;
  const upper = (data[at] as number) * (1 - across) + (data[at + 1] as number) * across;
  const lower = (data[at + width] as number) * (1 - across) + (data[at + width + 1] as number) * across;
  return upper * (1 - down) + lower * down;
}

const clamp = (value: number, most: number): number => Math.max(0, Math.min(most, value));
