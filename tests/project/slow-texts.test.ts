import { describe, expect, it } from 'vitest';
import { exampleProject, openProject, salvageProject, saveProject } from '../../src/project';
import { printPhrase } from '../../src/words';

/** Whatever is read, nobody waits for it longer than this, ms: far more than it takes here, for a slow machine. */
const PATIENCE = 10_000;

const WHOLE = saveProject(exampleProject);
const withText = (from: string, to: string) => {
  expect(WHOLE).toContain(from);
  return WHOLE.replace(from, to);
};
const sentences = (text: string): string[] => {
  const result = openProject(text);
  return result.ok ? [] : result.problems.map(({ field, phrase }) => `${field}: ${printPhrase(phrase, 'cm')}`);
};

describe('texts that were made to be slow', () => {
  const head = '{"format":"legwork-project","version":2,"body":{"waistGirth":700},"notes":';
  it.each([
    ['brackets', '['.repeat(5_000_000)],
    ['brackets in a project', `${head}${'['.repeat(4_000_000)}`],
    ['braces', `${head}${'{"a":'.repeat(900_000)}`],
    ['commas', `${head}${','.repeat(4_900_000)}`],
    ['commas in a list', `${head}[${','.repeat(4_900_000)}`],
    ['quotation marks', `${head}${'"'.repeat(4_900_000)}`],
    ['backslashes', `${head}"${'\\'.repeat(4_900_000)}`],
    ['empty groups', `${head}[${'{},'.repeat(1_600_000)}`],
    ['closed and opened', `${head}[${'[],'.repeat(1_600_000)}`],
    ['names', `${head}{${'"a":1,'.repeat(800_000)}`],
  ])(
    'are refused or saved at once: %s',
    (_what, text) => {
      const result = salvageProject(text);
      if (result.ok) expect(openProject(saveProject(result.value.project)).ok).toBe(true);
      else expect(result.problems).toHaveLength(1);
    },
    PATIENCE,
  );

  it('are not opened where they could not be opened again once they are written', () => {
    const text = withText(
      '"cloth": {',
      `"notes": [${'1e20,'.repeat(190_000)}0], "more": "${'x'.repeat(1_500_000)}", "cloth": {`,
    );
    expect(sentences(text)[0]).toMatch(/^file: has .* MB; a project file has at most/);
    const list = withText(
      '"cloth": {',
      `"notes": [${'1,'.repeat(190_000)}0], "more": "${'x'.repeat(4_000_000)}", "cloth": {`,
    );
    const opened = openProject(list);
    expect(opened.ok && openProject(saveProject(opened.value)).ok).toBe(true);
  });
});
