import type { ReportPiece } from '../../src/files';
import { mirroredIn, type Pair } from './reference-geometry';

/** The points of an edge of the stitching line; none where the piece has no such edge. */
export const stitch = (piece: ReportPiece, edge: string): readonly Pair[] =>
  piece.stitchLine.find((e) => e.edge === edge)?.points ?? [];
export const named = (lines: ReportPiece['lines'], name: string): readonly Pair[] =>
  lines.find((l) => l.name === name)?.points ?? [];
export const first = (points: readonly Pair[]): Pair => points[0] as Pair;
export const last = (points: readonly Pair[]): Pair => points.at(-1) as Pair;

/** Straight pieces between the two seams: what is stitched down of the turned part, and what lies under it. */
export function turnings(
  piece: ReportPiece,
): readonly { readonly fold: readonly Pair[]; readonly turned: readonly Pair[]; readonly under: readonly Pair[] }[] {
  const cutBy = (edges: readonly string[], parallelTo: readonly Pair[], through: Pair): readonly Pair[] => {
    const [a, b] = [first(parallelTo), last(parallelTo)];
    const way = [b[0] - a[0], b[1] - a[1]] as const;
    const height = (p: Pair) => way[0] * (p[1] - through[1]) - way[1] * (p[0] - through[0]);
    return edges.map((edge) => {
      const points = stitch(piece, edge);
      for (let i = 1; i < points.length; i += 1) {
        const [p, q] = [points[i - 1] as Pair, points[i] as Pair];
        const [hp, hq] = [height(p), height(q)];
        if (hp * hq <= 0 && hp !== hq)
          return [p[0] + ((q[0] - p[0]) * hp) / (hp - hq), p[1] + ((q[1] - p[1]) * hp) / (hp - hq)] as Pair;
      }
      return Math.abs(height(first(points))) < Math.abs(height(last(points))) ? first(points) : last(points);
    });
  };
  const waistFold = named(piece.folds, 'waist fold');
  const casing = named(piece.lines, 'casing stitching');
  const hemFold = named(piece.folds, 'hem fold');
  const hemLine = named(piece.lines, 'hem stitching');
  return [
    {
      fold: waistFold,
      under: casing,
      turned: cutBy(
        ['centreBackTurning', 'centreFrontTurning'],
        waistFold,
        mirroredIn(first(casing), first(waistFold), last(waistFold)),
      ),
    },
    {
      fold: hemFold,
      under: hemLine,
      turned: cutBy(
        ['inseamFrontTurning', 'inseamBackTurning'],
        hemFold,
        mirroredIn(first(hemLine), first(hemFold), last(hemFold)),
      ),
    },
  ];
}
