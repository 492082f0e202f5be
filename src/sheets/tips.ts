import type { Mm } from '../length';
import { type Box, boxRound } from '../plane';
import { bareInk } from './bare';
import { type Cell, cellKey, type Grid, gridWindow, isSameCell } from './grid';
import { hasRoom, LEAST_MARKED, partJoins } from './joins';
import { DEEP, type LaidTip, neighbourSides, type Taken, tipPlaces } from './tip-places';

/** A tip takes no more than this share of a window: with more on it a sheet is worth its paper. */
const LARGEST = 0.4;
/** White round a tip's lines, on the paper. */
const RIM: Mm = 2;

/** What of an earlier print stays as it is while places are looked for. */
interface Staying {
  /** Already laid. */
  readonly tips: readonly LaidTip[];
  /** Whether a sheet is printed now: it may become a tip, and bear others. */
  readonly isPrinted: (cell: Cell) => boolean;
  /** What a tip in this place showed: its neighbours bear the marks of that. */
  readonly shown: (cell: Cell) => Box | undefined;
}

const NOTHING_STAYS: Staying = { tips: [], isPrinted: () => true, shown: () => undefined };

/**
 * The sheets that are left once every place of the grid with little on it is printed in an empty corner of another
 * sheet, and those tips: those with the least on them first, each only if all sheets still hang together by marks. Where
 * it is nothing but a stretch of a level line, the place is left out: a ruler bridges it.
 *
 * @param most the most sheets that are wanted: undefined where more are left
 * @param staying where the pattern was printed before
 */
export function withTips(
  grid: Grid,
  cells: readonly Cell[],
  taken: Taken,
  most: number,
  staying: Staying = NOTHING_STAYS,
): { readonly cells: readonly Cell[]; readonly tips: readonly LaidTip[] } | undefined {
  let sheets = cells;
  let { tips } = staying;
  const area = (box: Box | undefined) => (box ? (box.right - box.left) * (box.bottom - box.top) : 0);
  const window = grid.way.window.width * grid.way.window.height;
  const bare = bareInk(grid, taken.inks, taken.levelsFrom);
  const placeOf = tipPlaces(grid, [...cells, ...tips.map(({ cell }) => cell)], taken);
  const groups = groupCount(grid, cells, tips);
  const inOrder = cells
    .filter(staying.isPrinted)
    .map((cell) => ({
      cell,
      size: area(bare.box(cell, cells, tips, LARGEST * window)),
    }))
    .filter(({ size }) => size < LARGEST * window)
    .toSorted((a, b) => a.size - b.size);
  for (const [i, { cell }] of inOrder.entries()) {
    // If all that are still to come became tips, there would be too many sheets.
    if (sheets.length - (inOrder.length - i) > most) return undefined;
    if (tips.some(({ host }) => isSameCell(host, cell))) continue;
    const others = sheets.filter((other) => other !== cell);
    const box = bare.box(cell, others, tips);
    if (!box) continue;
    if (bare.isLevelsOnly(cell, others, tips) && groupCount(grid, others, tips) <= groups) {
      sheets = others;
      continue;
    }
    const before = staying.shown(cell);
    const wanted = before ? boxRound([box, before]) : box;
    const shown = tipWindow(grid, cell, wanted, [...others, ...tips.map((tip) => tip.cell)]);
    // A sheet that may become a tip itself is no place for others while there is one that won't.
    const hosts = others.filter(staying.isPrinted);
    const firm = hosts.filter((other) => !inOrder.some((one) => one.cell === other));
    const unsure = hosts.filter((other) => !firm.includes(other));
    const placed = shown && (placeOf(shown, firm, tips) ?? placeOf(shown, unsure, tips));
    if (!placed) continue;
    const more = [...tips, { cell, window: shown, ...placed }];
    if (groupCount(grid, others, more) > groups) continue;
    sheets = others;
    tips = more;
  }
  return sheets.length > most ? undefined : { cells: sheets, tips };
}

/**
 * What a tip shows: the whole overlap on the sides where its lines run on to a neighbour, on the others no more than a
 * rim round its lines, and everywhere enough for the marks.
 *
 * @param printed the places of the grid that it may be joined to
 */
function tipWindow(grid: Grid, cell: Cell, ink: Box, printed: readonly Cell[]): Box | undefined {
  const { way } = grid;
  const { scale, pitch } = way;
  const window = gridWindow(grid, cell);
  const overlap = { x: way.window.width - pitch.x, y: way.window.height - pitch.y };
  const rim = { x: RIM / scale.x, y: RIM / scale.y };
  const has = neighbourSides(grid, cell, window, printed, (2 * LEAST_MARKED) / scale.x);
  const runsOn = {
    left: has.left && ink.left < window.left + overlap.x + rim.x,
    right: has.right && ink.right > window.right - overlap.x - rim.x,
    top: has.top && ink.top < window.top + overlap.y + rim.y,
    bottom: has.bottom && ink.bottom > window.bottom - overlap.y - rim.y,
  };
  if (!runsOn.left && !runsOn.right && !runsOn.top && !runsOn.bottom) return undefined;
  const across = stretched(
    { from: window.left, to: window.right, start: window.left, end: window.left + pitch.x },
    { from: ink.left - rim.x, to: ink.right + rim.x },
    { from: runsOn.left, to: runsOn.right },
    { deep: DEEP / scale.x, long: runsOn.top || runsOn.bottom ? (LEAST_MARKED + 1) / scale.x : 0 },
  );
  const down = stretched(
    { from: window.top, to: window.bottom, start: window.top, end: window.top + pitch.y },
    { from: ink.top - rim.y, to: ink.bottom + rim.y },
    { from: runsOn.top, to: runsOn.bottom },
    { deep: DEEP / scale.y, long: runsOn.left || runsOn.right ? (LEAST_MARKED + 1) / scale.y : 0 },
  );
  return { left: across.from, right: across.to, top: down.from, bottom: down.to };
}

interface Span {
  readonly from: Mm;
  readonly to: Mm;
}

/** A tip's window along one way: up to the window's end where lines run on, and long enough for marks. */
function stretched(
  window: Span & { readonly start: Mm; readonly end: Mm },
  ink: Span,
  runsOn: { readonly from: boolean; readonly to: boolean },
  least: { readonly deep: Mm; readonly long: Mm },
): Span {
  let from = runsOn.from ? window.from : Math.max(window.from, ink.from);
  let to = runsOn.to ? window.to : Math.min(window.to, ink.to);
  if (runsOn.from && runsOn.to) return { from, to };
  if (runsOn.from)
    return { from, to: Math.min(window.to, Math.max(to, window.from + Math.max(least.deep, least.long))) };
  // What lies below the next sheet is no part of a join's length and hides marks.
  if (runsOn.to)
    return { from: Math.max(window.from, Math.min(from, window.end - Math.max(least.deep, least.long))), to };
  const lacks = Math.max(least.deep, least.long) - (to - from);
  if (lacks > 0) {
    from -= lacks / 2;
    to += lacks / 2;
    const back = Math.max(0, window.start - from) - Math.max(0, to - Math.max(window.end, ink.to));
    from += back;
    to += back;
  }
  return { from: Math.max(window.from, from), to: Math.min(window.to, to) };
}

/** In how many groups printed parts hang together by joins that bear marks. */
export function groupCount(grid: Grid, cells: readonly Cell[], tips: readonly LaidTip[]): number {
  const parts = [...cells.map((cell) => ({ cell, window: gridWindow(grid, cell) })), ...tips];
  const places = new Map(parts.map(({ cell }, i) => [cellKey(cell), i]));
  const groups = parts.map((_, i) => i);
  const groupOf = (cell: Cell) => groups[places.get(cellKey(cell)) as number] as number;
  for (const join of partJoins(grid, parts)) {
    const [to, from] = [groupOf(join.first), groupOf(join.second)];
    if (to === from || !hasRoom(join, grid)) continue;
    for (const [i, own] of groups.entries()) if (own === from) groups[i] = to;
  }
  return new Set(groups).size;
}
