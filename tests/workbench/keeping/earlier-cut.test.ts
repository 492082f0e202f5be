import { expect, it } from 'vitest';
import { exampleProject, openProject, saveProject } from '../../../src/project';
import { checkOf, copyOf } from '../../../src/workbench/shelf/copy';
import { createBench } from '../../../src/workbench/store/bench';
import { opened } from '../../../src/workbench/store/changes';
import { noHistory } from '../../../src/workbench/store/history';
import { newWorld, openTab, settled } from './world';

const FIRST = saveProject({ ...exampleProject, leg: { ...exampleProject.leg, length: 'ankle' } }).replace(
  '"version": 2',
  '"version": 1',
);
const EARLIER = /drawn by an earlier cut/;

it('a kept project of an earlier cut is told of when it is brought back, and kept as it is drawn now: once', async () => {
  const world = newWorld();
  const before = await openTab(world);
  const copy = copyOf({ ...before.bench.getState(), id: 'old' }, 1, world.date);
  await before.shelf.put({ ...copy, text: FIRST, check: checkOf(FIRST, undefined) }, noHistory, 0);
  before.kill();
  const tab = await openTab(world);
  expect(tab.bench.getState().project).toMatchObject({ version: 2, leg: { length: 'ankle' } });
  expect(tab.bench.getState().notice).toMatchObject({ tone: 'told', text: expect.stringMatching(EARLIER) });
  await tab.wait();
  await settled(world);
  expect((await tab.shelf.take('old'))?.read).toMatchObject({ revision: 2, notes: [] });
  tab.kill();
  const again = await openTab(world);
  expect(again.bench.getState().id).toBe('old');
  expect(again.bench.getState().notice?.text ?? '').not.toMatch(EARLIER);
});

it('a kept project of this cut is not written anew for being looked at', async () => {
  const world = newWorld();
  const before = await openTab(world);
  await before.shelf.put(copyOf({ ...before.bench.getState(), id: 'new' }, 1, world.date), noHistory, 0);
  before.kill();
  const tab = await openTab(world);
  await tab.wait();
  await settled(world);
  expect((await tab.shelf.take('new'))?.read.revision).toBe(1);
  expect(tab.bench.getState().notice).toBeUndefined();
});

it('a file of an earlier cut is told of when it is opened, and not when it was saved again', () => {
  const bench = createBench().getState();
  expect(opened(bench, FIRST, 'old.legwork.json').notice?.text).toMatch(EARLIER);
  const now = openProject(FIRST);
  expect(now.ok && opened(bench, saveProject(now.value), 'now.legwork.json').notice?.text).not.toMatch(EARLIER);
});
