import { type Curve, type Point, pathAt, pathLength } from '../../../plane';
import { fixedAt } from '../Word';
import { Line } from './Line';

/** From one fold triangle to the next, millimetres. */
const PITCH = 110;

const degrees = (way: Point): number => (Math.atan2(way.y, way.x) * 180) / Math.PI;

/** The small triangles on a fold line, in the size of the screen: printed at true size they would be specks here. */
export function FoldTriangles({ fold }: { readonly fold: readonly Curve[] }) {
  const length = pathLength(fold);
  const count = Math.max(2, Math.round(length / PITCH));
  return Array.from({ length: count }, (_, i) => {
    const place = (length * (i + 0.5)) / count;
    const { at, way } = pathAt(fold, place);
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: the same triangle a little farther along, and no new one
      <g key={i} style={fixedAt(at)}>
        <path className="fold-triangle" d="M-4 0L0 -6L4 0Z" transform={`rotate(${degrees(way)})`} />
      </g>
    );
  });
}

export interface GrainlineProps {
  readonly ends: readonly [Point, Point];
  /** Only the second end has an arrowhead: the way of a nap. */
  readonly oneHead?: boolean;
}

/** The grainline with its two arrowheads. */
export function Grainline({ ends, oneHead = false }: GrainlineProps) {
  const [from, to] = ends;
  const way = { x: to.x - from.x, y: to.y - from.y };
  return (
    <g>
      <Line curves={[[from, from, to, to]]} stroke="grain" />
      {!oneHead && <Arrowhead at={from} turn={degrees(way) + 180} />}
      <Arrowhead at={to} turn={degrees(way)} />
    </g>
  );
}

/** An arrowhead whose tip is at a point; turned 0 it points to the right. */
function Arrowhead({ at, turn }: { readonly at: Point; readonly turn: number }) {
  return (
    <g style={fixedAt(at)}>
      <path className="arrowhead" d="M0 0L-9 -3.2L-9 3.2Z" transform={`rotate(${turn})`} />
    </g>
  );
}
