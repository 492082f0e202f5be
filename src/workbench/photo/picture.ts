import { type Homography, homographyPoint, type Point } from '../../plane';
import { bentTable, type Lens } from '../../trace';

/** The pixels of a picture at one size: red, green, blue, opaque, row by row. */
export interface Level {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** A photograph in the pixels in which marks on it are kept, and its own pixels, each level half as large as the one before. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly levels: readonly Level[];
}

/** The smallest level still fills a telephone's screen. */
const SMALLEST = 400;

/** A picture with all its levels. */
export function pictureOf(width: number, height: number, first: Level): Picture {
  const levels = [first];
  for (let last = first; Math.max(last.width, last.height) > 2 * SMALLEST; ) {
    last = halved(last);
    levels.push(last);
  }
  return { width, height, levels };
}

/** Each pixel the mean of four, so that thin lines stay to be seen. */
function halved({ width, height, data }: Level): Level {
  const [w, h] = [width >> 1, height >> 1];
  const half = new Uint8ClampedArray(4 * w * h);
  for (let y = 0; y < h; y += 1) {
    for (let x = 0; x < w; x += 1) {
      const from = 4 * (2 * y * width + 2 * x);
      const to = 4 * (y * w + x);
      for (let c = 0; c < 3; c += 1) {
        const one = (at: number) => data[at + c] as number;
        half[to + c] = (one(from) + one(from + 4) + one(from + 4 * width) + one(from + 4 * width + 4)) / 4;
      }
      half[to + 3] = 255;
    }
  }
  return { width: w, height: h, data: half };
}

/**
 * The picture as it is seen in a window, flattened or as it is: what lies beyond it stays clear.
 *
 * @param toPicture from a pixel of the window to the picture of a true lens
 * @param lens how that is bent, round the picture's middle
 */
export function seenPixels(
  picture: Picture,
  toPicture: Homography,
  lens: Lens,
  width: number,
  height: number,
): Uint8ClampedArray {
  const out = new Uint8ClampedArray(4 * width * height);
  const level = levelFor(picture, toPicture, { x: width / 2, y: height / 2 });
  const { data, width: w, height: h } = level;
  const [sx, sy] = [w / picture.width, h / picture.height];
  const [a, b, c, d, e, f, g, i, j] = toPicture;
  const bent = bentTable(lens);
  const [mx, my] = [picture.width / 2, picture.height / 2];
  const half = mx * mx + my * my;
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const [px, py] = [x + 0.5, y + 0.5];
      const depth = g * px + i * py + j;
      if (depth <= 0) continue;
      const [dx, dy] = [(a * px + b * py + c) / depth - mx, (d * px + e * py + f) / depth - my];
      const by = bent((dx * dx + dy * dy) / half);
      const u = Math.floor((mx + by * dx) * sx);
      const v = Math.floor((my + by * dy) * sy);
      if (!(u >= 0 && v >= 0 && u < w && v < h)) continue;
      const from = 4 * (v * w + u);
      const to = 4 * (y * width + x);
      out[to] = data[from] as number;
      out[to + 1] = data[from + 1] as number;
      out[to + 2] = data[from + 2] as number;
      out[to + 3] = 255;
    }
  }
  return out;
}

/** So much of a level early, a smaller one is taken: thin lines stay whole, and little is lost. */
const BLUR = 0.6;

/** The level whose pixels are about as large as the window's. */
function levelFor({ levels }: Picture, toPicture: Homography, middle: Point): Level {
  const perPixel = pixelsAcross(toPicture, middle);
  const wanted = Math.floor(Math.log2(Math.max(1, perPixel)) + BLUR);
  return levels[Math.min(levels.length - 1, wanted)] as Level;
}

/** How many pixels of the picture one step to the right covers at a place. */
export function pixelsAcross(toPicture: Homography, at: Point): number {
  const [here, beside] = [at, { x: at.x + 1, y: at.y }].map((p) => homographyPoint(toPicture, p));
  return here && beside ? Math.hypot(beside.x - here.x, beside.y - here.y) : 1;
}
