import { expect, it } from 'vitest';
import { exampleProject } from '../../src/project';
import {
  type History,
  type Moment,
  momentOf,
  noHistory,
  type Place,
  placeOf,
  remember,
  stepBack,
  stepForward,
} from '../../src/workbench/store/history';

const place = (name: string, id = 'one') => placeOf({ project: { ...exampleProject, name }, id });

/** What is left is come back to by the name of the change. */
const leaving =
  (left: Place) =>
  ({ label }: Moment) =>
    momentOf(label, left);

it('goes back and forth through the same projects', () => {
  const history = remember(remember(noHistory, momentOf('one', place('a'))), momentOf('two', place('b')));
  const back = stepBack(history, leaving(place('c')));
  expect(back?.to.project.name).toBe('b');
  const again = back && stepForward(back.history, leaving(back.to));
  expect(again?.to.project.name).toBe('c');
  expect(again?.history.past.map(({ label }) => label)).toEqual(['one', 'two']);
});

it('goes back to the kept project that was open before another was opened, and forth again', () => {
  const history = remember(noHistory, momentOf('opening a file', place('mine', 'first')));
  const back = stepBack(history, leaving(place('theirs', 'second')));
  expect(back?.to).toMatchObject({ id: 'first', project: { name: 'mine' } });
  const again = back && stepForward(back.history, leaving(back.to));
  expect(again?.to).toMatchObject({ id: 'second', project: { name: 'theirs' } });
});

it('keeps states of any kind', () => {
  const history = remember(remember<string>(noHistory, 'a'), 'b');
  const back = stepBack(history, () => 'c');
  expect(back).toEqual({ to: 'b', history: { past: ['a'], future: ['c'] } });
  expect(back && stepForward(back.history, () => back.to)).toEqual({ to: 'c', history });
});

it('takes what goes on for one change', () => {
  const history = remember<string>(noHistory, 'a');
  expect(remember(history, 'b', true)).toEqual(history);
});

it('forgets what was undone once something else is changed', () => {
  const back = stepBack(remember<string>(noHistory, 'a'), () => 'b');
  expect(back && remember(back.history, 'other').future).toEqual([]);
  expect(back && remember(back.history, 'other', true).future).toEqual([]);
});

it('has nothing to undo at the start', () => {
  expect(stepBack(noHistory, leaving(place('a')))).toBeUndefined();
  expect(stepForward(noHistory, leaving(place('a')))).toBeUndefined();
});

it('keeps the newest two hundred', () => {
  let history: History<number> = noHistory;
  for (let i = 0; i < 250; i += 1) history = remember(history, i);
  expect(history.past.length).toBe(200);
  expect(history.past.at(-1)).toBe(249);
});

it('holds projects only, whatever else stands beside them', () => {
  // As the whole workbench was once handed over, functions and all, so that nothing could be kept any more.
  const wide = Object.assign(place('c'), { undo: () => undefined, draft: {}, history: noHistory });
  const back = stepBack(remember(noHistory, momentOf('one', Object.assign(place('a'), wide))), leaving(wide));
  const forth = back && stepForward(back.history, leaving(wide));
  expect([...(back?.history.future ?? []), ...(forth?.history.past ?? [])].map((one) => Object.keys(one))).toEqual([
    ['project', 'id', 'label'],
    ['project', 'id', 'label'],
  ]);
  expect(back && Object.keys(back.to)).toEqual(['project', 'id', 'label']);
  // @ts-expect-error: what only looks like a place is none
  const looksLike: Place = { project: exampleProject, id: 'one' };
  expect(Object.keys(placeOf(looksLike))).toEqual(['project', 'id']);
});
