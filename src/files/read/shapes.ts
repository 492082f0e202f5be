import { type Attributes, userLength } from './place';

/** The ends of a line. */
export const ENDS = ['x1', 'y1', 'x2', 'y2'] as const;

/** What an element draws, as path data; undefined where it draws nothing that could be an edge. */
export function pathDataOf(element: string, own: Attributes): string | undefined {
  if (element === 'path') return own.d;
  if (element === 'line') {
    const [x1, y1, x2, y2] = ENDS.map((end) => userLength(own[end]) ?? 0);
    return `M${x1} ${y1}L${x2} ${y2}`;
  }
  if (element === 'polyline' || element === 'polygon')
    return own.points === undefined ? undefined : `M${own.points}${element === 'polygon' ? 'Z' : ''}`;
  if (element === 'rect') return rectangle(own);
  if (element === 'circle') return ellipse(own, own.r, own.r);
  if (element === 'ellipse') return ellipse(own, own.rx, own.ry);
  // Never a line by itself, but one that is meant to be drawn: what it refers to is told to be missing in plain words.
  return element === 'use' ? 'M0 0' : undefined;
}

/** A rectangle whose corners are not rounded. */
function rectangle({ x, y, width, height }: Attributes): string | undefined {
  const [left, top, wide, high] = [x, y, width, height].map((one) => userLength(one) ?? 0) as [
    number,
    number,
    number,
    number,
  ];
  return wide > 0 && high > 0 ? `M${left} ${top}h${wide}v${high}h${-wide}Z` : undefined;
}

function ellipse({ cx, cy }: Attributes, rx: string | undefined, ry: string | undefined): string | undefined {
  const [x, y, across, down] = [cx, cy, rx, ry].map((one) => userLength(one) ?? 0) as [number, number, number, number];
  const half = `a${across} ${down} 0 0 1`;
  return across > 0 && down > 0 ? `M${x - across} ${y}${half} ${2 * across} 0${half} ${-2 * across} 0Z` : undefined;
}
