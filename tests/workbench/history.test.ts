import { expect, it } from 'vitest';
import { exampleProject } from '../../src/project';
import { noHistory, remember, stepBack, stepForward } from '../../src/workbench/store/history';

const place = (name: string, id = 'one') => ({ project: { ...exampleProject, name }, id });
const moment = (label: string, name: string, id?: string) => ({ label, ...place(name, id) });

it('goes back and forth through the same projects', () => {
  const history = remember(remember(noHistory, moment('one', 'a')), moment('two', 'b'));
  const back = stepBack(history, place('c'));
  expect(back?.project.name).toBe('b');
  const again = back && stepForward(back.history, back);
  expect(again?.project.name).toBe('c');
  expect(again?.history.past.map(({ label }) => label)).toEqual(['one', 'two']);
});

it('goes back to the kept project that was open before another was opened, and forth again', () => {
  const history = remember(noHistory, moment('opening a file', 'mine', 'first'));
  const back = stepBack(history, place('theirs', 'second'));
  expect(back).toMatchObject({ id: 'first', project: { name: 'mine' } });
  expect(back && stepForward(back.history, back)).toMatchObject({ id: 'second', project: { name: 'theirs' } });
});

it('forgets what was undone once something else is changed', () => {
  const back = stepBack(remember(noHistory, moment('one', 'a')), place('b'));
  expect(back && remember(back.history, moment('other', 'a')).future).toEqual([]);
});

it('has nothing to undo at the start', () => {
  expect(stepBack(noHistory, place('a'))).toBeUndefined();
  expect(stepForward(noHistory, place('a'))).toBeUndefined();
});

it('keeps the newest two hundred', () => {
  let history = noHistory;
  for (let i = 0; i < 250; i += 1) history = remember(history, moment(`${i}`, 'a'));
  expect(history.past.length).toBe(200);
  expect(history.past.at(-1)?.label).toBe('249');
});
