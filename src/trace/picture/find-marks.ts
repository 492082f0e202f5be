import { type Homography, homographyPoint, homographyThrough, mapTuple, type Point, point } from '../../plane';
import { darkSpots } from './dark-spots';
import { type FourCorners, fourCorners } from './four-corners';
import { brightness, type GreyPicture, halved } from './grey';
import { CELLS, markOfCells } from './mark-sheet';
import { sharpened } from './sharpen';

/** A printed mark that was found on a picture. */
export interface FoundMark {
  readonly number: number;
  /** In pixels of the picture, clockwise from the mark's own upper left corner. */
  readonly corners: FourCorners;
}

/** Marks are looked for on a picture of so many pixels along its longer side, and on the next larger one. @source tolerance */
const LOOKED_AT = 2000;
/** A mark has so many pixels a side there, from three a cell. @source tolerance */
const LEAST = 18;
/** And no more than this share of the longer side. @source tolerance */
const MOST = 0.5;
/** Black and white of a mark differ by so much, of 255. @source tolerance */
const CONTRAST = 24;
/** So many of the frame's cells, and of the places just outside it, may be misread: a fold, a shadow's edge, a finger. @source tolerance */
const MISREAD = 3;

/**
 * The printed marks on a picture: dark spots with four corners, in a black frame on white, whose cells say a number.
 *
 * A number that is found twice belongs to neither: one sheet was printed and laid twice.
 *
 * @param picture upright, of any size; about 0.1 s for 12 megapixels
 */
export function findMarks(picture: GreyPicture): readonly FoundMark[] {
  const levels = [picture];
  while (Math.max(levels.at(-1)?.width ?? 0, levels.at(-1)?.height ?? 0) > LOOKED_AT)
    levels.push(halved(levels.at(-1) as GreyPicture));
  const found = new Map<number, FoundMark>();
  const twice = new Set<number>();
  // What is small on the smallest is read on the next larger one.
  for (const depth of [levels.length - 1, levels.length - 2].filter((level) => level >= 0)) {
    const level = levels[depth] as GreyPicture;
    for (const mark of marksAt(level)) {
      const scale = 2 ** depth;
      const corners = mapTuple(mark.corners, ({ x, y }) => point(x * scale, y * scale));
      const sharp = sharpened(picture, corners) ?? corners;
      const before = found.get(mark.number);
      if (!before) found.set(mark.number, { number: mark.number, corners: sharp });
      else if (Math.hypot(before.corners[0].x - sharp[0].x, before.corners[0].y - sharp[0].y) > 4 * scale)
        twice.add(mark.number);
    }
  }
  return [...found.values()].filter(({ number }) => !twice.has(number)).sort((a, b) => a.number - b.number);
}

function marksAt(level: GreyPicture): readonly FoundMark[] {
  const most = MOST * Math.max(level.width, level.height);
  return darkSpots(level, LEAST, most).flatMap(({ rim }) => {
    const corners = fourCorners(rim);
    const sharp = corners && sharpened(level, corners);
    const read = sharp && markAt(level, sharp);
    return read ? [read] : [];
  });
}

/** The corners of the square that a mark's cells are counted in. */
const SQUARE = [point(0, 0), point(CELLS, 0), point(CELLS, CELLS), point(0, CELLS)] as const;

/** The mark between four corners; undefined where what lies there is none. */
function markAt(level: GreyPicture, corners: FourCorners): FoundMark | undefined {
  const seen = homographyThrough(mapTuple(SQUARE, (from, i) => ({ from, to: corners[i] as Point })));
  if (!seen) return undefined;
  const frame: number[] = [];
  const outside: number[] = [];
  for (let i = 0; i < CELLS; i += 1)
    for (const [x, y] of [
      [i, 0],
      [i, CELLS - 1],
      [0, i],
      [CELLS - 1, i],
    ] as const) {
      frame.push(cellAt(level, seen, x, y));
      outside.push(
        cellAt(level, seen, x === 0 ? -1 : x === CELLS - 1 ? CELLS : x, y === 0 ? -1 : y === CELLS - 1 ? CELLS : y),
      );
    }
  const [black, white] = [middling(frame), middling(outside)];
  if (white - black < CONTRAST) return undefined;
  const half = (black + white) / 2;
  if (frame.filter((one) => one >= half).length > MISREAD || outside.filter((one) => one < half).length > MISREAD)
    return undefined;
  const cells: boolean[] = [];
  for (let y = 1; y < CELLS - 1; y += 1)
    for (let x = 1; x < CELLS - 1; x += 1) cells.push(cellAt(level, seen, x, y) >= half);
  const read = markOfCells(cells);
  if (!read) return undefined;
  // Turned clockwise so often the reading stands upright: the mark's own upper left lies so many corners back.
  const own = mapTuple(corners, (_, i) => corners[(i + 4 - read.turns) % 4] as Point);
  return { number: read.number, corners: own };
}

const middling = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** A cell's brightness, from five places about its middle. */
function cellAt(level: GreyPicture, seen: Homography, column: number, row: number): number {
  const places = [
    [0.5, 0.5],
    [0.35, 0.35],
    [0.65, 0.35],
    [0.35, 0.65],
    [0.65, 0.65],
  ] as const;
  let sum = 0;
  for (const [x, y] of places) {
    const at = homographyPoint(seen, point(column + x, row + y));
    sum += at ? brightness(level, at) : 0;
  }
  return sum / places.length;
}
