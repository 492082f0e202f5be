import { type DrawnPath, LAYERS, type LineStyle, type PieceDrawing, printedStyle, type StyleOf } from '../../drawing';
import { type Box, boxesMeet, boxGrown, type Curve, curveBounds, curveLength } from '../../plane';
import type { PageFrame } from './page-frame';
import type { Pen } from './pen';

/** A run of neighbouring curves that a window shows, and how far along its path it starts. */
interface ShownRun {
  readonly curves: readonly Curve[];
  readonly start: number;
  readonly whole: boolean;
}

/** Half of the widest line, so that a line whose middle is just outside is still drawn; on the drawing. */
const HALF_LINE = 0.3;

/** How lines are drawn, and on which layer each; by their meaning where it isn’t said. */
export interface Look {
  readonly styleOf: StyleOf;
  /** Undefined where it is always shown. */
  readonly layerOf: (path: DrawnPath) => string | undefined;
}

/** Of a small picture of the pattern, which is no part of its layers. */
export const pictureLook = (styleOf: StyleOf): Look => ({ styleOf, layerOf: () => undefined });

const byMeaning: Look['layerOf'] = ({ layer }) => layer;

/** The lines of the pieces that fall in a window, each in its own line type; the caller sets the clip. */
export function drawPaths(
  pen: Pen,
  drawings: readonly PieceDrawing[],
  window: Box,
  { map }: Pick<PageFrame, 'map'>,
  scale: number,
  { styleOf = printedStyle, layerOf = byMeaning }: Partial<Look> = {},
): void {
  const near = boxGrown(window, HALF_LINE / scale);
  const paths = drawings
    .flatMap((drawing) => drawing.paths)
    .filter((path) => path.curves.some((curve) => boxesMeet(curveBounds(curve), near)));
  for (const layer of LAYERS) {
    const shown = paths.filter((path) => path.layer === layer);
    for (const id of new Set(shown.map(layerOf))) {
      const draw = () => {
        for (const path of shown.filter((one) => layerOf(one) === id))
          drawPath(pen, path, near, map, scale, styleOf(path));
      };
      if (id === undefined) draw();
      else pen.onLayer(id, draw);
    }
  }
}

function drawPath(pen: Pen, path: DrawnPath, near: Box, map: PageFrame['map'], scale: number, style: LineStyle): void {
  if (path.stroke === 'solid') {
    pen.fill(path.curves, map, style.colour);
    return;
  }
  const period = style.dash.reduce((sum, part) => sum + part, 0);
  for (const run of shownRuns(path, near)) {
    const phase = period > 0 ? (run.start * scale) % period : 0;
    pen.stroke(run.curves, map, style, { closed: path.closed && run.whole, phase });
  }
}

/** The parts of a path near a window; dashes go on where they would be had all of it been drawn. */
function shownRuns({ curves }: DrawnPath, near: Box): readonly ShownRun[] {
  const runs: { curves: Curve[]; start: number }[] = [];
  let length = 0;
  let before = false;
  for (const curve of curves) {
    const shown = boxesMeet(curveBounds(curve), near);
    if (shown && before) runs.at(-1)?.curves.push(curve);
    else if (shown) runs.push({ curves: [curve], start: length });
    length += curveLength(curve);
    before = shown;
  }
  return runs.map((run) => ({ ...run, whole: run.curves.length === curves.length }));
}
