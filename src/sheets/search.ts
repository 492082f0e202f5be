import { type Layout, laidOut } from './layout';
import type { PieceInk } from './piece-ink';
import type { PaperWay } from './settings';
import { fewestStarts, type Start, type TurnedMain, turnedMain } from './starts';

/** How hard the fewest sheets are looked for. */
export type Search = 'quick' | 'thorough';

/** Degrees by which a thorough search also turns the main piece: enough for its slanting edges to fit the sheets. */
const TILTS = [5, -5] as const;
/** Starts whose lines are asked: laying smaller pieces around the main one costs more than asking it alone. */
const ASKED = { alone: { quick: 3, thorough: 16 }, others: { quick: 1, thorough: 6 } } as const;

/**
 * The layouts with the fewest sheets that a search finds, those with the fewest tips first.
 *
 * Thousands of shifts are counted on a raster; the lines themselves decide among the best of them. The plain grid, its
 * corner at the corner of the main piece's box, is among those asked, upright and across, so that a thorough search never
 * needs more sheets than it.
 *
 * @param pieces the first is the main one
 * @param ways how the paper may be laid
 */
export function fewestSheets(
  pieces: readonly PieceInk[],
  ways: readonly PaperWay[],
  search: Search,
): readonly Layout[] {
  const [main] = pieces;
  if (!main) throw new RangeError('there are no pieces');
  // Where the paper's way is given, turning the piece does what turning the paper would.
  const turns = ways.length > 1 ? [0] : [0, main.quarter];
  const upright = ways.flatMap((way) => turns.map((turn) => turnedMain(main, way, turn)));
  const found = layoutsOf(upright, pieces, search, Number.POSITIVE_INFINITY);
  const fewest = found[0]?.cells.length ?? 0;
  if (search === 'quick' || fewest <= 1 || ways.some((way) => way.roll)) return found;
  const tilted = TILTS.flatMap((tilt) => upright.map(({ way, turn }) => turnedMain(main, way, turn + tilt)));
  const better = layoutsOf(tilted, pieces, search, fewest);
  return better.length > 0 ? better : found;
}

/** The layouts with the fewest sheets of all starts, and fewer than a limit; none where there is none. */
function layoutsOf(
  mains: readonly TurnedMain[],
  pieces: readonly PieceInk[],
  search: Search,
  limit: number,
): readonly Layout[] {
  const asked = ASKED[pieces.length > 1 ? 'others' : 'alone'][search];
  const starts = mains.flatMap((main) => {
    const { plain, best } = fewestStarts(main);
    return [{ main, start: plain, plain: true }, ...best.map((start) => ({ main, start, plain: false }))];
  });
  const counted = starts
    .filter((one) => !one.plain && one.start.count < limit)
    .sort((a, b) => a.start.count - b.start.count || away(a.start) - away(b.start) || b.start.firm - a.start.firm)
    .slice(0, asked);
  // One start alone is asked where laying the smaller pieces is dear; the plain grids then wait for the thorough search.
  const plains =
    limit < Number.POSITIVE_INFINITY || (asked === 1 && counted.length > 0) ? [] : starts.filter(({ plain }) => plain);
  // What was laid sets a limit to what is laid next.
  let most = limit - 1;
  const laid = ({ main, start }: (typeof starts)[number]): readonly Layout[] => {
    const layout = laidOut(start, main, pieces, most);
    if (layout) most = Math.min(most, worth(layout));
    return layout ? [layout] : [];
  };
  const shifted = counted.flatMap(laid);
  const plain = plains.flatMap(laid);
  const plainest = Math.min(...plain.map(({ cells }) => cells.length));
  const layouts = [...plain, ...shifted].filter(({ cells }) => cells.length <= plainest);
  const fewest = Math.min(...layouts.map(worth));
  return layouts
    .filter((layout) => worth(layout) === fewest)
    .sort(
      (a, b) =>
        a.slim - b.slim ||
        a.tips.length - b.tips.length ||
        turnOf(a) - turnOf(b) ||
        lengthOf(a) - lengthOf(b) ||
        a.grid.rows - b.grid.rows,
    );
}

/** A sheet with next to nothing on it is not worth saving another one. */
const worth = ({ cells, slim }: Layout): number => cells.length + slim;

const away = ({ turn }: Start): number => tilt(turn);
/** A tilt counts most, then a quarter turn; on a roll only what is cut off counts. */
function turnOf({ places, grid }: Layout): number {
  const turn = places[0]?.turn ?? 0;
  return grid.way.roll ? 0 : tilt(turn) + Math.abs(turn) / 1000;
}

/** How far a turn is from the nearest quarter. */
const tilt = (turn: number): number => Math.abs(turn - 90 * Math.round(turn / 90));

/** What is cut off a roll; on sheets nothing. */
const lengthOf = ({ grid, box }: Layout): number =>
  !grid.way.roll ? 0 : grid.way.paper.height >= grid.way.paper.width ? box.bottom - grid.top : box.right - grid.left;
