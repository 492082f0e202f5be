import { edgeApart, INK, type LineStyle } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxGrown, boxRound, type Curve, curveBounds, type WorkingStep } from '../../plane';
import { frameAt } from '../pen/page-frame';
import type { PagePicture } from '../pen/passage';
import { RULE } from '../pen/table-strips';

/** What the step draws, what the steps before it drew, and what they are drawn on. */
const LIT: LineStyle = { width: 0.65, colour: INK.mark, dash: [] };
const EARLIER: LineStyle = { width: 0.18, colour: INK.sign, dash: [] };
/** Between the drawing and its frame. */
const FRAME_AIR: Mm = 0.8;
const GROUND: LineStyle = { width: 0.18, colour: INK.frame, dash: [] };

/** The lines of a step where they lie on its station's drawing: the blocks apart, as on the screen. */
export const stepCurves = ({ station, lines }: WorkingStep): readonly Curve[] =>
  lines.flatMap((edge) => (station === 'blocks' ? edgeApart(edge) : edge.curves));

/**
 * The pictures of a station's steps, in their order: each step's own lines thick, those of the steps before it thin. All
 * show the same part of the drawing, so that one sees it grow.
 *
 * @param ground what they are drawn on, or what comes out, very thin
 * @returns undefined for a step that draws nothing
 */
export function workingPictures(
  steps: readonly WorkingStep[],
  ground: readonly Curve[] = [],
): readonly (PagePicture | undefined)[] {
  const drawn = steps.map(stepCurves);
  const all = [...drawn.flat(), ...ground];
  if (all.length === 0) return steps.map(() => undefined);
  const box = boxRound(all.map(curveBounds));
  return drawn.map((lit, i) =>
    lit.length === 0 ? undefined : stepPicture(box, ground, drawn.slice(0, i).flat(), lit),
  );
}

function stepPicture(
  box: Box,
  ground: readonly Curve[],
  earlier: readonly Curve[],
  lit: readonly Curve[],
): PagePicture {
  return {
    ratio: (box.bottom - box.top) / (box.right - box.left),
    draw: (pen, { left, top, right, bottom }) => {
      const inner = boxGrown({ left, top, right, bottom }, -FRAME_AIR);
      const scale = Math.min(
        (inner.right - inner.left) / (box.right - box.left),
        (inner.bottom - inner.top) / (box.bottom - box.top),
      );
      const { map } = frameAt(inner.left, inner.top, box, { x: scale, y: scale });
      pen.stroke(ground, map, GROUND);
      pen.stroke(earlier, map, EARLIER);
      pen.stroke(lit, map, LIT);
      pen.frame({ left, top, right, bottom }, RULE);
    },
  };
}
