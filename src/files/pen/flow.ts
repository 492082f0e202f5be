import type { Mm } from '../../length';
import type { Box } from '../../plane';
import { type Strip, stripsHeight } from './strip';

/** A strip and where it lies on its page. */
export interface LaidStrip {
  readonly strip: Strip;
  readonly left: Mm;
  readonly top: Mm;
}

/** What found room, how far down it reaches, and what found none. */
export interface Flow {
  readonly laid: readonly LaidStrip[];
  readonly bottom: Mm;
  readonly left: readonly Strip[];
}

/** The most of a column that is left white rather than that a group is parted; this much in any case, however short it is. */
const WHITE = { share: 0.4, least: 45 } as const;
/** Rounding, where a strip just fits. */
const FITS: Mm = 1e-6;

/**
 * Fills columns with strips, one column after the other; strips that stay with the next are never parted from it.
 *
 * @param columns boxes on one page
 * @param least how far down a column has to reach, or the page before its last one ends, before white is left there rather
 *   than a group parted
 * @param whole whether the columns begin a page: what is too high for what is left of one goes overleaf
 */
export function flowStrips(strips: readonly Strip[], columns: readonly Box[], least: Mm, whole = true): Flow {
  const laid: LaidStrip[] = [];
  let [at, column] = [0, 0];
  let y = columns[0]?.top ?? 0;
  let bottom = y;
  while (at < strips.length) {
    const box = columns[column];
    if (!box) break;
    const chunk = heldTogether(strips, at);
    const fresh = y === box.top;
    const fits = (some: readonly Strip[]) =>
      y + (fresh ? 0 : (some[0]?.above ?? 0)) + stripsHeight(some) <= box.bottom + FITS;
    const group = strips.slice(at, at + (chunk[0]?.groups ?? 0));
    const last = column === columns.length - 1;
    const white = box.bottom - y <= Math.max(WHITE.share * (box.bottom - box.top), WHITE.least);
    const waits = !fresh && white && (last ? bottom : y) >= least && group.length > 0 && !fits(group);
    // What is higher than a whole page's column is set all the same, where nothing else was.
    const must = whole && fresh && last && laid.length === 0;
    if (waits || (!fits(chunk) && !must)) {
      column += 1;
      y = columns[column]?.top ?? y;
      continue;
    }
    for (const [i, strip] of chunk.entries()) {
      if (!fresh || i > 0) y += strip.above;
      laid.push({ strip, left: box.left, top: y });
      y += strip.height;
    }
    at += chunk.length;
    bottom = Math.max(bottom, y);
  }
  return { laid, bottom, left: strips.slice(at) };
}

/** A strip with all that stay together with it. */
function heldTogether(strips: readonly Strip[], at: number): readonly Strip[] {
  let end = at;
  while (strips[end]?.stays && end + 1 < strips.length) end += 1;
  return strips.slice(at, end + 1);
}

/**
 * The same in columns that are equally long, as far as strips let themselves be shared; all the room where they need it.
 *
 * @param columns the columns, where they end at a height
 * @param step by which lower ends are tried
 */
export function flowBalanced(
  strips: readonly Strip[],
  columns: (lower: Mm) => readonly Box[],
  {
    top,
    bottom,
    least,
    step,
    whole = true,
  }: {
    readonly top: Mm;
    readonly bottom: Mm;
    readonly least: Mm;
    readonly step: Mm;
    readonly whole?: boolean;
  },
): Flow {
  const count = columns(bottom).length;
  for (let lower = top + stripsHeight(strips) / count; lower < bottom; lower += step) {
    const flow = flowStrips(strips, columns(lower), top, whole);
    if (flow.left.length === 0 && flow.bottom <= lower + FITS) return flow;
  }
  const held = flowStrips(strips, columns(bottom), least, whole);
  // A group is parted rather than that a page is begun for what it leaves over.
  const parted = held.left.length > 0 ? flowStrips(strips, columns(bottom), Number.POSITIVE_INFINITY, whole) : held;
  return parted.left.length > 0 ? held : parted;
}
