import { describe, expect, it } from 'vitest';
import { type BlockOptions, FORK, netWidths } from '../../src/block';
import { prepareBody } from '../../src/body';
import { fittedBlocks, legCrotchLength, referenceLeg } from '../../src/leg';
import { distance, pathLength } from '../../src/plane';

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 };

function fitted(more: object = {}) {
  const body = prepareBody({ ...BODY, ...more });
  const drafted = fittedBlocks(body, OPTIONS);
  const leg = referenceLeg(drafted.blocks, body);
  const front = distance(leg.front.waistPoint, leg.front.curveEnd) + pathLength(leg.front.crotch);
  return { ...drafted, length: legCrotchLength(leg.front, leg.back), front };
}

describe('a measured crotch length', () => {
  it.each([-60, -40, -10, 0, 15, 60, 100])('%f mm off the usual one is reached with its ease', (off) => {
    const usual = fitted();
    const crotchLength = usual.length - usual.proportions.crotchEase + off;
    const { length, proportions, blocks } = fitted({ crotchLength });
    expect(length).toBeCloseTo(crotchLength + proportions.crotchEase, 2);
    expect(blocks.crotchRest).toBeCloseTo(0, 2);
  });

  it('goes behind and up first, then down, then into the forks', () => {
    const plain = fitted().proportions;
    const at = (crotchLength: number) => fitted({ crotchLength }).proportions;
    const unfitted = fitted().length - plain.crotchEase;
    const [raised, deep] = [at(unfitted + 20), at(unfitted + 75)];
    expect(raised.backRaise).toBeGreaterThan(plain.backRaise);
    expect([raised.crotchLevel, raised.extensionFront]).toEqual([plain.crotchLevel, plain.extensionFront]);
    expect(deep.crotchLevel).toBeGreaterThan(plain.crotchLevel + 10);
    expect(deep.extensionBack).toBe(plain.extensionBack);
    expect(at(unfitted + 115).extensionBack).toBeGreaterThan(plain.extensionBack + 5);
  });

  it('that no cutter would reach leaves its millimetres, and forks within their bounds', () => {
    const { blocks } = fitted({ crotchLength: 1100 });
    const [front, back] = netWidths(BODY.hipGirth, OPTIONS, 1);
    expect(blocks.crotchFit).toBe(3);
    expect(blocks.crotchRest).toBeLessThan(-50);
    expect(blocks.extensionFront).toBeCloseTo(FORK.front.most * front, 6);
    expect(blocks.extensionBack).toBeCloseTo(FORK.back.most * back, 6);
  });

  it('of the front alone moves the inseam point and tips the waist, and keeps the whole', () => {
    const plain = fitted({ crotchLength: 715 });
    const moved = fitted({ crotchLength: 715, frontCrotchLength: plain.front - plain.proportions.crotchEase / 2 + 12 });
    expect(moved.front).toBeCloseTo(plain.front + 12, 1);
    expect(moved.length).toBeCloseTo(plain.length, 2);
    expect(moved.blocks.extensionFront + moved.blocks.extensionBack).toBeCloseTo(
      plain.blocks.extensionFront + plain.blocks.extensionBack,
      6,
    );
    expect(fitted({ crotchLength: 715, frontCrotchLength: 400 }).blocks.frontCrotchRest).toBeLessThan(-20);
  });

  it('measured short in front on a small body leaves it a fork', () => {
    // 15 mm off an extension of 12 mm once turned the crotch curve round, and the cut line crossed itself.
    const small = { waistGirth: 450, hipGirth: 450, hipDepth: 103, bodyRise: 140, insideLeg: 350, crotchLength: 340 };
    const plain = fitted(small).blocks.extensionFront;
    const short = fitted({ ...small, frontCrotchLength: 120 }).blocks;
    expect(short.extensionFront).toBeLessThan(plain);
    expect(short.extensionFront).toBeGreaterThan(0.4 * plain);
  });
});
