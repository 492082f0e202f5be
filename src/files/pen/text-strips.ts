import { baseline, INK, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import { point } from '../../plane';
import type { Tone } from './passage';
import type { Pen } from './pen';
import type { Strip } from './strip';
import type { Type } from './type-scale';
import { wrapText } from './wrap-text';

/** The inks of words, dark enough to be read as such. */
export const TONE_INK: Readonly<Record<Tone, string>> = {
  plain: INK.words,
  quiet: INK.quietWords,
  good: '#3F6B3B',
  doubtful: '#7A5A00',
  care: '#8F322C',
};

/** Between a label and its text, in parts of the font size’s line. */
const LABEL_GAP = 0.25;

/** What is measured: a text's width in a size. */
export type Measure = Pen['widthOf'];

/** How a text is set. */
export interface TextStyle {
  readonly type: Type;
  readonly colour: string;
  /** Bold, before the text. */
  readonly label?: string | undefined;
  /** A sign at the left of its first line; the text is set in by `indent`. */
  readonly sign?: string;
  readonly indent?: Mm;
}

/** A text as strips, a line each; neither the first nor the last line stands alone. */
export function textStrips(
  text: string,
  width: Mm,
  widthOf: Measure,
  { type, colour, label = '', sign = '', indent = 0 }: TextStyle,
): readonly Strip[] {
  const { pt, bold } = type;
  const height = lineHeight(pt);
  const room = width - indent;
  const labelled = label === '' ? 0 : widthOf(label, pt) + LABEL_GAP * height;
  // A label that leaves no room beside it has a line of its own.
  const own = labelled > room / 2;
  const [first, ...more] = wrapText(text, room, pt, widthOf, own ? 0 : labelled);
  const line = (words: string, from: Mm, i: number): Strip['draw'] => {
    const at = (pen: Pen, left: Mm, top: Mm, what: string, fat: boolean | undefined) =>
      pen.words(what, point(left, baseline(top, pt)), { pt, colour, bold: fat });
    return (pen, left, top) => {
      if (i === 0 && sign !== '') at(pen, left, top, sign, bold);
      if (i === 0 && label !== '') at(pen, left + indent, top, label, true);
      if (words !== '') at(pen, left + indent + from, top, words, bold);
    };
  };
  const lines = own
    ? [line('', 0, 0), ...[first ?? '', ...more].map((words) => line(words, 0, 1))]
    : [line(first ?? '', labelled, 0), ...more.map((words) => line(words, 0, 1))];
  return lines.map((draw, i) => ({
    above: 0,
    height,
    stays: (i === 0 && lines.length > 1) || (i === lines.length - 2 && lines.length > 2),
    draw,
  }));
}
