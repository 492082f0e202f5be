import { dot, type Point, scale } from '../../plane';

/**
 * How a lens bends what is straight, round the picture's middle. Points are in halves of the picture's diagonal from
 * there, so that its corners lie at 1: a barrel of −15 % has k1 + k2 of about 0.18, a cushion of 5 % about −0.05.
 */
export interface Lens {
  readonly k1: number;
  readonly k2: number;
}

/** A lens that draws what is straight as straight. */
export const TRUE_LENS: Lens = { k1: 0, k2: 0 };

/** Bent points are found to this, halves of a diagonal: a ten-thousandth of a pixel. @source tolerance */
const FOUND = 1e-8;
/** A step doubles the digits; more are needed only where the lens folds the picture over. @source tolerance */
const MOST_STEPS = 30;
/** No picture reaches farther than this, halves of its diagonal, however it was bent. @source tolerance */
const FARTHEST = 4;

/**
 * Where a point of the picture would lie if the lens were true: both coordinates times 1 + k1 r² + k2 r⁴, with r as it is
 * on the picture. This way round the polynomial stays monotonic from a barrel of −15 % to a cushion of 5 %, and needs no search.
 *
 * @source D. C. Brown, Close-range camera calibration, *Photogrammetric Engineering* 37 (1971), from memory: even powers of r
 */
export const straightened = (lens: Lens, p: Point): Point => scale(p, stretchOf(lens, dot(p, p)));

/** How many times farther from the middle a point would lie, by the square of how far it does. */
const stretchOf = ({ k1, k2 }: Lens, square: number): number => 1 + square * (k1 + square * k2);

/**
 * The way back, by Newton's steps along the ray.
 *
 * @returns undefined where the lens shows nothing there
 */
export function bent(lens: Lens, p: Point): Point | undefined {
  const wanted = Math.sqrt(dot(p, p));
  if (wanted === 0) return p;
  let r = Math.min(wanted, FARTHEST);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const square = r * r;
    const slope = 1 + square * (3 * lens.k1 + 5 * lens.k2 * square);
    const by = (r * stretchOf(lens, square) - wanted) / slope;
    r -= by;
    if (!(slope > 0 && r > 0 && r <= FARTHEST)) return undefined;
    if (Math.abs(by) < FOUND) return scale(p, r / wanted);
  }
  return undefined;
}

/** How a small step on the picture moves a point when it is straightened: a symmetric 2 × 2 matrix. */
export function straightenedBy(lens: Lens, p: Point) {
  const square = dot(p, p);
  const stretch = stretchOf(lens, square);
  const pull = 2 * (lens.k1 + 2 * lens.k2 * square);
  return { xx: stretch + pull * p.x * p.x, xy: pull * p.x * p.y, yy: stretch + pull * p.y * p.y };
}

/** How many steps the table of a bent picture has, and how far it goes, squares of half a diagonal. @source tolerance */
const BENT_STEPS = 1024;
const BENT_FAR = 4;

/**
 * For the pixels of a whole picture: by how much a point moves towards its middle, or away, by the square of how far off it
 * would lie if the lens were true; not a number beyond what the lens shows. From a table, to a hundredth of a pixel.
 */
export function bentTable(lens: Lens): (square: number) => number {
  const table = Float64Array.from({ length: BENT_STEPS + 2 }, (_, i) => {
    const r = Math.sqrt((BENT_FAR * i) / BENT_STEPS);
    return r === 0 ? 1 : (bent(lens, { x: r, y: 0 })?.x ?? Number.NaN) / r;
  });
  return (square) => {
    const place = (square / BENT_FAR) * BENT_STEPS;
    const step = Math.floor(place);
    if (!(step <= BENT_STEPS)) return Number.NaN;
    const [a, b] = [table[step] as number, table[step + 1] as number];
    return a + (b - a) * (place - step);
  };
}
