import { MM_PER_INCH, plain, type Units } from '../../length';
import type { Size, View } from '../view/view';

/** One mark of a ruler, and of the grid where it is a main one. */
export interface RulerMark {
  /** Pixels from the window's edge. */
  readonly at: number;
  /** Empty where the mark bears no number. */
  readonly text: string;
  readonly main: boolean;
}

/** The grid, and how it is divided where there is room: 100 mm in centimetres, 4 in in inches and eighths. */
const RULERS: Readonly<Record<Units, { unit: number; main: number; parts: readonly number[] }>> = {
  cm: { unit: 10, main: 100, parts: [1, 5, 10, 50] },
  inch: {
    unit: MM_PER_INCH,
    main: 4 * MM_PER_INCH,
    parts: [MM_PER_INCH / 8, MM_PER_INCH / 2, MM_PER_INCH, 2 * MM_PER_INCH],
  },
};

/** Marks nearer to one another than this run together, pixels. */
const CLOSEST = 7;
/** A number needs this much, pixels. */
const CLOSEST_TEXT = 38;

/** The marks of the ruler along the top of a window, which goes across, or of the one that goes down. */
export function rulerMarks(view: View, window: Size, way: 'across' | 'down', units: Units): readonly RulerMark[] {
  const { scale } = view;
  const [start, extent] = way === 'across' ? [view.left, window.width] : [view.top, window.height];
  const { unit, main, parts } = RULERS[units];
  const step = [...parts, main, 2 * main, 5 * main].find((part) => part * scale >= CLOSEST) ?? 10 * main;
  const perMain = Math.max(1, Math.round(main / step));
  const first = Math.ceil(-start / (step * scale));
  const last = Math.floor((extent - start) / (step * scale));
  const numbered = numberedEach(step, main, unit, scale);
  const marks: RulerMark[] = [];
  for (let i = first; i <= last; i += 1) {
    const text = i % numbered === 0 ? plain((i * step) / unit, 1) : '';
    marks.push({ at: start + i * step * scale, text, main: i % perMain === 0 });
  }
  return marks;
}

/** Each how-many-eth mark bears a number: whole units, main marks, or several of them. */
function numberedEach(step: number, main: number, unit: number, scale: number): number {
  const whole = [unit, main, 2 * main, 5 * main, 10 * main].filter((length) => length >= step);
  const length = whole.find((one) => one * scale >= CLOSEST_TEXT) ?? 20 * main;
  return Math.max(1, Math.round(length / step));
}
