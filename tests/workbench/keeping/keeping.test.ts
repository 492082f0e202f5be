import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { rawText } from '../../../src/workbench/shelf/raw-text';
import { chance, PATIENCE } from '../../properties/seed';
import { type Command, carryOut, commands, newPair, type Pair } from './commands';
import { canon, newestSlot, type Snap, type Spot, snapText } from './model';
import { everything, newWorld } from './world';

vi.mock('../../../src/project', async (original) => (await import('./cheap-draft')).withCheapDraft(await original()));

const spots = (all: readonly { readonly id: string; readonly project: unknown }[]): readonly Spot[] =>
  all.map(({ id, project }) => ({ id, project }) as Spot);

/** What is on the benches is the model's. */
function expectBenches({ tabs, model }: Pair): void {
  tabs.forEach(({ bench, faults }, i) => {
    const { id, project, history, entries } = bench.getState();
    const { snap } = model.tabs[i] as { snap: Snap };
    const typed = Object.fromEntries(
      Object.entries(entries).map(([path, { text, problem }]) => [path, { text, bad: !!problem }]),
    );
    const now: Snap = {
      ...(spots([{ id, project }])[0] as Spot),
      past: spots(history.past),
      future: spots(history.future),
      entries: typed,
    };
    if (snapText(now) !== snapText(snap)) expect(now).toEqual(snap);
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
    const project: object = JSON.parse(copy.text);
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
    const { times } = pair.world;
    await carryOut(pair, command);
    expectBenches(pair);
    if (pair.world.times > times || command[0] === 'damage') await expectShelf(pair);
  }
}

/** Sequences that went wrong once: tried first. */
const FOUND: readonly Command[][] = [
  // A way back that was damaged while it was in use was written over by the next save.
  [
    ['type', 0, 0],
    ['reload', 0, 0],
    ['damage', 0, 11],
    ['type', 0, 0],
    ['wait', 0, 0],
  ],
  [
    ['type', 0, 3],
    ['wait', 0, 0],
    ['leaveField', 0, 0],
    ['openKept', 0, 0],
  ],
];

it(
  'keeps what the model keeps, whatever is done in whatever order',
  async () => {
    const how = chance('sequences', 2000);
    let walked = 0;
    const property = fc.asyncProperty(commands, async (sequence) => {
      await walk(sequence);
      walked += 1;
    });
    // A sequence takes some milliseconds, however long it is looked for a smaller one that fails, too.
    await fc.assert(property, { ...how, examples: FOUND.map((one) => [one]), interruptAfterTimeLimit: 2 * PATIENCE });
    expect(walked).toBe(how.numRuns);
  },
  3 * PATIENCE,
);
