import { baseline, capitalsOfPt, INK, type LineStyle, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, type Point, pathThrough, point } from '../../plane';
import { words } from '../../words';
import type { Pen } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';

/** The test squares' sides, in millimetres: exactly 100 mm and exactly 4 inches. */
export const TEST_SQUARES = [
  { side: 100, label: '100 mm' },
  { side: 101.6, label: '4 in' },
] as const;

const SQUARE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const ARROW: LineStyle = { width: 0.2, colour: INK.join, dash: [] };
const LABEL_PT = 20;
const TOLD_PT = 8;
/** From a square's line to an arrow's tip there is nothing; from the arrow to its figure a little white. */
const GAP: Mm = 2;
/** Where the two arrows stand, in parts of the side: off the middle, where the figure is. */
const ASIDE = 0.22;

/** A square that is true once printed: a printer's correction belongs to it as to the drawing. */
export const squareAt = (left: Mm, top: Mm, side: Mm, correct: { readonly x: number; readonly y: number }): Box => ({
  left,
  top,
  right: left + side * correct.x,
  bottom: top + side * correct.y,
});

/** A square, empty but for its size and for two arrows that show where to measure it: from line to line, both ways. */
export function drawSquare(pen: Pen, box: Box, label: string): void {
  pen.frame(box, SQUARE);
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const line = middle.y + capitalsOfPt(LABEL_PT) / 2;
  pen.words(label, point(middle.x, line), { pt: LABEL_PT, colour: INK.cut, align: 'middle' });
  const told = words`Measure from the middle of one line to the middle of the other, along all four sides.`;
  const under = line + GAP;
  for (const [i, text] of wrapText(told, (box.right - box.left) / 2, TOLD_PT, pen.widthOf).entries())
    pen.words(text, point(middle.x, baseline(under + i * lineHeight(TOLD_PT), TOLD_PT)), {
      pt: TOLD_PT,
      colour: INK.quietWords,
      align: 'middle',
    });
  const level = box.top + ASIDE * (box.bottom - box.top);
  const upright = box.left + ASIDE * (box.right - box.left) * 0.6;
  drawSpan(pen, point(box.left, level), point(box.right, level), label, 0);
  drawSpan(pen, point(upright, box.top), point(upright, box.bottom), label, -90);
}

/** An arrow from line to line with its figure in a gap. */
function drawSpan(pen: Pen, from: Point, to: Point, text: string, turn: 0 | -90): void {
  const half = pen.widthOf(text, TOLD_PT) / 2 + GAP;
  const way = turn === 0 ? point(1, 0) : point(0, 1);
  const at = (p: Point, by: Mm) => point(p.x + way.x * by, p.y + way.y * by);
  const middle = point((from.x + to.x) / 2, (from.y + to.y) / 2);
  pen.line(from, at(middle, -half), ARROW);
  pen.line(at(middle, half), to, ARROW);
  for (const [tip, back] of [
    [from, 1],
    [to, -1],
  ] as const) {
    const foot = at(tip, 2.6 * back);
    const [a, b] = [1, -1].map((side) => point(foot.x + way.y * side * 0.9, foot.y + way.x * side * 0.9)) as [
      Point,
      Point,
    ];
    pen.fill(pathThrough(tip, a, b, tip), (p) => p, INK.join);
  }
  const down = capitalsOfPt(TOLD_PT) / 2;
  const place = turn === 0 ? point(middle.x, middle.y + down) : point(middle.x + down, middle.y);
  pen.words(text, place, { pt: TOLD_PT, colour: INK.words, align: 'middle', turn });
}
