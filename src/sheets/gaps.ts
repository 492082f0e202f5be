import type { Box } from '../plane';

/**
 * What lies between windows and is shown by none of them, as boxes that don't meet: from the end of one to the start of
 * the next, at each height. What lies beyond the first and the last is left out.
 */
export function gapsBetween(windows: readonly Box[]): readonly Box[] {
  const heights = [...new Set(windows.flatMap(({ top, bottom }) => [top, bottom]))].sort((a, b) => a - b);
  return heights.slice(1).flatMap((bottom, i) => {
    const top = heights[i] as number;
    const here = windows.filter((window) => window.top <= top && window.bottom >= bottom);
    const gaps: Box[] = [];
    let end = Number.POSITIVE_INFINITY;
    for (const { left, right } of here.toSorted((a, b) => a.left - b.left)) {
      if (left > end) gaps.push({ left: end, top, right: left, bottom });
      end = end === Number.POSITIVE_INFINITY ? right : Math.max(end, right);
    }
    return gaps;
  });
}
