import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectorCorrection, projectorRemarks, projectorTest } from '../../src/sheets';
import { printProblem } from '../../src/words';
import { between, chance } from '../properties/seed';

/** A tape on the table is read to a millimetre. */
const READ = 1;

/** A projector: how it scales both ways, by how many degrees it opens the corner A, and how it is turned on the table. */
interface Projector {
  readonly across: number;
  readonly down: number;
  readonly skew: number;
  readonly turn: number;
}
type Pair = readonly [number, number];
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Where a projector throws a point of its picture. */
const thrown =
  ({ across, down, skew, turn }: Projector) =>
  ([x, y]: Pair): Pair => {
    const corner = radians(turn + 90 + skew);
    return [
      across * x * Math.cos(radians(turn)) + down * y * Math.cos(corner),
      across * x * Math.sin(radians(turn)) + down * y * Math.sin(corner),
    ];
  };

const apart = (a: Pair, b: Pair) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** What is typed of a projector's test, each length read by `read`. */
function measured(projector: Projector, units: 'cm' | 'inch', read: (length: number) => number) {
  const { across, down, diagonal } = projectorTest('large', units);
  const [a, b, c, d] = (
    [
      [0, 0],
      [across, 0],
      [across, down],
      [0, down],
    ] as const
  ).map(thrown(projector)) as [Pair, Pair, Pair, Pair];
  return {
    test: 'large' as const,
    across: across / read(apart(a, b)),
    down: down / read(apart(a, d)),
    diagonalAC: diagonal / read(apart(a, c)),
    diagonalBD: diagonal / read(apart(b, d)),
  };
}

/** How long a line of a metre is on the table after the correction, at worst, over all ways that it may run: its error. */
function worstOff(projector: Projector, correction: { across: number; down: number; slant: number }): number {
  const ways = Array.from({ length: 36 }, (_, i) => radians(5 * i));
  const off = ways.map((way) => {
    const [x, y] = [1000 * Math.cos(way), 1000 * Math.sin(way)];
    const seen = thrown(projector)([correction.across * x + correction.slant * y, correction.down * y]);
    return Math.abs(apart([0, 0], seen) - 1000);
  });
  return Math.max(...off);
}

function corrected(...[lengths, units]: Parameters<typeof projectorCorrection>) {
  const result = projectorCorrection(lengths, units);
  if (!result.ok || !result.value) throw new Error('not corrected');
  return result.value;
}

const projectors = fc.record({
  across: between(0.95, 1.05),
  down: between(0.95, 1.05),
  skew: between(-3, 3),
  turn: between(-180, 180),
});
const eachProjector = (name: string, holds: (projector: Projector) => void) =>
  fc.assert(fc.property(projectors, holds), chance(name, 300));

describe('a projector that is off by up to 5 % either way and by 3° at the corner', () => {
  it.each(['cm', 'inch'] as const)('is true again where its four lengths are known exactly, in %s', (units) => {
    eachProjector(`projector in ${units}`, (projector) => {
      const correction = corrected(
        measured(projector, units, (length) => length),
        units,
      );
      expect(worstOff(projector, correction)).toBeLessThan(1e-6);
      expect(correction.skew).toBeCloseTo(projector.skew, 6);
      expect(correction.misfit).toBeLessThan(1e-6);
    });
  });

  it('is true to what a tape can tell where they were read to a millimetre', () => {
    eachProjector('projector read to a millimetre', (projector) => {
      const lengths = measured(projector, 'cm', (length) => READ * Math.round(length / READ));
      const correction = corrected(lengths, 'cm');
      // Half a millimetre on each side of 80 by 60 cm, and the angle that the diagonals then leave: a millimetre and a half a metre.
      expect(worstOff(projector, correction)).toBeLessThan(1.5 * READ);
      expect(correction.misfit).toBeLessThan(READ);
    });
  });

  it('is nearer with four lengths than with three, where one of them is a millimetre off', () => {
    const projector = { across: 1.02, down: 0.97, skew: 1.2, turn: 7 };
    const exact = measured(projector, 'cm', (length) => length);
    const wrong = { ...exact, diagonalAC: 1000 / (1000 / exact.diagonalAC + 1) };
    const three = corrected({ ...wrong, diagonalBD: 'auto' }, 'cm');
    expect(worstOff(projector, corrected(wrong, 'cm'))).toBeLessThan(0.9 * worstOff(projector, three));
  });
});

describe('lengths', () => {
  const projector = { across: 1.01, down: 0.99, skew: 1.5, turn: 0 };
  const exact = measured(projector, 'cm', (length) => length);

  it('correct nothing without both sides, and no slant without a diagonal', () => {
    for (const side of ['across', 'down'] as const)
      expect(projectorCorrection({ ...exact, [side]: 'auto' }, 'cm')).toEqual({ ok: true, value: undefined });
    const plain = corrected({ ...exact, diagonalAC: 'auto', diagonalBD: 'auto' }, 'cm');
    expect(plain).toMatchObject({ slant: -0, skew: -0, misfit: undefined });
    expect(plain.across).toBeCloseTo(1 / 1.01, 9);
    expect(plain.down).toBeCloseTo(1 / 0.99, 9);
  });

  it.each(['diagonalAC', 'diagonalBD'] as const)('tell the slant by %s alone', (diagonal) => {
    const other = diagonal === 'diagonalAC' ? 'diagonalBD' : 'diagonalAC';
    const correction = corrected({ ...exact, [other]: 'auto' }, 'cm');
    expect(worstOff(projector, correction)).toBeLessThan(1e-6);
    expect(correction.misfit).toBeUndefined();
  });

  it('are refused in one sentence where the diagonals can’t belong to the sides', () => {
    const result = projectorCorrection(
      { test: 'large', across: 1, down: 1, diagonalAC: 1 / 1.03, diagonalBD: 1 },
      'cm',
    );
    if (result.ok) throw new Error('taken');
    expect(result.problems.map((problem) => printProblem(problem, 'cm'))).toEqual([
      expect.stringMatching(
        /^projector\.diagonalAC: .*these diagonals can’t belong to these sides: .*off by 0\.\d cm or more/,
      ),
    ]);
  });

  it('are refused where the corner would be further off the square than any projector', () => {
    const result = projectorCorrection(
      { ...measured({ ...projector, skew: 7 }, 'cm', (l) => l), diagonalAC: 'auto' },
      'cm',
    );
    expect(result.ok ? [] : result.problems.map(({ field }) => field)).toEqual(['projector.diagonalBD']);
  });

  it('of a keystone of two hundredths contradict each other, which is told with what to do', () => {
    // A to B is 1 % too short, D to C 1 % too long: no parallelogram.
    const [wide, high] = [800, 600];
    const [a, b, c, d] = [
      [4, 0],
      [796, 0],
      [804, high],
      [-4, high],
    ] as const;
    const lengths = {
      test: 'large' as const,
      across: wide / apart(a, b),
      down: high / apart(a, d),
      diagonalAC: 1000 / apart(a, c),
      diagonalBD: 1000 / apart(b, d),
    };
    const remarks = projectorRemarks(corrected(lengths, 'cm'));
    expect(remarks.map(({ template }) => template)).toEqual([expect.stringMatching(/contradict.*D to C/)]);
  });

  it('of a projector that is far off are doubted', () => {
    const far = { across: 1.04, down: 1.04, skew: 2.5, turn: 0 };
    expect(
      projectorRemarks(
        corrected(
          measured(far, 'cm', (l) => l),
          'cm',
        ),
      ),
    ).toHaveLength(2);
    expect(projectorRemarks(corrected(exact, 'cm'))).toEqual([]);
  });
});
