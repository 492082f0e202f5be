import { darkness } from './pixels';
import { PIXELS_PER_MM, type Picture } from './render';

/** A square's sides from the middle of one line to the middle of the other, millimetres. */
export interface FoundSquare {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Only the squares have lines as long as this, … */
const LEAST_SIDE = 90;
/** … and as dark: pixels of full ink across the line; the pale rule under the title has a third of one. */
const LEAST_DARK = 0.7;

/**
 * The squares of a page, from the top down: pairs of long level lines and of long upright lines, each line's place the
 * middle of its darkness.
 */
export function findSquares(picture: Picture): readonly FoundSquare[] {
  const level = pairs(longLines(picture, false));
  const upright = pairs(longLines(picture, true));
  if (level.length !== upright.length) throw new Error(`${level.length} level and ${upright.length} upright pairs`);
  return level.map(({ start, at, apart }, i) => ({
    left: start / PIXELS_PER_MM,
    top: at / PIXELS_PER_MM,
    height: apart,
    width: upright[i]?.apart ?? Number.NaN,
  }));
}

/** A long straight line: where it starts along itself, and where it stands, in pixels. */
interface LongLine {
  readonly start: number;
  readonly at: number;
}

function longLines(picture: Picture, upright: boolean): readonly LongLine[] {
  const { width, height } = picture;
  const lines: { start: number; length: number; sum: number; weight: number; last: number }[] = [];
  const [outer, inner] = upright ? [width, height] : [height, width];
  for (let o = 0; o < outer; o += 1) {
    for (const { start, cover, length } of runs(picture, o, inner, upright)) {
      const line = lines.find((other) => o - other.last <= 1 && Math.abs(other.start - start) < 20);
      if (line) {
        line.sum += cover * (o + 0.5);
        line.weight += cover;
        line.last = o;
      } else lines.push({ start, length, sum: cover * (o + 0.5), weight: cover, last: o });
    }
  }
  return lines
    .filter(({ weight, length }) => weight / length > LEAST_DARK)
    .map(({ start, sum, weight }) => ({ start, at: sum / weight }));
}

/** An unbroken run of ink in one row or column. */
interface Run {
  readonly start: number;
  readonly cover: number;
  readonly length: number;
}

/** Unbroken runs of ink in one row or column that are as long as a square's side, and how dark they are. */
function* runs(picture: Picture, o: number, inner: number, upright: boolean): Generator<Run> {
  let start = -1;
  let cover = 0;
  for (let i = 0; i <= inner; i += 1) {
    const dark = i === inner ? 0 : darkness(picture, upright ? i * picture.width + o : o * picture.width + i);
    if (dark > 0.1) {
      if (start < 0) {
        start = i;
        cover = 0;
      }
      cover += dark;
    } else if (start >= 0) {
      if (i - start > LEAST_SIDE * PIXELS_PER_MM) yield { start, cover, length: i - start };
      start = -1;
    }
  }
}

/** Two lines that start level with each other, and how far apart they are, millimetres. */
interface Pair extends LongLine {
  readonly apart: number;
}

/** The lines that start level with each other, the nearest two first. */
function pairs(lines: readonly LongLine[]): readonly Pair[] {
  const found: Pair[] = [];
  const left = [...lines].sort((a, b) => a.at - b.at);
  for (let first = left.shift(); first; first = left.shift()) {
    const { start, at } = first;
    const i = left.findIndex(
      (other) => Math.abs(other.start - start) < 20 && other.at - at > LEAST_SIDE * PIXELS_PER_MM,
    );
    const [second] = i < 0 ? [] : left.splice(i, 1);
    if (second) found.push({ start, at, apart: (second.at - at) / PIXELS_PER_MM });
  }
  return found.sort((a, b) => a.apart - b.apart);
}
