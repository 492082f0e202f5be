import { describe, expect, it } from 'vitest';
import { type BlockOptions, draftBlocks } from '../../src/block';
import { prepareBody } from '../../src/body';
import {
  curveCurvature,
  curvePoint,
  curveTangent,
  edgeLength,
  outlineEdge,
  pathEnd,
  pathEndWay,
  pathStart,
  pathStartWay,
  turnBetween,
} from '../../src/plane';

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'a', waistGirth: 742, hipGirth: 1020, hipDepth: 208, bodyRise: 272, insideLeg: 758 };
const blocksOf = (body: object = {}, options: Partial<BlockOptions> = {}) =>
  draftBlocks(prepareBody({ ...BODY, ...body }), { ...OPTIONS, ...options });

describe('drafted blocks', () => {
  it('are as wide at the hip as hip and ease: a belly is given room by centre front and the spread first', () => {
    const width = (body: object) => {
      const { proportions: p } = blocksOf(body);
      return 2 * (p.frontWidth + p.backWidth);
    };
    expect(width({})).toBeCloseTo(1020 + 50.8, 9);
    expect(width({ waistGirth: 1060, hipGirth: 1020 })).toBeCloseTo(1020 + 50.8, 9);
    expect(width({ waistGirth: 900, hipGirth: 1000, highHipGirth: 1040 })).toBeCloseTo(1000 + 50.8, 9);
    // The seat once held the whole belly: 1360.
    const belly = width({ waistGirth: 1309, hipGirth: 1100 });
    expect(belly).toBeGreaterThan(1100 + 50.8);
    expect(belly).toBeLessThan(1240);
  });

  it('have inseams of one length', () => {
    for (const body of [{}, { waistGirth: 1180, hipGirth: 1100 }, { hipGirth: 1300, insideLeg: 700 }]) {
      const { front, back } = blocksOf(body).blocks;
      expect(edgeLength(outlineEdge(front.edges, 'inseam'))).toBeCloseTo(
        edgeLength(outlineEdge(back.edges, 'inseam')),
        4,
      );
    }
  });

  it('are closed, edge to edge', () => {
    const { blocks } = blocksOf();
    for (const block of [blocks.front, blocks.back]) {
      block.edges.forEach((edge, i) => {
        const next = block.edges[(i + 1) % block.edges.length] ?? edge;
        const [a, b] = [pathEnd(edge.curves), pathStart(next.curves)];
        expect(Math.hypot(a.x - b.x, a.y - b.y), `${block.part} ${edge.name}`).toBeLessThan(1e-9);
      });
    }
  });

  it('run on without a corner from centre to crotch, and meet the inseam squarely', () => {
    const { blocks } = blocksOf();
    for (const block of [blocks.front, blocks.back]) {
      const at = (name: 'centre' | 'crotch' | 'inseam' | 'side') => outlineEdge(block.edges, name).curves;
      expect(Math.abs(turnBetween(pathEndWay(at('centre')), pathStartWay(at('crotch'))))).toBeLessThan(1e-6);
      expect(Math.abs(turnBetween(pathEndWay(at('crotch')), pathStartWay(at('inseam'))))).toBeCloseTo(Math.PI / 2, 6);
      for (const name of ['inseam', 'side'] as const) {
        const curves = at(name);
        for (let i = 1; i < curves.length; i += 1) {
          const [before, after] = [curves[i - 1], curves[i]];
          if (before && after)
            expect(Math.abs(turnBetween(curveTangent(before, 1), curveTangent(after, 0)))).toBeLessThan(1e-6);
        }
      }
    }
  });

  it('end their waist square to the centre line, and their grainline above the hem', () => {
    // A back that leans as far as any.
    const { blocks } = blocksOf({ waistGirth: 620 });
    for (const block of [blocks.front, blocks.back]) {
      const at = (name: 'waist' | 'centre' | 'hem') => outlineEdge(block.edges, name).curves;
      expect(Math.abs(turnBetween(pathEndWay(at('waist')), pathStartWay(at('centre'))))).toBeCloseTo(Math.PI / 2, 9);
      const [top, bottom] = block.grainline;
      const hem = pathStart(at('hem')).y;
      expect(top.y).toBe(block.hipLevel);
      expect(bottom.y).toBeCloseTo(hem - 0.1 * (hem - block.kneeLevel), 9);
    }
  });

  it('lead the side through the knee in one bend, not like an elbow', () => {
    // It once bent in a radius of 104 mm there and fell straight below it.
    const rounded = { waistGirth: 880, hipGirth: 1080, hipDepth: 190, bodyRise: 262, insideLeg: 640 };
    for (const body of [{}, rounded]) {
      const { front, back } = blocksOf(body).blocks;
      for (const block of [front, back]) {
        const places = Array.from({ length: 201 }, (_, i) => i / 200);
        const bends = outlineEdge(block.edges, 'side').curves.flatMap((curve) =>
          places
            .filter((t) => Math.abs(curvePoint(curve, t).y - block.kneeLevel) < 100)
            .map((t) => Math.abs(curveCurvature(curve, t))),
        );
        expect(1 / Math.max(...bends)).toBeGreaterThan(180);
      }
    }
  });

  it('shape the waist to its girth and ease, when darts are taken', () => {
    const { proportions: p } = blocksOf();
    const sum = (widths: readonly number[]) => widths.reduce((a, b) => a + b, 0);
    const half =
      p.frontWidth + p.backWidth + p.leanOut - p.leanBack - 2 * p.side - sum(p.dartsFront) - sum(p.dartsBack);
    expect(2 * half - p.shapingLeft).toBeCloseTo(742 + 25, 6);
    expect(Math.max(...p.dartsFront, ...p.dartsBack)).toBeLessThanOrEqual(25);
  });

  it('give a nappy its room', () => {
    const depth = (nappy: boolean) => draftBlocks(prepareBody({ ...BODY, nappy }), OPTIONS).proportions.crotchLevel;
    expect(depth(true) - depth(false)).toBeCloseTo(25, 9);
  });
});

// Extension beyond a quarter of the hip, hip 1000 mm. Published: front hip/16 (62.5) to hip/12 (83.3) — *The Practical
// Designer* (1911), lesson 82, and *The Practical Designer for Women's and Misses' Underwear* (1918), lesson 411 (read);
// back hip/8 (125), a textbook rule (memory).
describe('the extensions lie where printed drafts put them', () => {
  it('in front between hip/16 and hip/12, behind about hip/8', () => {
    const { blocks } = blocksOf({ hipGirth: 1000 });
    expect(blocks.extensionFront).toBeGreaterThan(62.5);
    expect(blocks.extensionFront).toBeLessThan(83.3);
    expect(Math.abs(blocks.extensionBack - 125)).toBeLessThan(5);
  });
});
