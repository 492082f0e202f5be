import { INK, LINE_STYLES, type PieceDrawing, type Stroke } from '../../drawing';
import type { Mm } from '../../length';
import { pathThrough, point } from '../../plane';
import { type Phrase, said, say } from '../../words';
import type { Passage } from '../pen/passage';
import type { Pen } from '../pen/pen';

type LineStroke = Exclude<Stroke, 'solid'>;

/** What each line type of the pattern means, most needed first. */
const MEANINGS: Readonly<Record<LineStroke, Phrase>> = {
  cut: say`cut here`,
  stitching: say`stitch here`,
  fold: say`fold here`,
  grain: say`grainline, along the selvedge`,
  notch: say`notch, meets its partner`,
  waistEdge: say`waist edge, or where a part goes`,
  side: say`side of the leg: no seam`,
  level: say`hip, crotch or knee line`,
  lengthen: say`lengthen or shorten here`,
};

const SAMPLE: Mm = 22;

/** The key of the lines: each line type that these drawings use as it is printed, with its meaning. */
export function lineKey(drawings: readonly PieceDrawing[]): Passage {
  const used = new Set(drawings.flatMap(({ paths }) => paths.map(({ stroke }) => stroke)));
  const strokes = (Object.keys(MEANINGS) as LineStroke[]).filter((stroke) => used.has(stroke));
  return {
    kind: 'key',
    width: SAMPLE,
    rows: strokes.map((stroke) => ({
      text: said(MEANINGS[stroke]),
      draw: (pen, left, middle) => drawSample(pen, stroke, left, middle),
    })),
  };
}

/** A line as the pattern has it, with the sign that it bears there. */
function drawSample(pen: Pen, stroke: LineStroke, left: Mm, y: Mm): void {
  const style = LINE_STYLES[stroke];
  const right = left + SAMPLE;
  if (stroke === 'notch') {
    // Across the allowance, between a cut line and a stitching line.
    pen.line(point(left, y - 1.6), point(right, y - 1.6), LINE_STYLES.cut);
    pen.line(point(left, y + 1.6), point(right, y + 1.6), LINE_STYLES.stitching);
    pen.line(point(left + SAMPLE / 2, y - 1.6), point(left + SAMPLE / 2, y + 1.6), style);
    return;
  }
  pen.line(point(left, y), point(right, y), style);
  const triangle = (x: Mm, tip: Mm, half: Mm, up: boolean) => {
    const corners = up
      ? ([point(x - half, y), point(x, y - tip), point(x + half, y)] as const)
      : ([point(x, y - half), point(x + tip, y), point(x, y + half)] as const);
    pen.fill(pathThrough(...corners, corners[0]), (p) => p, INK.sign);
  };
  if (stroke === 'fold') triangle(left + SAMPLE / 2, 2, 1.6, true);
  if (stroke === 'grain') {
    triangle(right - 4, 4, 1.2, false);
    triangle(left + 4, -4, 1.2, false);
  }
}
