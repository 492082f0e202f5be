import { lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { flowBalanced } from './flow';
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
  /** The same with a smaller picture, for the rest of a page that would be left too empty otherwise. */
  readonly smaller?: readonly Passage[];
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
/** A run that goes on overleaf does not begin in less room than this at the foot of a page. */
const LEAST_ROOM: Mm = 35;

/**
 * Sets a document on pages of one grid: its head, its runs below each other, and at each foot its title and the page's
 * number. The pen stands on the first page, which is empty.
 */
export function setPages(pen: Pen, grid: PageGrid, { title, under, runs }: PageDocument): void {
  let number = 1;
  const top = drawHead(pen, grid, title, under);
  setRuns(pen, grid, runs, top, () => {
    drawFoot(pen, grid, title, `${number}`);
    pen.newPage(grid.width, grid.height);
    number += 1;
    return grid.margin;
  });
  drawFoot(pen, grid, title, `${number}`);
}

/**
 * Sets runs below each other, from somewhere on the current page.
 *
 * @param top where the first one begins
 * @param turnOver begins another page and says where its first run begins
 */
export function setRuns(pen: Pen, grid: PageGrid, runs: readonly PageRun[], top: Mm, turnOver: () => Mm): void {
  const least = grid.margin + FULL * (grid.bottom - grid.margin);
  let y = top;
  let empty = false;
  const turn = () => {
    y = turnOver();
    empty = true;
  };
  for (const { columns, passages, smaller, onNewPage = false } of runs) {
    const width = gridColumns(grid, columns, 0, 0)[0] as { left: Mm; right: Mm };
    const stripsOf = (some: readonly Passage[]) => passageStrips(some, width.right - width.left, pen.widthOf);
    let strips = stripsOf(passages);
    const flowHere = () =>
      flowBalanced(strips, (lower) => gridColumns(grid, columns, y, lower), {
        top: y,
        bottom: grid.bottom,
        least,
        step: lineHeight(TYPE.words.pt) / 2,
        whole: empty,
      });
    if (!empty) {
      y += SPACE.run;
      const low = grid.bottom - y < LEAST_ROOM && flowHere().left.length > 0;
      if ((onNewPage && y >= least) || low) turn();
      else if (smaller && y < least && flowHere().laid.length === 0) strips = stripsOf(smaller);
    }
    while (strips.length > 0) {
      const flow = flowHere();
      for (const { strip, left, top: from } of flow.laid) strip.draw(pen, left, from);
      if (flow.laid.length > 0) [y, empty] = [flow.bottom, false];
      strips = flow.left;
      if (strips.length > 0) turn();
    }
  }
}
