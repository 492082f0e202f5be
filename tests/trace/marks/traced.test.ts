import { describe, expect, it } from 'vitest';
import { type BlockEdge, type BlockOptions, draftBlocks } from '../../../src/block';
import { prepareBody } from '../../../src/body';
import {
  type Curve,
  curveMap,
  distance,
  outlineEdge,
  pathEnd,
  pathReverse,
  pathStart,
  straight,
} from '../../../src/plane';
import {
  BLOCK_EDGES,
  blocksFromTrace,
  type DrawnLines,
  FARTHEST,
  type Pair,
  pairTrued,
  type TracedBlock,
  traceFromLines,
} from '../../../src/trace';
import { printPhrase, Refusal } from '../../../src/words';

const OPTIONS: BlockOptions = { hipEase: 50.8, waistEase: 25, riseEase: 'auto', crotchEase: 'auto', balance: 10 };
const BODY = { label: 'round', waistGirth: 800, hipGirth: 1000, hipDepth: 200, bodyRise: 260, insideLeg: 780 };
const { blocks } = draftBlocks(prepareBody(BODY), OPTIONS);
const curvesOf = (name: BlockEdge) => outlineEdge(blocks.front.edges, name).curves;

const drawn: DrawnLines = {
  ...Object.fromEntries(BLOCK_EDGES.map((name) => [name, [curvesOf(name)]])),
  grainline: [[straight(...blocks.front.grainline)]],
  hip: [[straight({ x: 0, y: 200 }, { x: 250, y: 200 })]],
};
const trace = traceFromLines('front', drawn);

/** What a refusal says, field by field. */
function refused(act: () => unknown): readonly string[] {
  try {
    act();
  } catch (error) {
    if (error instanceof Refusal)
      return error.problems.map(({ field, phrase }) => `${field} ${printPhrase(phrase, 'cm')}`);
    throw error;
  }
  return [];
}

describe('a block from its drawn lines', () => {
  it('is the same in whatever direction each of its lines was drawn', () => {
    for (const name of BLOCK_EDGES)
      expect(traceFromLines('front', { ...drawn, [name]: [pathReverse(curvesOf(name))] }), name).toEqual(trace);
    const all = BLOCK_EDGES.map((name) => [name, [pathReverse(curvesOf(name))]]);
    expect(traceFromLines('front', { ...drawn, ...Object.fromEntries(all) })).toEqual(trace);
  });

  it('is the same where a line was drawn in pieces, in any order', () => {
    const [upper, lower] = curvesOf('inseam').map((curve): readonly Curve[] => [curve]) as [Curve[], Curve[]];
    for (const inseam of [
      [upper, lower],
      [lower, upper],
      [lower, pathReverse(upper)],
    ])
      expect(traceFromLines('front', { ...drawn, inseam })).toEqual(trace);
    const apart = [upper, lower.map((curve) => curveMap(curve, ({ x, y }) => ({ x, y: y + 3 })))];
    expect(refused(() => traceFromLines('front', { ...drawn, inseam: apart }))).toEqual([
      expect.stringMatching(/^front-inseam must be one line; its 2 pieces don’t meet/),
    ]);
  });

  it('is refused where a line reaches farther than any block does, each such line by its name', () => {
    const far = (curves: readonly Curve[]) => [curves.map((c) => curveMap(c, ({ x, y }) => ({ x: x + FARTHEST, y })))];
    for (const name of ['inseam', 'grainline', 'hip'] as const) {
      const lines = { ...drawn, [name]: far(drawn[name]?.[0] ?? []) };
      expect(refused(() => traceFromLines('front', lines))).toEqual([
        expect.stringMatching(new RegExp(`^front-${name} reaches farther than`)),
      ]);
    }
  });

  it('is refused, each line by its name, where one is missing', () => {
    const { hip: _, ...others } = drawn;
    expect(refused(() => traceFromLines('back', { ...others, side: [] }))).toEqual([
      expect.stringMatching(/^back-side must be drawn/),
      expect.stringMatching(/^back-hip must be drawn/),
    ]);
  });
});

describe('blocks from two tracings', () => {
  const back: TracedBlock = traceFromLines('back', {
    ...Object.fromEntries(BLOCK_EDGES.map((name) => [name, [outlineEdge(blocks.back.edges, name).curves]])),
    grainline: [[straight(...blocks.back.grainline)]],
    hip: [[straight({ x: 0, y: 200 }, { x: -250, y: 200 })]],
  });
  const brought = (front: TracedBlock) => blocksFromTrace(front, back, 260);
  const withEdge = (name: BlockEdge, move: (pair: Pair) => Pair): TracedBlock => ({
    ...trace,
    edges: { ...trace.edges, [name]: trace.edges[name].map((curve) => curve.map(move)) as never },
  });

  it('are closed where the ends were drawn half a millimetre apart', () => {
    const { front } = brought(withEdge('hem', ([x, y]) => [x, y + 0.5]));
    for (const [i, { name, curves }] of front.edges.entries()) {
      const before = front.edges.at(i - 1)?.curves ?? curves;
      expect(distance(pathEnd(before), pathStart(curves)), name).toBeLessThan(name === 'waist' ? 1e-3 : 1e-9);
    }
  });

  it('are refused where an edge is missing, starts elsewhere or is too short', () => {
    expect(refused(() => brought({ ...trace, edges: { ...trace.edges, side: [] } }))).toEqual([
      'block.front.edges.side needs at least one curve.',
    ]);
    expect(refused(() => brought(withEdge('hem', ([x, y]) => [x, y + 2])))).toEqual([
      expect.stringMatching(/^block\.front\.edges\.hem must start where inseam ends; they are 0\.2 cm apart/),
      expect.stringMatching(/^block\.front\.edges\.side must start where hem ends/),
    ]);
    const [x, y] = trace.edges.waist[0]?.[0] ?? [0, 0];
    const dot: Pair = [x, y];
    const pinched: TracedBlock = {
      ...withEdge('waist', () => dot),
      edges: { ...trace.edges, waist: [[dot, dot, dot, dot]], centre: moveStart(trace.edges.centre, dot) },
    };
    expect(refused(() => brought(pinched))).toEqual(['block.front.edges.waist is too short to be an edge.']);
  });

  it('are refused where the hip or the knee lies off the block', () => {
    expect(refused(() => brought({ ...trace, hipLevel: -5 }))).toEqual([
      expect.stringMatching(/^block\.front\.hipLevel must lie between the waist/),
    ]);
    expect(refused(() => brought({ ...trace, kneeLevel: 2000 }))).toEqual([
      expect.stringMatching(/^block\.front\.kneeLevel must lie between the waist/),
    ]);
  });

  it('are not trued by a handle that is too short to have a direction', () => {
    const last = trace.edges.crotch.at(-1);
    const [end] = last ? [last[3]] : [[0, 0] as Pair];
    const short = withLastHandle(trace, [end[0] - 0.005, end[1] + 0.0003]);
    const pair = { front: short, back };
    expect(pairTrued(pair, ['crotch']).pair).toEqual(pair);
  });
});

const moveStart = (curves: TracedBlock['edges']['centre'], to: Pair): TracedBlock['edges']['centre'] =>
  curves.map((curve, i) => (i === 0 ? [to, curve[1], curve[2], curve[3]] : curve));

const withLastHandle = (block: TracedBlock, handle: Pair): TracedBlock => ({
  ...block,
  edges: {
    ...block.edges,
    crotch: block.edges.crotch.map((curve, i, all) =>
      i === all.length - 1 ? [curve[0], curve[1], handle, curve[3]] : curve,
    ),
  },
});
