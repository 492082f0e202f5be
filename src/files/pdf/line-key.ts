import { baseline, INK, LINE_STYLES, lineHeight, type PieceDrawing, type Stroke } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, pathThrough, point } from '../../plane';
import { type Phrase, said, say, words } from '../../words';
import type { Pen } from '../pen/pen';
import { TYPE } from '../pen/type-scale';

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
const GAP: Mm = 3;
const TITLE_PT = TYPE.lead.pt;

/** The height of the key for these drawings at a size of type, its title included. */
export const keyHeight = (drawings: readonly PieceDrawing[], pt: number): Mm =>
  lineHeight(TITLE_PT) + usedStrokes(drawings).length * rowHeight(pt);

const rowHeight = (pt: number): Mm => lineHeight(pt) * 1.25;

const usedStrokes = (drawings: readonly PieceDrawing[]): readonly LineStroke[] => {
  const used = new Set(drawings.flatMap(({ paths }) => paths.map(({ stroke }) => stroke)));
  return (Object.keys(MEANINGS) as LineStroke[]).filter((stroke) => used.has(stroke));
};

/** The key of the lines: each line type that these drawings use as it is printed, with its meaning. */
export function drawLineKey(pen: Pen, drawings: readonly PieceDrawing[], room: Box, pt: number): void {
  pen.words(words`What the lines mean`, point(room.left, baseline(room.top, TITLE_PT)), {
    pt: TITLE_PT,
    bold: true,
    colour: INK.cut,
  });
  let top = room.top + lineHeight(TITLE_PT);
  for (const stroke of usedStrokes(drawings)) {
    const y = top + rowHeight(pt) / 2;
    drawSample(pen, stroke, room.left, y);
    const line = baseline(y - lineHeight(pt) / 2, pt);
    pen.words(said(MEANINGS[stroke]), point(room.left + SAMPLE + GAP, line), { pt, colour: INK.words });
    top += rowHeight(pt);
  }
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
