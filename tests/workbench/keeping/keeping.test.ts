import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { rawText } from '../../../src/workbench/keep/raw-text';
import { chance, PATIENCE } from '../../properties/seed';
import { type Command, carryOut, commands, newPair, type Pair } from './commands';
import { canon, newestSlot, type Snap, type Spot } from './model';
import { everything, newWorld } from './world';

// Nothing here is about the drawing: a project that can be opened can be drawn.
vi.mock('../../../src/project', async (original) => {
  const whole = await original<typeof import('../../../src/project')>();
  const known = new Map<string, unknown>();
  const draft = (project: Parameters<typeof whole.draft>[0]) => {
    const text = whole.saveProject(project);
    if (!known.has(text)) {
      const opened = whole.openProject(text);
      known.set(text, opened.ok ? { ok: true, value: { project: opened.value, measures: {} } } : opened);
    }
    return known.get(text);
  };
  return { ...whole, draft };
});

const spots = (all: readonly { readonly id: string; readonly project: unknown }[]): readonly Spot[] =>
  all.map(({ id, project }) => ({ id, project }) as Spot);

/** What is on the benches is the model's. */
function expectBenches({ tabs, model }: Pair): void {
  tabs.forEach(({ bench, faults }, i) => {
    const { id, project, history, entries } = bench.getState();
    const { snap } = model.tabs[i] as { snap: Snap };
    const typed = Object.fromEntries(Object.entries(entries).map(([path, { text, problem }]) => [path, { text, bad: !!problem }]));
    const now = { id, project, past: spots(history.past), future: spots(history.future), entries: typed };
    if (canon(now) !== canon(snap)) expect(now).toEqual(snap);
    expect(faults).toEqual([]);
  });
}

/** What is kept is the model's, and nothing that was damaged was written over. */
async function expectShelf({ world, model, damaged }: Pair): Promise<void> {
  const all = await everything(world);
  const ids = new Set([...all.keys()].flatMap((key) => (key.startsWith('project/') ? [key.split('/')[1] ?? ''] : [])));
  expect([...ids].toSorted()).toEqual([...model.rows.keys()].toSorted());
  for (const [id, row] of model.rows) {
    const slot = newestSlot(row);
    if (!slot) continue;
    const copy = all.get(`project/${id}/${row.slots[0] === slot ? 'a' : 'b'}`) as { text: string; entries: object };
    const project: unknown = JSON.parse(copy.text);
    if (canon(project) !== canon(slot.snap.project)) expect(project).toEqual(slot.snap.project);
    expect(Object.keys(copy.entries).toSorted()).toEqual(Object.keys(slot.snap.entries).toSorted());
  }
  expect(all.get('last')).toBe(model.last);
  const there = new Set(
    [...all].map(([key, value]) => rawText(key.startsWith('aside/') ? (value as { raw: unknown }).raw : value)),
  );
  expect(damaged.filter((junk) => !there.has(rawText(junk)))).toEqual([]);
}

async function walk(sequence: readonly Command[]): Promise<void> {
  const pair = await newPair(newWorld());
  for (const command of sequence) {
    await carryOut(pair, command);
    expectBenches(pair);
    await expectShelf(pair);
  }
}

it(
  'keeps what the model keeps, whatever is done in whatever order',
  async () => {
    await fc.assert(fc.asyncProperty(commands, walk), chance('sequences', 2000));
  },
  3 * PATIENCE,
);
