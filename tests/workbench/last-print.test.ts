import { beforeEach, expect, test } from 'vitest';
import { exampleProject, saveProject, withLastPrint } from '../../src/project';
import { copied } from '../../src/workbench/shelf/copied';
import { projectLink } from '../../src/workbench/shelf/link';
import { useBench } from '../../src/workbench/store/bench';

const bench = () => useBench.getState();
const fresh = useBench.getInitialState();
const [MONDAY, TUESDAY] = [new Date(2026, 10, 23), new Date(2026, 10, 24)];

beforeEach(() => useBench.setState({ ...fresh, begun: true }, true));

function print(date = MONDAY) {
  const { lastPrint } = withLastPrint(bench().draft, date);
  if (!lastPrint) throw new Error('nothing was noted');
  bench().notePrint(bench().id, lastPrint);
  return lastPrint;
}

test('a print is nothing to undo, and no undo takes it away', () => {
  bench().choose('hem.depth', 40);
  const noted = print();
  expect(bench().history.past.length).toBe(1);
  bench().undo();
  expect(bench().project.hem.depth).toBe(exampleProject.hem.depth);
  expect(bench().project.lastPrint).toBe(noted);
  bench().redo();
  expect(bench().project.hem.depth).toBe(40);
  expect(bench().project.lastPrint).toBe(noted);
});

test('two hundred steps hold no print, and another project its own', () => {
  const noted = print();
  bench().choose('hem.depth', 40);
  bench().choose('hem.depth', 45);
  expect(bench().history.past.filter(({ project }) => project.lastPrint)).toEqual([]);
  bench().open(saveProject({ ...exampleProject, name: 'Other' }), 'other.json');
  expect(bench().project.lastPrint).toBeUndefined();
  bench().undo();
  expect(bench().project.hem.depth).toBe(45);
  expect(bench().project.lastPrint).toBe(noted);
  bench().redo();
  expect(bench().project.lastPrint).toBeUndefined();
});

test('what was saved but never printed is taken back: the print before counts, then none', () => {
  const monday = print(MONDAY);
  bench().choose('hem.depth', 40);
  const tuesday = print(TUESDAY);
  expect([tuesday.on, tuesday.before?.on]).toEqual(['2026-11-24', '2026-11-23']);
  bench().takeBackPrint();
  expect(bench().project.lastPrint).toEqual(monday);
  bench().takeBackPrint();
  expect(bench().project).not.toHaveProperty('lastPrint');
});

test('a print of a project that is not on the bench any more is not noted for another one', () => {
  const { lastPrint } = withLastPrint(bench().draft, MONDAY);
  const { id } = bench();
  bench().startFresh();
  if (lastPrint) bench().notePrint(id, lastPrint);
  expect(bench().project.lastPrint).toBeUndefined();
});

test('a duplicate and a link know nothing of the paper on this table', async () => {
  print();
  bench().open(saveProject({ ...exampleProject, name: 'Other' }), 'other.json');
  bench().undo();
  bench().redo();
  bench().undo();
  const copy = copied(bench());
  expect(copy.project.lastPrint).toBeUndefined();
  const own = [...copy.history.past, ...copy.history.future].filter(({ id }) => id === copy.id);
  expect(own.filter(({ project }) => project.lastPrint)).toEqual([]);
  const page = 'https://example.org/';
  const link = await projectLink(bench().project, 'leg', page);
  expect(link).toEqual(await projectLink(exampleProject, 'leg', page));
});
