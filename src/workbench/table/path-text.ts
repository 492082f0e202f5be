import type { Curve, Point } from '../../plane';

const n = (value: number): string => String(Math.round(value * 100) / 100);
const at = (p: Point): string => `${n(p.x)} ${n(p.y)}`;

/** A run of curves as the text of an SVG path; a curve that starts elsewhere than the last one ended starts anew. */
export function pathText(curves: readonly Curve[], closed = false): string {
  let text = '';
  let here: Point | undefined;
  for (const [a, b, c, d] of curves) {
    if (!here || Math.hypot(a.x - here.x, a.y - here.y) > 0.01) text += `M${at(a)}`;
    text += `C${at(b)} ${at(c)} ${at(d)}`;
    here = d;
  }
  return closed && text !== '' ? `${text}Z` : text;
}

/** Runs of curves as one closed SVG path: what lies between two runs is bridged by a straight line. */
export function bridgedText(curves: readonly Curve[]): string {
  const runs = pathText(curves).replaceAll(/(?!^)M/g, 'L');
  return runs === '' ? '' : `${runs}Z`;
}

/** Points joined by straight lines as the text of an SVG path. */
export const lineText = (points: readonly Point[]): string =>
  points.length === 0 ? '' : `M${points.map(at).join('L')}`;

/** The same, closed. */
export const polygonText = (points: readonly Point[]): string => lineText(points) && `${lineText(points)}Z`;
