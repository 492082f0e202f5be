import type { Mm } from '../length';
import type { Box } from '../plane';
import { bordered } from './grid';
import { type PieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { filledRaster, type Raster } from './raster';
import { rowAsker } from './row-asks';
import type { PaperWay } from './settings';

/** The main piece turned, and a grid laid over it: where a search starts from. */
export interface Start {
  readonly way: PaperWay;
  readonly turn: number;
  /** From the box of the main piece upwards to the grid's corner, and leftwards to where each row begins: less than a pitch. */
  readonly y: Mm;
  readonly shifts: readonly Mm[];
  /** Rows that don't stand below the one above. */
  readonly bricks: number;
  /** How many sheets the fields of the lattice ask for, a tip for a part of one; the lines themselves may ask for more or less. */
  readonly count: number;
  /** How many of the starts around it ask for no more: in the middle of many, rounding matters least. */
  readonly firm: number;
}

/** The main piece turned, its lines and the box that a grid must hold. */
export interface TurnedMain {
  readonly way: PaperWay;
  readonly turn: number;
  readonly stretches: Float64Array;
  readonly box: Box;
  /** The piece filled, worked out when it is first asked for. */
  readonly filled: () => Raster;
}

/** Squares of the raster to the shorter side of a window. */
const SQUARES = 64;
/** Shifts tried along the shorter pitch. */
const SHIFTS = 12;

export function turnedMain(main: PieceInk, way: PaperWay, turn: number): TurnedMain {
  const stretches = stretchesPlaced(main.stretches, turn);
  const box = bordered(stretchesBox(stretches), way);
  let raster: Raster | undefined;
  const filled = () => {
    raster ??= filledRaster(stretchesPlaced(main.outline, turn), box, squareSide(way));
    return raster;
  };
  return { way, turn, stretches, box, filled };
}

/** The raster's squares are a fine share of the window, so that a search costs the same on every paper and scale. */
export const squareSide = ({ window }: PaperWay): Mm => Math.min(window.width, window.height) / SQUARES;

/**
 * The shifts of the grid's rows that ask for the fewest sheets, the fewest first; the plain one, whose corner is the box's
 * corner, comes besides.
 *
 * For each shift down, every row is asked for every shift across; its rows then stand each where it asks for the fewest,
 * or all below each other where that is as good.
 */
export function fewestStarts({ way, turn, stretches, box }: TurnedMain): {
  readonly plain: Start;
  readonly best: readonly Start[];
} {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const fits = width <= way.window.width && height <= way.window.height;
  const plain: Start = { way, turn, y: 0, shifts: [], bricks: 0, count: fits ? 1 : Number.POSITIVE_INFINITY, firm: 0 };
  if (fits || way.roll) return { plain, best: [] };
  const step = Math.min(way.pitch.x, way.pitch.y) / SHIFTS;
  const count = (pitch: Mm) => Math.max(1, Math.round(pitch / step));
  const tried = { across: count(way.pitch.x), down: count(way.pitch.y) };
  const across = Array.from({ length: tried.across }, (_, i) => (i * way.pitch.x) / tried.across);
  const ask = rowAsker(stretches, box, way, tried, squareSide(way) / 2);
  const best = Array.from({ length: tried.down }, (_, above) => above).flatMap((above) => {
    const y = (above * way.pitch.y) / tried.down;
    const rows = Array.from({ length: Math.ceil((height + y) / way.pitch.y) }, (_, row) => ask(row, above));
    const all = Float64Array.from(across, (_, i) => rows.reduce((sum, row) => sum + (row[i] as number), 0));
    const one = firmest(all);
    // A row stays below the one above where it asks for no more there.
    const own: Pick[] = [];
    for (const row of rows) {
      const best = firmest(row);
      const above = own.at(-1);
      own.push(above && (row[above.at] as number) <= best.count + SAME ? { ...best, at: above.at } : best);
    }
    const start = (picked: readonly Pick[]): Start => ({
      way,
      turn,
      y,
      shifts: picked.map(({ at }) => across[at] as number),
      bricks: picked.filter(({ at }, row) => row > 0 && at !== picked[row - 1]?.at).length,
      count: picked.reduce((sum, { count }) => sum + count, 0),
      firm: Math.min(...picked.map(({ firm }) => firm)),
    });
    const straight = rows.map((row) => ({ ...one, count: row[one.at] as number }));
    return [start(straight), start(own)];
  });
  return { plain, best: best.sort((a, b) => a.count - b.count || a.bricks - b.bricks || b.firm - a.firm) };
}

/** One of the shifts across, what is asked there, and how many of those around it ask for no more. */
interface Pick {
  readonly at: number;
  readonly count: number;
  readonly firm: number;
}

/** Counts that differ by less are as good as each other: parts of sheets are only reckoned. */
const SAME = 0.05;

/** The middle of the longest run of shifts that ask for the fewest; the last and the first are neighbours. */
function firmest(counts: Float64Array): Pick {
  const { length } = counts;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < length; at += 1) least = Math.min(least, counts[at] as number);
  least += SAME;
  let [best, most] = [0, -1];
  for (let at = 0; at < length; at += 1) {
    if ((counts[at] as number) > least) continue;
    let firm = 0;
    while (
      firm < length / 2 &&
      (counts[(at + firm + 1) % length] as number) <= least &&
      (counts[(at - firm - 1 + length) % length] as number) <= least
    )
      firm += 1;
    if (firm > most) [best, most] = [at, firm];
  }
  return { at: best, count: counts[best] as number, firm: most };
}
