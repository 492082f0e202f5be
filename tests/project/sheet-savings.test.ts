import { describe, expect, test } from 'vitest';
import type { Units } from '../../src/length';
import {
  applyRemedy,
  type Draft,
  draft,
  exampleProject,
  leastChanges,
  type Project,
  type SheetSaving,
  sheetSavingQuestions,
  sheetsOf,
  withFewestSheets,
  withLastPrint,
} from '../../src/project';
import { printPhrase } from '../../src/words';
import { benchProjects } from '../bench/bodies';

function drafted(project: Project, paper: Partial<Project['paper']> = {}): Draft {
  const result = draft({ ...project, paper: { ...project.paper, ...paper } });
  if (!result.ok) throw new Error(result.problems.map(({ field }) => field).join());
  return withFewestSheets(result.value);
}

const savingsOf = (of: Draft): readonly SheetSaving[] =>
  leastChanges(sheetSavingQuestions(of).flatMap((question) => question() ?? []));
const valuesOf = (savings: readonly SheetSaving[]) =>
  savings.flatMap(({ fix }) => fix.changes.map(({ value }) => value));
const sheets = (of: Draft) => sheetsOf(of).sheets.length;

describe('what margin and overlap cost', () => {
  const [body] = benchProjects(1) as readonly [Project];

  test('is the sheets less that are drawn when it is done', () => {
    const papers = [{}, { sheet: 'Letter', margin: 12, overlap: 15 }] as const;
    const savings = papers.flatMap((paper) => {
      const now = drafted(body, paper);
      return savingsOf(now).map((saving) => {
        const done = drafted(applyRemedy(now.project, saving));
        expect(sheets(now) - sheets(done), saving.id).toBe(saving.saved);
        expect(saving.saved).toBeGreaterThan(0);
        return saving;
      });
    });
    expect(new Set(savings.flatMap(({ fix }) => fix.changes.map(({ path }) => path)))).toEqual(
      new Set(['paper.margin', 'paper.overlap']),
    );
  });

  test('is said in the unit of the project', () => {
    const first = (of: Draft, units: Units) => {
      for (const question of sheetSavingQuestions(of)) {
        const saving = question();
        if (saving) return printPhrase(saving.says, units);
      }
      return undefined;
    };
    expect(first(drafted(body, { margin: 20 }), 'cm')).toMatch(
      /^A margin of [\d.]+ cm instead of 2 cm would save (1 sheet|\d+ sheets)\. The printer’s test page shows /,
    );
    expect(first(drafted({ ...body, units: 'inch' }, { sheet: 'Letter', margin: 19.05 }), 'inch')).toMatch(
      /^A margin of [½⅜¼] in instead of ¾ in would save (1 sheet|\d+ sheets)\./,
    );
  });

  test('is told for no margin below what the test page showed, nor below half a centimetre where nobody looked', () => {
    const margins = (paper: Partial<Project['paper']>) =>
      sheetSavingQuestions(drafted(body, { overlap: 0, ...paper })).flatMap((question) => question() ?? []);
    expect(Math.min(...(valuesOf(margins({ margin: 20 })) as number[]))).toBeGreaterThanOrEqual(5);
    const known = margins({ margin: 20, printerMargin: 9 });
    expect(Math.min(...(valuesOf(known) as number[]))).toBeGreaterThanOrEqual(9);
    for (const { says } of known) expect(printPhrase(says, 'cm')).not.toContain('test page');
    expect(margins({ margin: 10, printerMargin: 10 })).toEqual([]);
  });

  test('butts no sheets where their overlap is wide', () => {
    const ids = (overlap: number) => savingsOf(drafted(body, { margin: 5, overlap })).map(({ id }) => id);
    expect(ids(20)).not.toContain('overlap-0');
    expect(ids(0)).toEqual([]);
  });

  test('is not asked of one sheet, of a quick search, nor where sheets of an earlier print are kept', () => {
    expect(sheetSavingQuestions(drafted(body, { sheet: 'A0', scale: 1 / 4 }))).toEqual([]);
    const now = drafted(body);
    expect(sheetSavingQuestions(now)).not.toEqual([]);
    expect(sheetSavingQuestions({ ...now, search: 'quick' })).toEqual([]);
    expect(sheetSavingQuestions(drafted(withLastPrint(now, new Date('2026-11-30'))))).toEqual([]);
  });
});

test('of two changes alike the smaller is offered, and a greater one only where it saves more', () => {
  const saving = (path: 'paper.margin' | 'paper.overlap', value: number, saved: number): SheetSaving => ({
    ...(exampleSaving as SheetSaving),
    id: `${path} ${value}`,
    fix: { ...(exampleSaving as SheetSaving).fix, changes: [{ path, value }] },
    saved,
  });
  const [exampleSaving] = savingsOf(drafted(exampleProject, { margin: 30 }));
  const found = [
    saving('paper.margin', 8, 1),
    saving('paper.margin', 6, 1),
    saving('paper.margin', 5, 2),
    saving('paper.overlap', 8, 1),
  ];
  expect(leastChanges(found).map(({ id }) => id)).toEqual(['paper.margin 8', 'paper.margin 5', 'paper.overlap 8']);
});
