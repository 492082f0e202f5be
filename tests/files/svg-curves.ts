import { type Curve, straight } from '../../src/plane';

/** Reads path data of M, L, C and Z back into curves. */
export function curvesOf(data: string): readonly Curve[] {
  const curves: Curve[] = [];
  let pen = { x: 0, y: 0 };
  for (const [, command, rest = ''] of data.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const values = rest
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number);
    const points = Array.from({ length: values.length / 2 }, (_, i) => ({
      x: values[2 * i] as number,
      y: values[2 * i + 1] as number,
    }));
    const end = points.at(-1);
    if (command === 'L' && end) curves.push(straight(pen, end));
    if (command === 'C' && end) curves.push([pen, points[0] as typeof pen, points[1] as typeof pen, end]);
    if (end) pen = end;
  }
  return curves;
}
