import type { Mm } from '../length';
import type { DrawnPath, Stroke } from './drawing';

/** How a line is drawn on paper: true millimetres, whatever the drawing's scale. */
export interface LineStyle {
  readonly width: Mm;
  readonly colour: string;
  /** Dash, gap, …; empty = solid. */
  readonly dash: readonly Mm[];
}

/** The inks of the printed pattern. Only the joining marks are indigo, and only the cut line has the darkest ink. */
export const INK = {
  cut: '#1F2A33',
  sewn: '#4E7A4A',
  sign: '#4B5560',
  level: '#756C61',
  join: '#8A8175',
  frame: '#D8D2C6',
  mark: '#33508A',
  label: '#B9B2A4',
  words: '#39444E',
  quietWords: '#6B6459',
} as const;

/** A line type for each meaning (kinds of line after ISO 128), so that each differs by more than its colour. */
export const LINE_STYLES: Readonly<Record<Exclude<Stroke, 'solid'>, LineStyle>> = {
  cut: { width: 0.5, colour: INK.cut, dash: [] },
  stitching: { width: 0.25, colour: INK.sewn, dash: [8, 2.5] },
  fold: { width: 0.25, colour: INK.sign, dash: [] },
  level: { width: 0.25, colour: INK.level, dash: [0.3, 1.3] },
  lengthen: { width: 0.25, colour: INK.level, dash: [3, 1.5] },
  side: { width: 0.25, colour: INK.level, dash: [7, 1.5, 0.3, 1.5] },
  waistEdge: { width: 0.25, colour: INK.level, dash: [] },
  notch: { width: 0.4, colour: INK.sign, dash: [] },
  grain: { width: 0.3, colour: INK.sign, dash: [] },
};

/** How a path of a drawing is drawn; of a filled sign only the colour counts. */
export type StyleOf = (path: DrawnPath) => LineStyle;

/** Filled signs: arrowheads and fold triangles. */
const SOLID: LineStyle = { width: 0, colour: INK.sign, dash: [] };

/** How the printed pattern draws a path: by its meaning. */
export const printedStyle: StyleOf = ({ stroke }) => (stroke === 'solid' ? SOLID : LINE_STYLES[stroke]);
