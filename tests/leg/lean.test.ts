import { describe, expect, it } from 'vitest';
import { centreLean, centresOf, leanRange, straighteningFor } from '../../src/leg';
import { draft, exampleProject } from '../../src/project';

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can not be drafted');
const { joined, leg } = result.value;

describe('a lean set by hand', () => {
  it('is the lean that the centre line then has', () => {
    const { asBlock, upright } = leanRange(joined, 0);
    expect(asBlock).toBeGreaterThan(20);
    expect(upright).toBeCloseTo(0, 6);
    for (const lean of [1, 5, 12.5, asBlock - 1]) {
      const straighten = straighteningFor(joined, 0, lean);
      expect(centreLean('back', centresOf(joined, straighten, 0).back)).toBeCloseTo(lean, 3);
    }
  });

  it('finds the leg’s own straightening back from its lean', () => {
    expect(straighteningFor(joined, 0, centreLean('back', leg.back))).toBeCloseTo(leg.straighten, 5);
  });

  it('stops at the ends', () => {
    const { asBlock } = leanRange(joined, 0);
    expect(straighteningFor(joined, 0, asBlock + 30)).toBe(0);
    expect(straighteningFor(joined, 0, -30)).toBe(1);
  });
});
