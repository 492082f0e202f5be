import { expect, test } from 'vitest';
import { draft, exampleProject, sheetsOf } from '../../src/project';
import { printPhrase } from '../../src/words';
import { RESULTS } from '../../src/workbench/finished/results';
import { tellFreshSheets } from '../../src/workbench/store/sheets-told';

test('the closed Paper says the scale at once, and the sheets as soon as the search for them has come', () => {
  const made = draft(exampleProject);
  if (!made.ok) throw new Error('the example was refused');
  const said = () => printPhrase(RESULTS.paper(made.value), 'cm');
  expect(said()).toBe('true size');
  tellFreshSheets();
  expect(said()).toBe(`${sheetsOf(made.value).sheets.length} sheets A4 and a first sheet · true size`);
});
