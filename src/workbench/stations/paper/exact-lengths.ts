import { exactText, MM_PER_INCH } from '../../../length';
import { correctionFor } from '../../../sheets';
import { own, say } from '../../../words';
import { length, type Quantity } from '../../store/quantity';

/** How thick a line is: less than any tape shows, so exact. */
export const thickness: Quantity = {
  ...length,
  print: exactText,
  range: (lowest, highest, units) =>
    units === 'cm'
      ? say`${own(exactText(lowest, units))} to ${own(exactText(highest, units))} cm`
      : say`${own(exactText(lowest, units))} to ${own(exactText(highest, units))} in`,
  step: (units) => (units === 'cm' ? 0.1 : MM_PER_INCH / 64),
};

/**
 * A printer's correction, typed and shown as what a bar of its test page measures.
 *
 * @param bar how long the bar would be on a true printer
 */
export function barMeasured(bar: number): Quantity {
  return {
    ...length,
    read(text, units) {
      const reading = length.read(text, units);
      if (!reading.ok || reading.value === undefined) return reading;
      return { ok: true, value: correctionFor(bar, reading.value) };
    },
    // A hair counts here.
    print: (value, units) => exactText(bar / value, units),
    // The larger the correction, the shorter the bar was.
    range: (lowest, highest, units) => length.range(bar / highest, bar / lowest, units),
    step: () => 0.001,
  };
}
