import { type Curve, curveMap, flattenCurves, mapTuple, pointsBounds } from '../../plane';
import { BLOCK_EDGES, type TracedBlock } from '../../trace';
import { words } from '../../words';
import { pathText } from '../table/path-text';

/** Between the two blocks and round them, millimetres. */
const GAP = 60;

/** Both traced blocks as they will be used, net, side by side. */
export function TracedPreview({ front, back }: { readonly front: TracedBlock; readonly back: TracedBlock }) {
  const placed: { readonly curves: readonly Curve[]; readonly grain: string }[] = [];
  let left = 0;
  let bottom = 0;
  for (const block of [back, front]) {
    const curves = BLOCK_EDGES.flatMap((name) => block.edges[name].map(curveOf));
    const box = pointsBounds(flattenCurves(curves, 1));
    const [dx, dy] = [left + GAP - box.left, GAP - box.top];
    const [[x0, y0], [x1, y1]] = block.grainline;
    placed.push({
      curves: curves.map((curve) => curveMap(curve, ({ x, y }) => ({ x: x + dx, y: y + dy }))),
      grain: `M${x0 + dx} ${y0 + dy}L${x1 + dx} ${y1 + dy}`,
    });
    left += GAP + box.right - box.left;
    bottom = Math.max(bottom, 2 * GAP + box.bottom - box.top);
  }
  return (
    <svg
      className="photo-preview"
      viewBox={`0 0 ${left + GAP} ${bottom}`}
      role="img"
      aria-label={words`Back and front, net`}
    >
      {placed.map(({ curves, grain }) => (
        <g key={grain}>
          <path className="diagram-outline" d={pathText(curves, true)} />
          <path className="diagram-line" d={grain} />
        </g>
      ))}
    </svg>
  );
}

const curveOf = (points: TracedBlock['edges']['waist'][number]): Curve => mapTuple(points, ([x, y]) => ({ x, y }));
