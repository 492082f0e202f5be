import { type Block, type Blocks, draftBlocks } from '../../src/block';
import { prepareBody } from '../../src/body';
import { exampleProject } from '../../src/project';
import { type BlockNumbers, type NumberedBlocks, numbersOf, TAPE_KEYS, type TracedBlock } from '../../src/trace';
import { plausibleBody } from './bodies';
import type { Chance } from './random';

/** How a tracing lies on its sheet: shifted, mirrored, a little larger or smaller. */
interface Lying {
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** A hand on a tracing: every point lies this far off, mostly within the loose ends that are drawn together. */
const SLIPS = [0, 0.2, 0.5, 5] as const;

/**
 * The blocks of a project as somebody brings them: drafted for some body, lying anywhere, either way round, with the
 * slips of a hand; seldom with an edge in pieces.
 *
 * @param chance of this draw
 */
export function tracedBlocks(chance: Chance): { readonly front: TracedBlock; readonly back: TracedBlock } {
  const blocks = somebodysBlocks(chance);
  const slip = chance.oneOf(SLIPS);
  return { front: tracing(blocks.front, slip, chance), back: tracing(blocks.back, slip, chance) };
}

/**
 * The blocks of a project as somebody measures them: drafted for some body, some lengths left out, each read with the slips
 * of a hand.
 *
 * @param chance of this draw
 */
export function numberedBlocks(chance: Chance): NumberedBlocks {
  const blocks = somebodysBlocks(chance);
  const slip = chance.oneOf(SLIPS);
  const left = chance.oneOf([0, 0.2, 0.9]);
  const table = (block: Block): BlockNumbers => {
    const read = numbersOf(block);
    const taken = TAPE_KEYS.filter(() => !chance.happens(left));
    const lengths = taken.map((key) => [key, Math.round(read[key] + slip * chance.bell())]);
    return { ...Object.fromEntries(lengths), ...(chance.happens(0.5) && { darts: read.darts }) };
  };
  return { source: 'numbers', front: table(blocks.front), back: table(blocks.back) };
}

/** Blocks that were drafted for some body. */
function somebodysBlocks(chance: Chance): Blocks {
  const { block } = exampleProject;
  const options = block.source === 'drafted' ? block : undefined;
  if (!options) throw new Error('The example drafts its blocks.');
  const body = prepareBody({ label: '', ...plausibleBody(chance, 0) });
  return draftBlocks(body, options).blocks;
}

function tracing(block: Block, slip: number, chance: Chance): TracedBlock {
  const lying: Lying = {
    mirrored: chance.happens(0.3),
    x: chance.between(-500, 500),
    y: chance.between(-500, 500),
    scale: chance.happens(0.7) ? 1 : chance.between(0.9, 1.1),
  };
  const level = (y: number) => lying.y + lying.scale * y;
  const placed = ({ x, y }: { readonly x: number; readonly y: number }): readonly [number, number] => [
    lying.x + (lying.mirrored ? -1 : 1) * lying.scale * x,
    level(y),
  ];
  // Each corner slips once, for both edges that meet there: a hand draws round the block without lifting.
  const slipped = new Map<string, readonly [number, number]>();
  const at = (p: { readonly x: number; readonly y: number }): readonly [number, number] => {
    const key = `${p.x.toFixed(4)} ${p.y.toFixed(4)}`;
    const [x, y] = placed(p);
    const found = slipped.get(key) ?? [x + slip * chance.bell(), y + slip * chance.bell()];
    slipped.set(key, found);
    return found;
  };
  const edges = block.edges.map(({ name, curves }) => {
    return [name, curves.map(([a, b, c, d]) => [at(a), at(b), at(c), at(d)])] as const;
  });
  return {
    edges: Object.fromEntries(edges) as unknown as TracedBlock['edges'],
    grainline: [placed(block.grainline[0]), placed(block.grainline[1])],
    hipLevel: level(block.hipLevel),
    ...(chance.happens(0.5) ? { kneeLevel: level(block.kneeLevel) } : {}),
  };
}
