import { capitalsOfPt, INK, type LineStyle } from '../../drawing';
import type { Mm } from '../../length';
import { type Point, point } from '../../plane';
import type { EdgeLine } from '../../sheets';
import type { Pen } from '../pen/pen';

const LINE: LineStyle = { width: 0.3, colour: INK.cut, dash: [] };
const STEM: LineStyle = { width: 0.15, colour: INK.join, dash: [] };
/** From one line to the next along the edge, and half of a line. */
const PITCH: Mm = 5.5;
const HALF: Mm = 2.2;
/** How far from the edge the stems end and the numbers stand; words keep off up to there. */
const FOOT: Mm = 14.5;
const NUMBER_PT = 8;
export const LADDER_DEPTH: Mm = 20;
/** Where along an edge the ladder stands, in parts of it: off the middle, where the bars' lengths are told. */
const ALONG = 0.72;

/**
 * Short lines near all four edges of a page, stepwise farther in, each on a stem that leads to its number: how near to an
 * edge the printer prints is the lowest number whose line is there.
 */
export function drawEdgeLadders(
  pen: Pen,
  paper: { readonly width: Mm; readonly height: Mm },
  lines: readonly EdgeLine[],
): void {
  const { width, height } = paper;
  drawLadder(pen, lines, width, (along, deep) => point(along, deep));
  drawLadder(pen, lines, width, (along, deep) => point(along, height - deep));
  drawLadder(pen, lines, height, (along, deep) => point(deep, along));
  drawLadder(pen, lines, height, (along, deep) => point(width - deep, along));
}

/** @param at a place so far along the edge and so far in from it */
function drawLadder(pen: Pen, lines: readonly EdgeLine[], length: Mm, at: (along: Mm, deep: Mm) => Point): void {
  const first =
    Math.min(ALONG * length, length - LADDER_DEPTH - (lines.length * PITCH) / 2) - ((lines.length - 1) * PITCH) / 2;
  for (const [i, { number, margin }] of lines.entries()) {
    const along = first + i * PITCH;
    // A line's outer edge is what stands at its margin.
    const deep = margin + LINE.width / 2;
    pen.line(at(along, deep), at(along, FOOT), STEM);
    pen.line(at(along - HALF, deep), at(along + HALF, deep), LINE);
    const middle = at(along, FOOT + 0.8 + capitalsOfPt(NUMBER_PT) / 2 + 0.4);
    pen.words(`${number}`, point(middle.x, middle.y + capitalsOfPt(NUMBER_PT) / 2), {
      pt: NUMBER_PT,
      colour: INK.words,
      align: 'middle',
    });
  }
}
