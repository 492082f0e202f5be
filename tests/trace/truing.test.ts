import { describe, expect, it } from 'vitest';
import { edgeLength, outlineEdge, type Point, pathEnd, pathStart, point } from '../../src/plane';
import { checksOf, draft, exampleProject } from '../../src/project';
import {
  BLOCK_EDGES,
  blocksBrought,
  broughtTrued,
  type PairDifference,
  pairTrued,
  TRUINGS,
  type TracedBlock,
  type TracedPair,
  type Truing,
  tracedEdges,
  tracedOutline,
} from '../../src/trace';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
const { blocks } = drafted.value;

const asBrought = (part: 'front' | 'back'): TracedBlock => {
  const { edges, grainline, hipLevel, kneeLevel } = blocks[part];
  const [top, bottom] = grainline.map(({ x, y }) => [x, y] as const) as [
    readonly [number, number],
    readonly [number, number],
  ];
  return { edges: tracedEdges(edges), grainline: [top, bottom], hipLevel, kneeLevel };
};
const even: TracedPair = { front: asBrought('front'), back: asBrought('back') };

/** The back with each of its points moved by a rule. */
const backMoved = (move: (p: Point) => Point): TracedPair => ({
  ...even,
  back: {
    ...even.back,
    edges: tracedEdges(
      tracedOutline(even.back).map(({ name, curves }) => ({
        name,
        curves: curves.map(([a, b, c, d]) => [move(a), move(b), move(c), move(d)] as const),
      })),
    ),
  },
});

/** Pairs that are off in one way each. */
const OFF: Readonly<Record<Truing, TracedPair>> = {
  hips: { ...even, back: { ...even.back, hipLevel: even.back.hipLevel + 4 } },
  // All above the hip line drawn out by a thirtieth, and the waist with it.
  waist: backMoved(({ x, y }) => point(x, y < blocks.back.hipLevel ? y - (blocks.back.hipLevel - y) / 30 : y)),
  hem: backMoved(({ x, y }) => point(x, y > 700 ? y + 6 : y)),
  inseams: backMoved(({ x, y }) => point(x, y > 700 ? y + 6 : y)),
  crotch: (() => {
    const crotch = even.back.edges.crotch;
    const last = crotch.at(-1) as (typeof crotch)[number];
    const turned = [last[0], last[1], [last[2][0], last[2][1] + 2], last[3]] as const;
    return { ...even, back: { ...even.back, edges: { ...even.back.edges, crotch: [...crotch.slice(0, -1), turned] } } };
  })(),
};
const differenceOf = (all: readonly PairDifference[], truing: Truing) => all.find((one) => one.truing === truing);

describe('a pair of blocks', () => {
  it('that was drafted differs in nothing that could be trued', () => {
    expect(pairTrued(even, []).left.map(({ truing }) => truing)).toEqual([...TRUINGS]);
    for (const truing of ['hips', 'hem', 'inseams', 'crotch'] as const)
      expect(differenceOf(pairTrued(even, []).left, truing)?.kind, truing).toBe('even');
  });

  it.each(TRUINGS)('that is off is trued when that is chosen: %s', (truing) => {
    const before = differenceOf(pairTrued(OFF[truing], []).left, truing);
    expect(before?.kind).toBe('offered');
    const { pair, made, left } = pairTrued(OFF[truing], [truing]);
    expect(made).toEqual([before]);
    const after = differenceOf(left, truing);
    expect(Math.abs(after?.by ?? Number.NaN)).toBeLessThan(0.01);
    // Neighbours meet still, and nothing moved farther than the whole difference.
    for (const part of ['front', 'back'] as const) {
      const outline = tracedOutline(pair[part]);
      for (const [i, name] of BLOCK_EDGES.entries()) {
        const before = outlineEdge(outline, BLOCK_EDGES.at(i - 1) ?? 'side').curves;
        expect(pair[part].edges[name][0]?.[0], `${part} ${name}`).toEqual([pathEnd(before).x, pathEnd(before).y]);
        const [was, is] = [OFF[truing][part], pair[part]].map((one) =>
          edgeLength(outlineEdge(tracedOutline(one), name)),
        ) as [number, number];
        expect(Math.abs(is - was), `${part} ${name}`).toBeLessThan(Math.abs(before?.length ?? 0) + 10);
      }
    }
  });

  it('that is off by more than a pencil line is told so and left as it is', () => {
    const far = { ...even, back: { ...even.back, hipLevel: even.back.hipLevel + 40 } };
    const { pair, left } = pairTrued(far, ['hips']);
    expect(pair).toEqual(far);
    expect(differenceOf(left, 'hips')).toMatchObject({ kind: 'left' });
    expect(differenceOf(left, 'hips')?.by).toBeCloseTo(40, 6);
  });

  it('keeps what was brought: truing is taken back by not choosing it', () => {
    const block = { source: 'drawn', ...OFF.inseams } as const;
    const trued = blocksBrought({ ...block, trued: ['inseams'] }, 260);
    const inseam = (part: 'front' | 'back', of = trued) => edgeLength(outlineEdge(of[part].edges, 'inseam'));
    expect(inseam('front')).toBeCloseTo(inseam('back'), 3);
    expect(blocksBrought(block, 260)).toEqual(blocksBrought({ ...block, trued: [] }, 260));
    expect(inseam('back', blocksBrought(block, 260)) - inseam('front')).toBeGreaterThan(4);
  });

  it('is trued net: allowances come off first', () => {
    const { made } = broughtTrued({ source: 'drawn', ...OFF.hem, allowances: { hem: 20, inseam: 10 }, trued: ['hem'] });
    expect(differenceOf(made, 'hem')?.by).toBeCloseTo(differenceOf(pairTrued(OFF.hem, []).left, 'hem')?.by ?? 0, 0);
  });

  it('goes the whole way as it was trued, its crotch seam smooth and its curves bending one way', () => {
    const result = draft({
      ...exampleProject,
      block: { source: 'drawn', ...OFF.inseams, trued: ['hem', 'inseams', 'crotch'] },
    });
    if (!result.ok) throw new Error('refused');
    const verdicts = Object.fromEntries(checksOf(result.value).map(({ id, verdict }) => [id, verdict]));
    for (const id of ['traced-inseams', 'traced-hips', 'crotch-smooth', 'cut-line-simple'])
      expect(verdicts[id], id).toBe('good');
    expect(pathStart(outlineEdge(result.value.blocks.back.edges, 'waist').curves).y).toBeCloseTo(0, 6);
  });
});
