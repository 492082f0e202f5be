import { beforeEach, describe, expect, it, vi } from 'vitest';
import { exampleProject, openProject, saveProject } from '../../../src/project';
import { copyOf } from '../../../src/workbench/shelf/copy';
import { rawText } from '../../../src/workbench/shelf/raw-text';
import { length } from '../../../src/workbench/store/quantity';
import { everything, newWorld, openTab, putRaw, type Tab, type World } from './world';

vi.mock('../../../src/project', async (original) => (await import('./cheap-draft')).withCheapDraft(await original()));

const round: unknown[] = [];
round.push(round);

/** What may stand where something else was kept. */
const JUNK: readonly (readonly [string, unknown])[] = [
  ['null', null],
  ['missing', undefined],
  ['a number', 7],
  ['no number', Number.NaN],
  ['text', 'torn'],
  ['huge text', 'x'.repeat(300_000)],
  ['a list', [null, 1]],
  ['an object', {}],
  ['keys of prototypes', JSON.parse('{"__proto__":{"label":"a"},"constructor":{},"prototype":1,"toString":2}')],
  ['a date', new Date(0)],
  ['a map', new Map([['a', 1n]])],
  ['itself', round],
  ['an older version', { format: 'legwork-project', version: 0, body: {} }],
  ['a newer version', { format: 'legwork-project', version: 99, body: {} }],
  ['its text', '{"format":"legwork-project","version":99,"body":{}}'],
];

let world: World;
let id: string;
const wrong = { path: 'hem.turnUnder', quantity: length };

/** A computer on which two projects are kept; the one that is open has something half typed, and a number that can't be. */
beforeEach(async () => {
  world = newWorld();
  const tab = await openTab(world);
  const { choose, type, open } = tab.bench.getState();
  choose('name', 'the other');
  await tab.wait();
  open(saveProject({ ...exampleProject, name: 'this one' }), 'a file');
  choose('leg.spread', 30);
  await tab.wait();
  type(wrong, 'three');
  type({ path: 'hem.depth', quantity: length }, '999');
  await tab.wait();
  ({ id } = tab.bench.getState());
  tab.kill();
});

const at = async (key: string) => (await everything(world)).get(key);
const nameOf = (tab: Tab) => tab.bench.getState().project.name;

/** The page comes up, goes on, and every project that is whole can be reached. */
async function expectUsable(): Promise<Tab> {
  const tab = await openTab(world);
  const { project, history } = tab.bench.getState();
  for (const one of [project, ...history.past, ...history.future].map((spot) =>
    'project' in spot ? spot.project : spot,
  ))
    expect(openProject(saveProject({ ...one, hem: exampleProject.hem })).ok).toBe(true);
  for (const { text, problem } of Object.values(tab.bench.getState().entries)) {
    expect(typeof text).toBe('string');
    expect(typeof problem?.template).toBe('string');
  }
  await tab.shelf.bodies();
  await tab.shelf.asides();
  const other = (await tab.shelf.list()).find((one) => one.readable && one.name === 'the other');
  expect(await tab.keeper.open(other?.id ?? '')).toBe(true);
  expect(nameOf(tab)).toBe('the other');
  tab.bench.getState().choose('leg.spread', 41);
  await tab.wait();
  expect(tab.kept.getState().state).toBe('kept');
  expect(tab.faults).toEqual([]);
  return tab;
}

/** What stood there is there still, in its place or set aside. */
async function expectNothingLost(raw: unknown): Promise<void> {
  const all = [...(await everything(world))].map(([key, value]) =>
    key.startsWith('aside/') ? (value as { raw: unknown }).raw : value,
  );
  expect(all.map(rawText)).toContain(rawText(raw));
}

describe.each(JUNK)('%s', (_, junk) => {
  it.each(['a', 'b'])('in the place of copy %s costs no other copy and no other project', async (slot) => {
    await putRaw(world, `project/${id}/${slot}`, junk);
    const tab = await expectUsable();
    expect(await tab.keeper.open(id)).toBe(true);
    expect(nameOf(tab)).toBe('this one');
    if (junk !== undefined) await expectNothingLost(junk);
  });

  it('in the place of both leaves them listed, and all else goes on', async () => {
    for (const slot of ['a', 'b']) await putRaw(world, `project/${id}/${slot}`, junk);
    const tab = await expectUsable();
    expect(await tab.keeper.open(id)).toBe(false);
    expect((await tab.shelf.list()).map((one) => one.readable).toSorted()).toEqual([false, true]);
  });

  it.each(['id', 'revision', 'savedAt', 'text', 'good', 'entries', 'station', 'check'])(
    'in the place of a copy’s %s costs no more than that',
    async (part) => {
      for (const slot of ['a', 'b']) {
        const whole = (await at(`project/${id}/${slot}`)) as object;
        await putRaw(world, `project/${id}/${slot}`, { ...whole, [part]: junk });
      }
      await expectUsable();
      const tab = await openTab(world);
      const taken = await tab.keeper.open(id);
      if (['revision', 'savedAt', 'entries', 'station'].includes(part)) expect(taken).toBe(true);
      if (taken) expect(nameOf(tab)).toBe('this one');
    },
  );

  it.each(['text', 'good'])('in %s, by a check that fits, costs no more than that', async (part) => {
    const tab = await openTab(world);
    const text = typeof junk === 'string' ? junk : (JSON.stringify({ ...exampleProject, hem: rawText(junk) }) ?? '');
    const project = { ...JSON.parse(saveProject(exampleProject)), name: 'this one' };
    const whole = copyOf(tab.bench.getState(), 50, 1);
    tab.kill();
    const { hashOf } = await import('../../../src/workbench/shelf/copy');
    const good = part === 'good' ? text : saveProject(project);
    const now = part === 'text' ? text : saveProject(project);
    await putRaw(world, `project/${id}/a`, { ...whole, id, text: now, good, check: hashOf(now, good) });
    const again = await expectUsable();
    expect(await again.keeper.open(id)).toBe(true);
    expect(nameOf(again)).toBe('this one');
  });

  it('in the place of an entry costs that entry', async () => {
    for (const slot of ['a', 'b']) {
      const whole = (await at(`project/${id}/${slot}`)) as { entries: object };
      const entries = {
        'leg.spread': junk,
        'no.field': { text: 'a', problem: { template: 'b', values: [] } },
        ...whole.entries,
      };
      await putRaw(world, `project/${id}/${slot}`, { ...whole, entries });
    }
    const tab = await expectUsable();
    await tab.keeper.open(id);
    expect(Object.keys(tab.bench.getState().entries)).toEqual(['hem.turnUnder']);
  });

  it.each(['all', 'past', 'future', 'label', 'id', 'project'])(
    'in the history (%s) costs the history',
    async (part) => {
      const whole = (await at(`history/${id}`)) as { past: object[] };
      const past = whole.past.map((one, i) => (i === whole.past.length - 2 ? { ...one, [part]: junk } : one));
      const broken =
        part === 'all' ? junk : part === 'past' || part === 'future' ? { ...whole, [part]: junk } : { ...whole, past };
      await putRaw(world, `history/${id}`, broken);
      const tab = await openTab(world);
      expect(nameOf(tab)).toBe('this one');
      if (part === 'label' && typeof junk === 'string') return;
      if (part === 'id' && typeof junk === 'string') return;
      if (junk !== undefined || part !== 'all') {
        expect(tab.bench.getState().notice?.text).toMatch(/set aside/);
        await expectNothingLost(broken);
      }
      const { length: steps } = tab.bench.getState().history.past;
      if (['label', 'id', 'project'].includes(part)) expect(steps).toBe(1);
      tab.kill();
      // Said once.
      const again = await openTab(world);
      expect(again.bench.getState().notice).toBeUndefined();
      again.kill();
      await expectUsable();
    },
  );

  it('in the place of what was open last opens nothing, and bars nothing', async () => {
    await putRaw(world, 'last', junk);
    await expectUsable();
  });

  it.each(['all', 'label', 'figures', 'savedAt'])('in a body (%s) leaves it listed', async (part) => {
    const { label, ...figures } = exampleProject.body;
    const body = { id: 'me', label, figures, savedAt: 1 };
    await putRaw(world, 'body/me', part === 'all' ? junk : { ...body, [part]: junk });
    const tab = await expectUsable();
    expect((await tab.shelf.bodies()).length).toBe(1);
  });
});
