import { expect, it } from 'vitest';
import { exampleProject } from '../../src/project';
import { noHistory, type Place, placeOf, remember, stepBack, stepForward } from '../../src/workbench/store/history';

const place = (name: string, id = 'one') => placeOf({ project: { ...exampleProject, name }, id });

it('goes back and forth through the same projects', () => {
  const history = remember(remember(noHistory, 'one', place('a')), 'two', place('b'));
  const back = stepBack(history, place('c'));
  expect(back?.project.name).toBe('b');
  const again = back && stepForward(back.history, back);
  expect(again?.project.name).toBe('c');
  expect(again?.history.past.map(({ label }) => label)).toEqual(['one', 'two']);
});

it('goes back to the kept project that was open before another was opened, and forth again', () => {
  const history = remember(noHistory, 'opening a file', place('mine', 'first'));
  const back = stepBack(history, place('theirs', 'second'));
  expect(back).toMatchObject({ id: 'first', project: { name: 'mine' } });
  expect(back && stepForward(back.history, back)).toMatchObject({ id: 'second', project: { name: 'theirs' } });
});

it('forgets what was undone once something else is changed', () => {
  const back = stepBack(remember(noHistory, 'one', place('a')), place('b'));
  expect(back && remember(back.history, 'other', place('a')).future).toEqual([]);
});

it('has nothing to undo at the start', () => {
  expect(stepBack(noHistory, place('a'))).toBeUndefined();
  expect(stepForward(noHistory, place('a'))).toBeUndefined();
});

it('keeps the newest two hundred', () => {
  let history = noHistory;
  for (let i = 0; i < 250; i += 1) history = remember(history, `${i}`, place('a'));
  expect(history.past.length).toBe(200);
  expect(history.past.at(-1)?.label).toBe('249');
});

it('holds projects only, whatever else stands beside them', () => {
  // As the whole workbench was once handed over, functions and all, so that nothing could be kept any more.
  const wide = Object.assign(place('c'), { undo: () => undefined, draft: {}, history: noHistory });
  const back = stepBack(remember(noHistory, 'one', Object.assign(place('a'), wide)), wide);
  const forth = back && stepForward(back.history, wide);
  expect([...(back?.history.future ?? []), ...(forth?.history.past ?? [])].map((one) => Object.keys(one))).toEqual([
    ['project', 'id', 'label'],
    ['project', 'id', 'label'],
  ]);
  expect(back && Object.keys(back)).toEqual(['project', 'id', 'history']);
  // @ts-expect-error: what only looks like a place is none
  const looksLike: Place = { project: exampleProject, id: 'one' };
  expect(Object.keys(placeOf(looksLike))).toEqual(['project', 'id']);
});
