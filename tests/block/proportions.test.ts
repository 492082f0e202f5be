import { describe, expect, it } from 'vitest';
import { type BlockOptions, draftBlocks } from '../../src/block';
import { correctionMoves, NO_CORRECTIONS } from '../../src/block/corrections';
import { proportionsOf, UNFITTED } from '../../src/block/proportions';
import { prepareBody } from '../../src/body';
import { outlineEdge, pathEnd } from '../../src/plane';

// The figures of `figures.ts`, reckoned by hand on round bodies; their sources stand beside them there.

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'round', waistGirth: 800, hipGirth: 1000, hipDepth: 200, bodyRise: 260, insideLeg: 780 };
const at = (body: object = {}, fit: Partial<typeof UNFITTED> = {}) =>
  proportionsOf(prepareBody({ ...BODY, ...body }), OPTIONS, { ...UNFITTED, ...fit });
const blocksOf = (body: object) => draftBlocks(prepareBody({ ...BODY, ...body }), OPTIONS).blocks;

/** A hip of 1000 with 2 in of ease: a quarter each, 10 mm less in front and more behind. */
const [FRONT, BACK] = [252.7, 272.7];

describe('a round body', () => {
  it('has its widths, forks and levels', () => {
    expect(at()).toMatchObject({ k: 1, frontNet: FRONT, backNet: BACK, frontWidth: FRONT, backWidth: BACK });
    const { extensionFront, extensionBack, curveRiseFront, curveRiseBack } = at();
    expect([extensionFront, extensionBack]).toEqual([0.26 * FRONT, 0.45 * BACK]);
    // The hip line lies 91 above the crotch line: within the back curve's bounds, beyond the front's 1.2 of its fork.
    expect([curveRiseFront, curveRiseBack]).toEqual([1.2 * 0.26 * FRONT, 91]);
    expect(at()).toMatchObject({ riseEase: 31, crotchEase: 25, crotchLevel: 291, hipLevel: 200 });
  });

  it('has its rise ease evened out between the two sizes in print', () => {
    expect(at({ hipGirth: 875 }).riseEase).toBeCloseTo((13 + 6) * (875 / 900), 9);
    expect(at({ hipGirth: 927.5 }).riseEase).toBeCloseTo(13 + 6 + 6, 9);
    expect(at({ hipGirth: 1200 }).riseEase).toBeCloseTo(13 + 12 + 6, 9);
    expect(at({ nappy: true }).riseEase).toBeCloseTo(31 + 25, 9);
  });

  it('raises centre back by hip/28 and leans it by 0.48 of what a quarter of the waist must lose', () => {
    expect(at().backRaise).toBeCloseTo(1000 / 28, 9);
    expect(at({ waistGirth: 700 }).backRaise).toBeCloseTo(1000 / 28 + 4, 9);
    expect(at({ waistGirth: 980 }).backRaise).toBeCloseTo(1000 / 28 - 5, 9);
    expect(at().frontDrop).toBeCloseTo(8, 9);
    expect(at().leanBack).toBeCloseTo((0.48 * (1050.8 - 825)) / 4, 9);
    expect(at().leanOut).toBe(0);
  });

  it('keeps a low hip line 45 above the crotch line', () => {
    expect(at({ hipDepth: 255 }).hipLevel).toBeCloseTo(291 - 45, 9);
  });
});

describe('the fit', () => {
  const across = FRONT + BACK - (0.48 * (1050.8 - 825)) / 4;
  const steepest = Math.tan((5.7 * Math.PI) / 180) * across;

  it('first raises the back, and tilts the waist of a curvy body as far as a straight fold may', () => {
    expect(at({}, { fit: 1 }).backRaise).toBeCloseTo(65, 9);
    expect(at({}, { fit: 1 }).frontDrop).toBeCloseTo(steepest - 65, 9);
    expect(at({}, { fit: -1 }).backRaise).toBeCloseTo(18, 9);
    expect(at({}, { fit: -1 }).frontDrop).toBeCloseTo(28 + 9 - 18, 9);
    // Half as curvy: half of the room above the usual tilt.
    const half = at({ waistGirth: 900 });
    const tilt = half.backRaise + half.frontDrop;
    const most = Math.min(65, Math.tan((5.7 * Math.PI) / 180) * (FRONT + BACK - half.leanBack));
    const fitted = at({ waistGirth: 900 }, { fit: 1 });
    expect(fitted.backRaise + fitted.frontDrop).toBeCloseTo(tilt + 0.5 * (most - tilt), 9);
  });

  it('then deepens the crotch by up to 25, or raises it by 10', () => {
    expect(at({}, { fit: 1 }).fitDepth).toBe(0);
    expect(at({}, { fit: 1.5 }).riseEase).toBeCloseTo(31 + 12.5, 9);
    expect(at({}, { fit: 2 }).riseEase).toBeCloseTo(31 + 25, 9);
    expect(at({}, { fit: -2 }).riseEase).toBeCloseTo(31 - 10, 9);
    expect(at({ hipGirth: 600 }, { fit: 2 }).fitDepth).toBeCloseTo((25 * 2) / 3, 9);
  });

  it('and last moves the forks, within their bounds', () => {
    const forks = (fit: object) => {
      const { extensionFront, extensionBack } = at({}, fit);
      return [extensionFront / FRONT, extensionBack / BACK].map((share) => Number(share.toFixed(6)));
    };
    expect(forks({ fit: 2 })).toEqual([0.26, 0.45]);
    expect(forks({ fit: 2.5 })).toEqual([0.29, 0.475]);
    expect(forks({ fit: 3 })).toEqual([0.32, 0.5]);
    expect(forks({ fit: -3 })).toEqual([0.22, 0.37]);
  });

  it('moves the inseam point within the forks’ bounds, their sum kept', () => {
    const sum = 0.26 * FRONT + 0.45 * BACK;
    for (const [shift, front] of [
      [5, 0.26 * FRONT + 5],
      [40, 0.34 * FRONT],
      [-40, 0.22 * FRONT],
    ] as const) {
      const { extensionFront, extensionBack } = at({}, { shift });
      expect(extensionFront).toBeCloseTo(front, 9);
      expect(extensionFront + extensionBack).toBeCloseTo(sum, 9);
    }
  });

  it('tips the waist for the front part as far as the tilt allows, front and back by half each', () => {
    const tilt = 1000 / 28 + 8;
    const up = (tilt - 34.5) / 2;
    expect(at({}, { tip: 40 }).frontDrop).toBeCloseTo(8 - up, 9);
    expect(at({}, { tip: 40 }).backRaise).toBeCloseTo(1000 / 28 - up, 9);
    expect(at({}, { tip: -40 }).frontDrop).toBeCloseTo(8 + (steepest - tilt) / 2, 9);
    const small = { hipGirth: 600, waistGirth: 480 };
    const plain = at(small);
    const room = (plain.backRaise + plain.frontDrop - (34.5 * 2) / 3) / 2;
    expect(at(small, { tip: 40 }).frontDrop).toBeCloseTo(plain.frontDrop - room, 9);
  });
});

describe('a belly', () => {
  // 8°, over the line from the waist to a curve that begins under the longest fork.
  const out = Math.tan((8 * Math.PI) / 180) * (291 - 91 + 6);

  it('leans centre front out, and counts on the usual spread, before it widens the seat', () => {
    const p = at({ waistGirth: 1100 });
    expect(p.frontDrop).toBeCloseTo(8 - 14, 9);
    expect(p.leanOut).toBeCloseTo(out, 9);
    expect([p.frontWidth, p.backWidth]).toEqual([FRONT, BACK]);
    expect(at({ waistGirth: 1040 }).leanOut).toBeCloseTo((1040 + 25 - 1050.8) / 2, 9);
    expect(at({ waistGirth: 1040 }).frontDrop).toBeCloseTo(8 - 0.2 * 40, 9);
  });

  it('leans centre front out by less where so wide an edge would stand askew to it', () => {
    // Its tilt is the least of a body without a waist, 28 mm; the edge may lie 5.7° off square to centre front.
    const p = at({ hipGirth: 1500, waistGirth: 1700 });
    const [front, back] = [(1500 + 50.8) / 4 - 10, (1500 + 50.8) / 4 + 10];
    const degrees = 5.7 + (Math.atan(28 / (front + back)) * 180) / Math.PI;
    expect(degrees).toBeLessThan(8);
    const line = p.crotchLevel - Math.max(91, 0.9 * 0.34 * front) - p.frontDrop;
    expect(p.leanOut).toBeCloseTo(Math.tan((degrees * Math.PI) / 180) * line, 6);
  });

  it('widens it by what is left, seven parts in front and three behind', () => {
    const p = at({ waistGirth: 1250 });
    const left = (1250 + 25 - 1050.8) / 2 - out - 25.4;
    expect(p.abdomenWidened).toBeCloseTo(left, 9);
    expect(p.frontWidth).toBeCloseTo(FRONT + 0.7 * left, 9);
    expect(p.backWidth).toBeCloseTo(BACK + 0.3 * left, 9);
  });
});

describe('the back', () => {
  const upperEnd = (hipDepth: number) => pathEnd(outlineEdge(blocksOf({ hipDepth }).back.edges, 'centre').curves);

  it('has its width where its curve begins, if that is above a low hip line', () => {
    expect(upperEnd(240).y).toBeCloseTo(291 - 0.66 * 0.45 * BACK, 6);
    expect(upperEnd(240).x).toBeCloseTo(-BACK, 6);
    expect(upperEnd(200).x).toBeCloseTo(-BACK, 6);
    // Under a high hip line the leaning centre has gone on outwards.
    expect(upperEnd(120).x).toBeLessThan(-BACK - 1);
  });

  it('has darts that end half of the way down to the hip line in front, three quarters behind', () => {
    const { front, back } = blocksOf({ waistGirth: 640 });
    for (const [block, share] of [
      [front, 0.5],
      [back, 0.75],
    ] as const) {
      expect(block.darts.length).toBeGreaterThan(0);
      for (const { left, right, tip } of block.darts) {
        const top = (left.y + right.y) / 2;
        expect(tip.y).toBeCloseTo(top + share * (200 - top), 0);
      }
    }
  });
});

describe('corrections that meet', () => {
  it('give the room that one leaves to another', () => {
    const moves = (seen: object, room: number) => correctionMoves({ ...NO_CORRECTIONS, ...seen }, room);
    expect(moves({ sittingPull: 30 }, 12).sittingPull).toMatchObject({ backUp: 12, backOut: 18 });
    expect(moves({ sittingPull: 30, swayBack: 10 }, 12).sittingPull).toMatchObject({ backUp: 22, backOut: 8 });
    expect(moves({ sittingPull: 30, flatSeat: 10 }, 12).sittingPull).toMatchObject({ backUp: 22, backOut: 8 });
    expect(moves({ sittingPull: 30, prominentAbdomen: 10 }, 12).sittingPull).toMatchObject({ backUp: 22 });
    expect(moves({ seated: 40 }, 12).seated).toMatchObject({ frontUp: -12, backUp: 0, backOut: 20, longer: 20 });
  });
});
