import type { LineStyle } from '../../drawing';
import type { Mm } from '../../length';
import { type Phrase, say } from '../../words';

/**
 * Dash patterns in line widths: dash, gap, dash, gap …
 * Those that differ only in their gaps are left out; a dot is drawn a line width long, because a cutter must see it.
 *
 * @source ISO 128, the basic line types, from memory
 */
const DASHES: readonly { readonly name: Phrase; readonly dash: readonly number[] }[] = [
  { name: say`solid`, dash: [] },
  { name: say`dashes`, dash: [12, 4] },
  { name: say`dots`, dash: [1, 3] },
  { name: say`long dash, dot`, dash: [24, 4, 1, 4] },
  { name: say`long dash, short dash`, dash: [24, 4, 6, 4] },
  { name: say`dash, two dots`, dash: [12, 4, 1, 4, 1, 4] },
  { name: say`short dashes`, dash: [5, 4] },
  { name: say`long dash, three dots`, dash: [24, 4, 1, 4, 1, 4, 1, 4] },
  { name: say`long dash, two short dashes`, dash: [24, 4, 6, 4, 6, 4] },
  { name: say`two dashes, dot`, dash: [12, 4, 12, 4, 1, 4] },
  { name: say`wide dashes`, dash: [12, 12] },
  { name: say`two dashes, two dots`, dash: [12, 4, 12, 4, 1, 4, 1, 4] },
];

/** More can't be told apart on one drawing. */
export const MOST_NESTED = DASHES.length;

/** Dark enough on white to be seen alone, in an order in which neighbours differ in lightness too. */
const COLOURS = ['#1F2A33', '#A03428', '#2F6B2A', '#33508A', '#7A4A00', '#6A2C7A'] as const;

const CUT: Mm = 0.45;
const INSIDE: Mm = 0.2;
const FIGURE: Mm = 0.35;

/** How one body's lines are drawn. */
export interface NestedStyle {
  /** The line type in words. */
  readonly name: Phrase;
  readonly cut: LineStyle;
  /** Thin, in the body's own line type. */
  readonly fold: LineStyle;
  readonly notch: LineStyle;
}

/** The style of the body of that place in the nest, counted from 0 and below {@link MOST_NESTED}. */
export function nestedStyle(body: number): NestedStyle {
  const { name, dash } = DASHES[body % DASHES.length] as (typeof DASHES)[number];
  const colour = COLOURS[body % COLOURS.length] as string;
  return {
    name,
    cut: { width: CUT, colour, dash: dash.map((part) => part * CUT) },
    fold: { width: INSIDE, colour, dash: dash.map((part) => part * INSIDE) },
    notch: { width: INSIDE, colour, dash: [] },
  };
}

/** How the figures are drawn that break a body's line. */
export const numberStyle = (body: number): LineStyle => ({ ...nestedStyle(body).notch, width: FIGURE });
