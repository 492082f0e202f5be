import type { Mm } from '../../length';
import { PAPER_SIZES, type SheetPlan } from '../../sheets';

/** The paper of the first pages, upright, and the white round it. */
export interface FirstPage {
  /** As in `PAPER_SIZES`, or of an own size. */
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly margin: Mm;
}

/** Words don't grow with the paper: the first sheet of a plan on large sheets is a small one. */
const LARGEST_FIRST: Mm = 450;
/** Both squares and the words beside them want this much. */
const NARROWEST_FIRST: Mm = 200;
const LEAST_MARGIN: Mm = 8;
/** Beyond this the words would not find room on the small papers; printers reach closer. */
const WIDEST_MARGIN: Mm = 15;

/** The first sheet's paper: the plan's own, upright; A4 or Letter where the plan's is larger than A3 or Tabloid, or too narrow. */
export function firstPage({ paper, margin }: Pick<SheetPlan, 'paper' | 'margin'>, inches: boolean): FirstPage {
  const { name } = paper;
  const own = { name, width: Math.min(paper.width, paper.height), height: Math.max(paper.width, paper.height) };
  const small = PAPER_SIZES.find((size) => size.name === (inches ? 'Letter' : 'A4')) ?? own;
  const taken = own.height > LARGEST_FIRST || own.width < NARROWEST_FIRST ? small : own;
  const { width, height } = taken;
  return { name: taken.name, width, height, margin: Math.min(Math.max(margin, LEAST_MARGIN), WIDEST_MARGIN) };
}
