import { markCover, type Place } from './pixels';
import { PIXELS_PER_MM, type Picture } from './render';

/** A half-diamond as it was found in the pixels of a page. */
export interface FoundMark {
  readonly towards: 'left' | 'right' | 'up' | 'down';
  /** The middle of its base, millimetres on the page. */
  readonly base: Place;
  readonly baseLength: number;
  readonly depth: number;
}

/** Figures in the marks' ink are smaller than this, half-diamonds larger: square millimetres. */
const LEAST_AREA = 8;

/** All half-diamonds of a page: connected patches of the marks' ink that are large enough, and which way they point. */
export function findMarks(picture: Picture, inked: readonly number[]): readonly FoundMark[] {
  const { width, height } = picture;
  const seen = new Uint8Array(width * height);
  const marks: FoundMark[] = [];
  for (const start of inked) {
    if (seen[start] || markCover(picture, start) < 0.5) continue;
    const patch: number[] = [];
    const queue = [start];
    seen[start] = 1;
    for (let pixel = queue.pop(); pixel !== undefined; pixel = queue.pop()) {
      patch.push(pixel);
      for (const next of [pixel - 1, pixel + 1, pixel - width, pixel + width]) {
        if (next < 0 || next >= width * height || seen[next] || markCover(picture, next) < 0.05) continue;
        seen[next] = 1;
        queue.push(next);
      }
    }
    if (patch.length > LEAST_AREA * PIXELS_PER_MM ** 2) marks.push(markOf(picture, patch));
  }
  return marks;
}

function markOf(picture: Picture, patch: readonly number[]): FoundMark {
  const columns = profile(picture, patch, (pixel) => pixel % picture.width);
  const rows = profile(picture, patch, (pixel) => Math.floor(pixel / picture.width));
  // The base is where a half-diamond is widest and then ends; the other way it is as wide on the left as on the right.
  const across = skew(columns) > skew(rows);
  const { at, after } = baseEdge(across ? columns : rows);
  const middle = centre(across ? rows : columns) / PIXELS_PER_MM;
  const edge = at / PIXELS_PER_MM;
  const along = across ? rows : columns;
  const deep = across ? columns : rows;
  return {
    towards: across ? (after ? 'left' : 'right') : after ? 'up' : 'down',
    base: across ? { x: edge, y: middle } : { x: middle, y: edge },
    baseLength: along.sums.length / PIXELS_PER_MM,
    depth: deep.sums.length / PIXELS_PER_MM,
  };
}

/** Covered pixels by row or column, from the first to the last. */
interface Profile {
  readonly first: number;
  readonly sums: readonly number[];
}

function profile(picture: Picture, patch: readonly number[], lineOf: (pixel: number) => number): Profile {
  const lines = patch.map(lineOf);
  const first = lines.reduce((a, b) => Math.min(a, b));
  const sums = new Array<number>(lines.reduce((a, b) => Math.max(a, b)) - first + 1).fill(0);
  for (const [i, pixel] of patch.entries()) {
    const line = (lines[i] as number) - first;
    sums[line] = (sums[line] as number) + markCover(picture, pixel);
  }
  return { first, sums };
}

function centre({ first, sums }: Profile): number {
  const total = sums.reduce((a, b) => a + b, 0);
  return sums.reduce((sum, cover, i) => sum + cover * (first + i + 0.5), 0) / total;
}

/** How far the weight lies from the middle of the box: 0 for an even patch, a sixth of its length for a triangle. */
const skew = (p: Profile): number => Math.abs(centre(p) - (p.first + p.sums.length / 2)) / p.sums.length;

/**
 * Where the base lies, in pixels: beyond the fullest line, by as much as the next line is covered.
 * `after` says that the base is the right or lower end.
 */
function baseEdge({ first, sums }: Profile): { readonly at: number; readonly after: boolean } {
  const full = Math.max(...sums);
  const peak = sums.indexOf(full);
  const after = peak > sums.length / 2;
  const next = sums[after ? peak + 1 : peak - 1] ?? 0;
  return after ? { at: first + peak + 1 + next / full, after } : { at: first + peak - next / full, after };
}
