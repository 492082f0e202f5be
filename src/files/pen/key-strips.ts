import { INK, lineHeight } from '../../drawing';
import type { Mm } from '../../length';
import type { Passage } from './passage';
import { joinedStrip, type Strip } from './strip';
import { type Measure, textStrips } from './text-strips';
import { SPACE, TYPE } from './type-scale';

/** Between a sample and its words. */
const GAP: Mm = 3;
/** A row's height in lines: samples are taller than words. */
const LEAST_LINES = 1.25;

/** A key as strips, a row each, the first line of its words level with the middle of its sample. */
export function keyStrips(
  { width: sample, rows }: Extract<Passage, { kind: 'key' }>,
  width: Mm,
  widthOf: Measure,
): readonly Strip[] {
  const line = lineHeight(TYPE.words.pt);
  const above = ((LEAST_LINES - 1) / 2) * line;
  return rows.map(({ draw, text, label }, i) => {
    const style = { type: TYPE.words, colour: INK.words, label };
    const words = joinedStrip(textStrips(text, width - sample - GAP, widthOf, style));
    return {
      above: i === 0 ? SPACE.paragraph : 0,
      height: words.height + 2 * above,
      draw: (pen, left, top) => {
        draw(pen, left, top + above + line / 2);
        words.draw(pen, left + sample + GAP, top + above);
      },
    };
  });
}
