import { MM_PER_INCH, type Mm, type Units } from '../../length';
import { type Box, type Point, pathThrough, point, pointsBounds } from '../../plane';
import type { Project } from '../../project';
import { type ProjectorCorrection, projectorCorrection } from '../../sheets';
import { Refusal } from '../../words';
import type { PageMap, Pen } from '../pen/pen';

/** The grid's squares: they show on the cutting mat whether the projector is set right. */
export const GRID: Readonly<Record<Units, { readonly side: Mm; readonly name: string }>> = {
  cm: { side: 50, name: '5 cm' },
  inch: { side: 2 * MM_PER_INCH, name: '2 in' },
};

/** What is seen where; on a dark ground the cloth shows between the lines of light. */
export interface Ground {
  readonly paper: string | undefined;
  readonly cut: string;
  readonly sewn: string;
  readonly sign: string;
  readonly level: string;
  readonly grid: string;
  readonly words: string;
}

export const GROUNDS: Readonly<Record<Project['projector']['ground'], Ground>> = {
  dark: {
    paper: '#000000',
    cut: '#FFFFFF',
    sewn: '#8FE388',
    sign: '#FFD24A',
    level: '#9FB4C0',
    grid: '#33424B',
    words: '#FFFFFF',
  },
  light: {
    paper: undefined,
    cut: '#000000',
    sewn: '#2F6B2A',
    sign: '#8A4B00',
    level: '#4B5560',
    grid: '#C9C4B8',
    words: '#000000',
  },
};

/** A page that is as large as what it shows, and where the drawing's points lie on it. */
export interface ProjectedFrame {
  readonly map: PageMap;
  readonly width: Mm;
  readonly height: Mm;
}

/** What is done to a drawing so that a projector's error is undone. */
export type Undoing = Pick<ProjectorCorrection, 'across' | 'down' | 'slant'>;
/** A projector that needs none. */
export const TRUE_PROJECTOR: Undoing = { across: 1, down: 1, slant: 0 };

/**
 * How the project's projector is corrected; undefined where nothing is to be.
 *
 * @throws Refusal where the lengths that were measured can't belong to one picture
 */
export function correctionOf({ projector, units }: Project): ProjectorCorrection | undefined {
  const result = projectorCorrection(projector, units);
  if (!result.ok) throw new Refusal(result.problems);
  return result.value;
}

/** The page round a box of the drawing: no margin, and the box changed so that the projector shows it true. */
export function projectedFrame(box: Box, { across, down, slant }: Undoing): ProjectedFrame {
  const changed = ({ x, y }: Point): Point => point(across * x + slant * y, down * y);
  const { left, top, right, bottom } = pointsBounds(cornersOf(box).map(changed));
  const map = (p: Point): Point => {
    const { x, y } = changed(p);
    return point(x - left, y - top);
  };
  return { map, width: right - left, height: bottom - top };
}

const cornersOf = ({ left, top, right, bottom }: Box): readonly [Point, Point, Point, Point] => [
  point(left, top),
  point(right, top),
  point(right, bottom),
  point(left, bottom),
];

/** The ground of a whole page. */
export function drawGround(pen: Pen, { width, height }: ProjectedFrame, { paper }: Ground): void {
  if (paper === undefined) return;
  const corners = cornersOf({ left: 0, top: 0, right: width, bottom: height });
  pen.fill(pathThrough(...corners, corners[0]), (p) => p, paper);
}
