import { describe, expect, it } from 'vitest';
import { plateBodies } from '../../../.house/plate-bodies';
import { type Block, type BlockOptions, draftBlocks } from '../../../src/block';
import { type BodyGiven, prepareBody } from '../../../src/body';
import {
  distance,
  edgeLength,
  flattenCurves,
  outlineCrossings,
  outlineCurves,
  outlineEdge,
  pathEnd,
  pathFoot,
  subtract,
} from '../../../src/plane';
import {
  type BlockNumbers,
  blocksBrought,
  type NumbersPair,
  numbersOf,
  pairByNumbers,
  type TapeKey,
} from '../../../src/trace';
import { printPhrase, Refusal } from '../../../src/words';

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const RISE = 260;
const PARTS = ['front', 'back'] as const;
/** A tape is read to 1 mm; so each seam comes back within 1.5 mm, as people are promised. */
const SEAM = 1.5;
/** No tape tells how an edge bends between two corners: an outline may lie so far beside the one that was measured. */
const BESIDE = 2.5;

/** What a tape reads, to a millimetre. */
function taped(block: Block): BlockNumbers {
  const { darts, ...lengths } = numbersOf(block);
  const read = Object.entries(lengths).map(([key, length]) => [key, Math.round(length)]);
  return { ...Object.fromEntries(read), darts };
}
const tapedPair = ({ front, back }: { front: Block; back: Block }): NumbersPair => ({
  front: taped(front),
  back: taped(back),
});
const draftedFor = (body: object) => draftBlocks(prepareBody({ label: '', ...body } as BodyGiven), OPTIONS).blocks;
const usual = draftedFor({ waistGirth: 800, hipGirth: 1000, hipDepth: 200, bodyRise: 260, insideLeg: 780 });
const without = (numbers: BlockNumbers, ...keys: readonly TapeKey[]): BlockNumbers =>
  Object.fromEntries(Object.entries(numbers).filter(([key]) => keys.every((one) => one !== key)));

const SEAMS = {
  waist: ['waist'],
  'centre and crotch': ['centre', 'crotch'],
  inseam: ['inseam'],
  hem: ['hem'],
  side: ['side'],
} as const;
const seamOf = ({ edges }: Block, name: keyof typeof SEAMS): number =>
  SEAMS[name].reduce((sum, edge) => sum + edgeLength(outlineEdge(edges, edge)), 0);

/** How far one outline lies beside the other, both from the waist's end at the side. */
function beside(drawn: Block, measured: Block): number {
  const line = (block: Block) => {
    const origin = pathEnd(outlineEdge(block.edges, 'side').curves);
    return flattenCurves(outlineCurves(block.edges), 0.1).map((p) => subtract(p, origin));
  };
  const other = line(measured);
  return Math.max(...line(drawn).map((p) => pathFoot(other, p).distance));
}

const fromNumbers = (pair: NumbersPair, rise: number) => blocksBrought({ source: 'numbers', ...pair }, rise);

const refused = (pair: NumbersPair): readonly string[] => {
  try {
    fromNumbers(pair, RISE);
  } catch (error) {
    if (error instanceof Refusal)
      return error.problems.map(({ field, phrase }) => `${field} ${printPhrase(phrase, 'cm')}`);
    throw error;
  }
  return [];
};

describe('a block that was measured on its paper to 1 mm', () => {
  const bodies = plateBodies.slice(0, 4).flat();

  it.each(bodies.map(({ name, body }) => [name, body] as const))('of a body “%s” comes back', (_, body) => {
    const blocks = draftedFor(body);
    const drawn = fromNumbers(tapedPair(blocks), RISE);
    for (const part of PARTS) {
      for (const seam of Object.keys(SEAMS) as (keyof typeof SEAMS)[])
        expect(Math.abs(seamOf(drawn[part], seam) - seamOf(blocks[part], seam)), `${part} ${seam}`).toBeLessThan(SEAM);
      expect(beside(drawn[part], blocks[part]), part).toBeLessThan(BESIDE);
    }
    const { front, back } = pairByNumbers(tapedPair(blocks));
    expect([front, back].flatMap(({ estimated, contradictions }) => [...estimated, ...contradictions])).toEqual([]);
  });

  it('has its darts where they were, each with both ends on the waist edge', () => {
    const { back } = fromNumbers(tapedPair(usual), RISE);
    const waist = flattenCurves(outlineEdge(back.edges, 'waist').curves);
    expect(back.darts).toHaveLength(usual.back.darts.length);
    back.darts.forEach((dart, i) => {
      const before = usual.back.darts[i] as (typeof usual.back.darts)[number];
      expect(Math.abs(distance(dart.left, dart.right) - distance(before.left, before.right))).toBeLessThan(0.5);
      for (const end of [dart.left, dart.right]) expect(pathFoot(waist, end).distance).toBeLessThan(0.05);
      expect(dart.tip.y).toBeGreaterThan(dart.left.y + 40);
    });
  });

  it('runs through its corners smoothly, whatever the lengths along its edges make of the bends', () => {
    const { front, ...pair } = tapedPair(usual);
    const longer = { ...front, side: (front.side ?? 0) + 1, inseam: (front.inseam ?? 0) + 1 };
    const { edges } = fromNumbers({ ...pair, front: longer }, RISE).front;
    for (const name of ['side', 'inseam'] as const) {
      const { curves } = outlineEdge(edges, name);
      curves.slice(1).forEach(([knot, next], i) => {
        const [, , last] = curves[i] as (typeof curves)[number];
        const turn = Math.atan2(next.y - knot.y, next.x - knot.x) - Math.atan2(knot.y - last.y, knot.x - last.x);
        expect(Math.abs(Math.sin(turn)), `${name} ${i}`).toBeLessThan(1e-6);
      });
    }
  });
});

describe('a table with gaps', () => {
  const whole = tapedPair(usual);

  it('is drawn by the proportions of its own block, which is told', () => {
    const kept = ['waistToHip', 'hipToCrotch', 'crotchToHem', 'hipWidth', 'hemWidth', 'waistWidth'] as const;
    const few = (numbers: BlockNumbers) => Object.fromEntries(kept.map((key) => [key, numbers[key]]));
    const pair = { front: few(whole.front), back: few(whole.back) };
    expect(pairByNumbers(pair).front.estimated).toEqual(['fork', 'centreRise', 'centreLean', 'curveStart']);
    const drawn = fromNumbers(pair, RISE);
    for (const part of PARTS) expect(beside(drawn[part], usual[part]), part).toBeLessThan(20);
  });

  it('takes a height from the other block, and the height to the hem from the inseam', () => {
    const pair = { front: without(whole.front, 'crotchToHem', 'side'), back: without(whole.back, 'waistToHip') };
    const { front, back } = pairByNumbers(pair);
    expect([front.estimated, back.estimated]).toEqual([[], ['waistToHip']]);
    const drawn = fromNumbers(pair, RISE);
    expect(numbersOf(drawn.front).crotchToHem).toBeCloseTo(numbersOf(usual.front).crotchToHem, -1);
    expect(Math.abs(numbersOf(drawn.back).waistToHip - numbersOf(usual.back).waistToHip)).toBeLessThan(3);
  });

  it('keeps the proportions of a block of half the size', () => {
    const half = (numbers: BlockNumbers): BlockNumbers => ({
      waistToHip: (numbers.waistToHip as number) / 2,
      hipToCrotch: (numbers.hipToCrotch as number) / 2,
      hipWidth: (numbers.hipWidth as number) / 2,
    });
    const drawn = fromNumbers({ front: half(whole.front), back: half(whole.back) }, RISE / 2);
    for (const part of PARTS)
      for (const key of ['crotchToHem', 'waistWidth', 'fork', 'hemWidth', 'crotchWidth'] as const) {
        const [one, other] = [numbersOf(drawn[part])[key], numbersOf(usual[part])[key]];
        expect(one / other, `${part} ${key}`).toBeGreaterThan(0.42);
        expect(one / other, `${part} ${key}`).toBeLessThan(0.58);
      }
  });

  it('draws a block even where nothing was measured', () => {
    const { front, back } = fromNumbers({ front: {}, back: {} }, RISE);
    for (const { edges } of [front, back]) expect(outlineCrossings(outlineCurves(edges))).toEqual([]);
  });
});

describe('numbers that contradict each other', () => {
  const whole = tapedPair(usual);
  const spoilt = (key: TapeKey, by: number): NumbersPair => ({
    ...whole,
    front: { ...whole.front, [key]: (whole.front[key] as number) + by },
  });
  const contradicted = (pair: NumbersPair) => {
    const { front, back } = pairByNumbers(pair);
    return [...front.contradictions, ...back.contradictions];
  };

  it.each([
    ['inseam', 15],
    ['inseam', -15],
    ['side', 20],
    ['crotchSeam', 25],
    ['waistEdge', -12],
    ['crotchToHem', 20],
    ['waistToHip', 20],
  ] as const)('%s off by %i mm is named, with how far it is off', (key, by) => {
    const [first] = contradicted(spoilt(key, by));
    expect([first?.part, first?.key]).toEqual(['front', key]);
    expect(Math.abs((first?.given ?? 0) - (first?.others ?? 0) - by)).toBeLessThan(3);
  });

  it('are all drawn with, none left out', () => {
    const [first] = contradicted(spoilt('inseam', 15));
    const { given = 0, others = 0, drawn = 0 } = first ?? {};
    expect(drawn).toBeGreaterThan(others + 1);
    expect(drawn).toBeLessThan(given - 1);
  });

  it('by far too much are refused, with what the others make it', () => {
    const told = refused(spoilt('inseam', 200)).join();
    expect(told).toMatch(/^block\.front\.inseam can’t be [\d.]+ cm, for the other numbers make it [\d.]+ cm/);
  });

  it('are not found in what a tape reads a millimetre off', () => {
    for (const key of ['inseam', 'side', 'hipWidth', 'crotchToHem'] as const)
      expect(contradicted(spoilt(key, 1)), key).toEqual([]);
  });
});

describe('a table that leaves no block to draw is refused', () => {
  it.each([
    [{ crotchToKnee: 400, crotchToHem: 300 }, 'block.front.crotchToKnee must be less than the 30 cm to the hem'],
    [{ curveStart: 300, waistToHip: 200, hipToCrotch: 80 }, 'block.front.curveStart must be less than the 28 cm'],
    [
      {
        waistEdge: 100,
        darts: [
          { intake: 60, length: 90, fromSide: 30 },
          { intake: 60, length: 90, fromSide: 60 },
        ],
      },
      'block.front.darts must take in less than the 10 cm',
    ],
  ] satisfies [BlockNumbers, string][])('%o', (front, sentence) => {
    expect(refused({ front, back: {} }).join()).toContain(sentence);
  });
});
