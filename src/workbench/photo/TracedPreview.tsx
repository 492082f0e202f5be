import { type Curve, curveMap, flattenCurves, pointsBounds } from '../../plane';
import { BLOCK_EDGES, type TracedPair, tracedEdge } from '../../trace';
import { words } from '../../words';
import { pathText } from '../table/path-text';
import type { ExactPair, ExactSpots } from './exact-spots';

/** Between the two blocks and round them, millimetres. */
const GAP = 60;
/** A circle is so many times as large as its place may be off: as it is, it would hardly be seen. */
export const ENLARGED = 10;

/** Both traced blocks as they will be used, net, side by side, with how far off their places may be. */
export function TracedPreview({ blocks, exact }: { readonly blocks: TracedPair; readonly exact: ExactPair }) {
  const placed: { readonly curves: readonly Curve[]; readonly grain: string; readonly spots: ExactSpots['spots'] }[] =
    [];
  let left = 0;
  let bottom = 0;
  for (const part of ['back', 'front'] as const) {
    const block = blocks[part];
    const curves = BLOCK_EDGES.flatMap((name) => tracedEdge(block, name));
    const box = pointsBounds(flattenCurves(curves, 1));
    const [dx, dy] = [left + GAP - box.left, GAP - box.top];
    const [[x0, y0], [x1, y1]] = block.grainline;
    placed.push({
      curves: curves.map((curve) => curveMap(curve, ({ x, y }) => ({ x: x + dx, y: y + dy }))),
      grain: `M${x0 + dx} ${y0 + dy}L${x1 + dx} ${y1 + dy}`,
      spots: (exact[part]?.spots ?? []).map(({ at, off }) => ({ at: { x: at.x + dx, y: at.y + dy }, off })),
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
      {placed.map(({ curves, grain, spots }) => (
        <g key={grain}>
          <path className="diagram-outline" d={pathText(curves, true)} />
          {spots.map(({ at, off }) => (
            <circle key={`${at.x} ${at.y}`} className="photo-spot" cx={at.x} cy={at.y} r={ENLARGED * off} />
          ))}
          <path className="diagram-line" d={grain} />
        </g>
      ))}
    </svg>
  );
}
