import { describe, expect, it } from 'vitest';
import { type BlockOptions, type Blocks, blocksCorrected, draftBlocks } from '../../src/block';
import { prepareBody } from '../../src/body';
import { curveMap, edgeLength, outlineEdge, pathStart } from '../../src/plane';

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'round', waistGirth: 800, hipGirth: 1000, hipDepth: 200, bodyRise: 260, insideLeg: 780 };
const { blocks } = draftBlocks(prepareBody(BODY), OPTIONS);

/** A back that is longer all over by so much below the waist, as somebody else drew it: its inseam is no longer the front’s. */
const longer = (by: number): Blocks => ({
  ...blocks,
  back: {
    ...blocks.back,
    edges: blocks.back.edges.map(({ name, curves }) => ({
      name,
      curves: curves.map((curve) => curveMap(curve, ({ x, y }) => ({ x, y: y > 600 ? y + by : y }))),
    })),
  },
});

const nothing = { frontUp: 0, frontOut: 0, backUp: 0, backOut: 0 };
const inseam = (part: Blocks['front']) => outlineEdge(part.edges, 'inseam');
const crotchPoint = (part: Blocks['front']) => pathStart(inseam(part).curves);

describe('blocks corrected', () => {
  it('keep both crotch points where they are when the waist alone is moved, also where the inseams differ', () => {
    const own = longer(9);
    expect(edgeLength(inseam(own.back)) - edgeLength(inseam(own.front))).toBeGreaterThan(5);
    for (const change of [{ backUp: -10 }, { frontUp: 12 }]) {
      const { front, back, backCrotchDrop } = blocksCorrected(own, { ...nothing, ...change });
      expect(crotchPoint(front)).toEqual(crotchPoint(own.front));
      expect(crotchPoint(back)).toEqual(crotchPoint(own.back));
      expect(backCrotchDrop).toBe(own.backCrotchDrop);
    }
  });

  it('tell how high centre back stands after it was moved', () => {
    expect(blocksCorrected(blocks, { ...nothing, backUp: 12 }).backRaise).toBeCloseTo(blocks.backRaise + 12, 9);
  });

  it('keep the inseam from the knee down', () => {
    const { front } = blocksCorrected(blocks, { ...nothing, frontOut: 12 });
    expect(inseam(front).curves.slice(1)).toEqual(inseam(blocks.front).curves.slice(1));
  });

  it('have inseams of one length whichever fork is made longer', () => {
    for (const change of [{ frontOut: 12 }, { backOut: 12 }, { frontOut: 8, backOut: -8 }]) {
      const { front, back } = blocksCorrected(blocks, { ...nothing, ...change });
      expect(edgeLength(inseam(back))).toBeCloseTo(edgeLength(inseam(front)), 4);
      expect(crotchPoint(front).x).toBeCloseTo(crotchPoint(blocks.front).x + (change.frontOut ?? 0), 9);
      expect(crotchPoint(back).x).toBeCloseTo(crotchPoint(blocks.back).x - (change.backOut ?? 0), 9);
    }
  });
});
