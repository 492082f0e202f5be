import { expect, test } from 'vitest';
import { checksOf } from '../../src/project';
import type { TracedPair } from '../../src/trace';
import { printPhrase } from '../../src/words';
import { drafted, tracedExample } from './subject';

type Traced = TracedPair & { readonly source: 'drawn' };
type Block = Traced['front'];
type Pair = readonly [number, number];

const brought = tracedExample.project.block as Traced;
const end = (block: Block, edge: 'crotch' | 'inseam'): Pair => (block.edges[edge].at(-1) as readonly Pair[])[3] as Pair;

/** A block with one of its corners elsewhere, on both edges that meet there. */
function redrawn(block: Block, corner: Pair, by: Pair): Block {
  const at = (p: Pair): Pair =>
    Math.hypot(p[0] - corner[0], p[1] - corner[1]) < 0.01 ? [p[0] + by[0], p[1] + by[1]] : p;
  const edges = Object.fromEntries(
    Object.entries(block.edges).map(([name, curves]) => [name, curves.map((curve) => curve.map(at))]),
  );
  return { ...block, edges: edges as unknown as Block['edges'] };
}

function found(id: string, block: Partial<Traced>) {
  const { body, ...rest } = tracedExample.project;
  const draft = drafted({ ...rest, body, block: { ...brought, ...block } });
  const check = checksOf(draft).find((one) => one.id === id);
  return { verdict: check?.verdict, remedy: check ? printPhrase(check.remedy, 'cm') : '' };
}

test('as they are, the blocks that were brought want nothing', () => {
  for (const id of ['traced-inseams', 'traced-hips', 'traced-grains'])
    expect(found(id, {}), id).toEqual({ verdict: 'good', remedy: '' });
});

test('inseams that differ at the crotch: the back’s upper end is redrawn by as much, and they agree', () => {
  const front = redrawn(brought.front, end(brought.front, 'crotch'), [0, -20]);
  const { verdict, remedy } = found('traced-inseams', { front });
  expect(verdict).toBe('doubtful');
  const by = Number(/^Redraw the upper end of the back inseam, the crotch point, ([\d.]+) cm higher/.exec(remedy)?.[1]);
  expect(by).toBeGreaterThan(1.7);
  const back = redrawn(brought.back, end(brought.back, 'crotch'), [0, -10 * by]);
  expect(found('traced-inseams', { front, back }).verdict).toBe('good');
  const lowFront = redrawn(brought.front, end(brought.front, 'crotch'), [0, 20]);
  expect(found('traced-inseams', { front: lowFront }).remedy).toMatch(/the crotch point, [\d.]+ cm lower, or/);
});

test('inseams that differ at the hem: the back’s lower end is redrawn', () => {
  const front = redrawn(brought.front, end(brought.front, 'inseam'), [0, 15]);
  const { remedy } = found('traced-inseams', { front });
  const by = Number(/^Redraw the lower end of the back inseam ([\d.]+) cm lower/.exec(remedy)?.[1]);
  const back = redrawn(brought.back, end(brought.back, 'inseam'), [0, 10 * by]);
  expect(found('traced-inseams', { front, back }).verdict).toBe('good');
});

test('hip levels that differ: the one that lies off the body’s hip is redrawn at the side', () => {
  const back = { ...brought.back, hipLevel: brought.back.hipLevel + 12 };
  const { verdict, remedy } = found('traced-hips', { back });
  expect(verdict).toBe('doubtful');
  expect(remedy).toMatch(/^Redraw the side end of the back’s hip line 1\.2 cm higher;/);
  expect(found('traced-hips', { front: { ...brought.front, hipLevel: brought.front.hipLevel - 12 } }).remedy).toMatch(
    /^Redraw the side end of the front’s hip line 1\.2 cm lower;/,
  );
});

test('a grainline that leans: its lower end is redrawn by what it stands off', () => {
  const [top, bottom] = brought.front.grainline;
  const leaning = { ...brought.front, grainline: [top, [bottom[0] + 40, bottom[1]]] as const };
  const { verdict, remedy } = found('traced-grains', { front: leaning });
  expect(verdict).toBe('doubtful');
  expect(remedy).toMatch(/^Redraw the lower end of the front’s grainline 4 cm nearer to the side, or turn/);
});
