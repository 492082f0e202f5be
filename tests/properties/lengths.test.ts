import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactText, fieldText, formatLength, parseLength } from '../../src/length';
import { between, chance } from './seed';

const length = fc.oneof(between(-200, 2500), between(-12, 12));

describe.each(['cm', 'inch'] as const)('lengths in %s', (units) => {
  const read = (text: string) => {
    const parsed = parseLength(text, units);
    return parsed.ok ? parsed.mm : Number.NaN;
  };

  test('a file gives back what it was given, within 0.05 mm, and the second time exactly; a field as near as a tape', () => {
    fc.assert(
      fc.property(length, (mm) => {
        const text = exactText(mm, units);
        expect(Math.abs(read(text) - mm), text).toBeLessThanOrEqual(0.05 + 1e-9);
        expect(exactText(read(text), units)).toBe(text);
        const shown = fieldText(mm, units);
        expect(Math.abs(read(shown) - mm), shown).toBeLessThanOrEqual((units === 'cm' ? 0.5 : 25.4 / 16) + 1e-5);
        expect(fieldText(read(shown), units)).toBe(shown);
      }),
      chance(`fields in ${units}`, 2000),
    );
  });

  test('what is printed for people is read back to half of its last place', () => {
    const half = units === 'cm' ? 0.5 : 25.4 / 16;
    fc.assert(
      fc.property(length, (mm) => {
        expect(Math.abs(read(formatLength(mm, units)) - mm), formatLength(mm, units)).toBeLessThanOrEqual(half + 1e-9);
      }),
      chance(`prints in ${units}`, 2000),
    );
  });

  test('nothing that a person types throws', () => {
    const typed = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc
        .array(fc.constantFrom(...'0123456789 ./,-+⅛½¼"\'″mcinft'), { maxLength: 10 })
        .map((letters) => letters.join('')),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const parsed = parseLength(text, units);
        if (parsed.ok) expect(Number.isFinite(parsed.mm)).toBe(true);
      }),
      chance(`typing in ${units}`, 2000),
    );
  });
});
