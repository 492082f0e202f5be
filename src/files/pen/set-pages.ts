import { lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { flowBalanced, type LaidStrip } from './flow';
import { gridColumns, type PageGrid } from './page-grid';
import { drawFoot, drawHead } from './page-head';
import type { Passage } from './passage';
import { passageStrips } from './passage-strips';
import type { Pen } from './pen';
import { SPACE, TYPE } from './type-scale';

/** Passages set in some columns across the page, as long as each other where they end. */
export interface PageRun {
  readonly columns: 1 | 2 | 3 | 4;
  readonly passages: readonly Passage[];
  /** Whether it begins a page, where the one before is full enough. */
  readonly onNewPage?: boolean;
}

/** A document of words and pictures. */
export interface PageDocument {
  readonly title: string;
  readonly under: string;
  readonly runs: readonly PageRun[];
}

/** White is left at the foot of a page that reaches down to here, of its height between the margins. */
const FULL = 0.75;
/** A run does not begin in less room than this at the foot of a page. */
const LEAST_ROOM: Mm = 35;

/**
 * Sets a document on pages of one grid: its head, its runs below each other, and at each foot its title and the page's
 * number. The pen stands on the first page, which is empty.
 */
export function setPages(pen: Pen, grid: PageGrid, { title, under, runs }: PageDocument): void {
  let number = 1;
  let y = drawHead(pen, grid, title, under);
  const turnOver = () => {
    drawFoot(pen, grid, title, `${number}`);
    pen.newPage(grid.width, grid.height);
    number += 1;
    y = grid.margin;
  };
  const least = grid.margin + FULL * (grid.bottom - grid.margin);
  for (const { columns, passages, onNewPage = false } of runs) {
    const width = gridColumns(grid, columns, 0, 0)[0] as { left: Mm; right: Mm };
    let strips = passageStrips(passages, width.right - width.left, pen.widthOf);
    if (y > grid.margin) {
      if ((onNewPage && y >= least) || grid.bottom - y < LEAST_ROOM) turnOver();
      else y += SPACE.run;
    }
    while (strips.length > 0) {
      const flow = flowBalanced(strips, (lower) => gridColumns(grid, columns, y, lower), {
        top: y,
        bottom: grid.bottom,
        least,
        step: lineHeight(TYPE.words.pt) / 2,
        whole: y === grid.margin,
      });
      drawLaid(pen, flow.laid);
      y = flow.bottom;
      strips = flow.left;
      if (strips.length > 0) turnOver();
    }
  }
  drawFoot(pen, grid, title, `${number}`);
}

function drawLaid(pen: Pen, laid: readonly LaidStrip[]): void {
  for (const { strip, left, top } of laid) strip.draw(pen, left, top);
}
