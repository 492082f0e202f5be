import { expect, it } from 'vitest';
import { exampleProject } from '../../src/project';
import { noHistory, remember, stepBack, stepForward } from '../../src/workbench/store/history';

const named = (name: string) => ({ ...exampleProject, name });

it('goes back and forth through the same projects', () => {
  const history = remember(remember(noHistory, { label: 'one', project: named('a') }), {
    label: 'two',
    project: named('b'),
  });
  const back = stepBack(history, named('c'));
  expect(back?.project.name).toBe('b');
  const again = back && stepForward(back.history, back.project);
  expect(again?.project.name).toBe('c');
  expect(again?.history.past.map((moment) => moment.label)).toEqual(['one', 'two']);
});

it('forgets what was undone once something else is changed', () => {
  const back = stepBack(remember(noHistory, { label: 'one', project: named('a') }), named('b'));
  expect(back && remember(back.history, { label: 'other', project: named('a') }).future).toEqual([]);
});

it('has nothing to undo at the start', () => {
  expect(stepBack(noHistory, exampleProject)).toBeUndefined();
  expect(stepForward(noHistory, exampleProject)).toBeUndefined();
});

it('keeps the newest two hundred', () => {
  let history = noHistory;
  for (let i = 0; i < 250; i += 1) history = remember(history, { label: `${i}`, project: exampleProject });
  expect(history.past.length).toBe(200);
  expect(history.past.at(-1)?.label).toBe('249');
});
