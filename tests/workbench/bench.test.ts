import { beforeEach, describe, expect, it } from 'vitest';
import { measuredOf } from '../../src/body';
import { readBlocks } from '../../src/files';
import { writeBlocksSvg } from '../../src/files/svg/blocks';
import { checksOf, exampleProject, habitsOf, saveProject } from '../../src/project';
import { say } from '../../src/words';
import {
  firstProblem,
  isStale,
  isUnmeasured,
  isWaiting,
  onlyWaiting,
  problemAt,
  stationAsks,
} from '../../src/workbench/store/asked';
import { useBench } from '../../src/workbench/store/bench';
import { TYPED_LIMITS } from '../../src/workbench/store/limits';
import { length } from '../../src/workbench/store/quantity';
import type { Field } from '../../src/workbench/store/state';
import { atExample } from './at-example';

const hip: Field = { path: 'body.hipGirth', quantity: length };
const knee: Field = { path: 'body.kneeGirth', quantity: length, optional: true };
const bench = () => useBench.getState();

beforeEach(() => {
  useBench.setState(atExample, true);
  bench().showUnits('cm');
});

describe('typing into a field', () => {
  it('redraws at each keystroke and is one change to undo', () => {
    const before = bench().draft;
    bench().enter(hip.path);
    bench().type(hip, '99');
    bench().type(hip, '99.5');
    bench().leave(hip.path);
    expect(bench().project.body.hipGirth).toBeCloseTo(995, 9);
    expect(bench().draft).not.toBe(before);
    expect(bench().history.past.map((moment) => moment.label)).toEqual(['Hip']);
    bench().undo();
    expect(bench().project).toEqual({ ...exampleProject, units: 'cm' });
  });

  it('makes two changes of two visits', () => {
    for (const text of ['99', '100']) {
      bench().type(hip, text);
      bench().leave(hip.path);
    }
    expect(bench().history.past.length).toBe(2);
  });

  it('keeps text that can not be read, says so, and leaves the last good drawing', () => {
    const { draft, project } = bench();
    bench().type(hip, '98x');
    bench().leave(hip.path);
    expect(bench().entries[hip.path]?.text).toBe('98x');
    expect(problemAt(bench(), hip.path)).toBeDefined();
    expect(isStale(bench())).toBe(true);
    expect(bench().draft).toBe(draft);
    expect(bench().project).toBe(project);
  });

  it('gives a value that can not be drawn its sentence, and leaves the last good drawing', () => {
    const { draft } = bench();
    bench().type(hip, '4');
    expect(problemAt(bench(), hip.path)).toBeDefined();
    expect(stationAsks(bench(), 'body')).toBe(true);
    expect(stationAsks(bench(), 'leg')).toBe(false);
    expect(bench().draft).toBe(draft);
    bench().type(hip, '99');
    expect(isStale(bench())).toBe(false);
  });

  it('asks for a needed measurement that was emptied, but not for others', () => {
    bench().type(hip, '');
    expect(problemAt(bench(), hip.path)).toBeDefined();
    bench().type(hip, '98');
    bench().type(knee, '');
    expect(isStale(bench())).toBe(false);
    expect(bench().project.body.kneeGirth).toBeUndefined();
  });
});

describe('stepping a field', () => {
  it('goes by a millimetre, or by an eighth of an inch', () => {
    bench().type(hip, '98');
    bench().stepField(hip, 1, undefined);
    expect(bench().project.body.hipGirth).toBeCloseTo(981, 9);
    bench().showUnits('inch');
    bench().type(hip, '40');
    bench().stepField(hip, -1, undefined);
    expect(bench().project.body.hipGirth).toBeCloseTo(39.875 * 25.4, 9);
  });

  it('starts an empty field from its estimate', () => {
    bench().stepField(knee, 1, 380);
    expect(bench().project.body.kneeGirth).toBe(381);
  });

  it('stops at the limit', () => {
    const { lowest } = TYPED_LIMITS[hip.path] ?? { lowest: 0 };
    bench().type(hip, length.print(lowest + 3, 'cm'));
    bench().stepField(hip, -10, undefined);
    expect(bench().project.body.hipGirth).toBeCloseTo(lowest, 9);
  });
});

describe('choosing', () => {
  it('is one change for each choice, and forgets what was typed in its place', () => {
    bench().choose('leg.length', { inseam: 600 });
    bench().type({ path: 'leg.length.inseam', quantity: length }, 'long');
    bench().choose('leg.length', 'ankle');
    expect(isStale(bench())).toBe(false);
    expect(bench().history.past.length).toBe(2);
  });

  it('shows other units without touching a number', () => {
    const { body } = bench().project;
    bench().showUnits('inch');
    expect(bench().project.body).toBe(body);
    expect(bench().draft.project.units).toBe('inch');
    expect(bench().history.past).toEqual([]);
  });
});

describe('other units', () => {
  it('convert nothing that was typed and round nothing anew, there and back', () => {
    bench().type(hip, '39 7/8 in');
    bench().leave(hip.path);
    bench().type({ path: 'hem.depth', quantity: length }, '3.03');
    bench().type(knee, '38x');
    const { project, entries, draft } = bench();
    for (const units of ['inch', 'cm'] as const) {
      bench().showUnits(units);
      expect({ ...bench().project, units: 'cm' }).toEqual(project);
      expect(bench().entries).toBe(entries);
      expect(bench().draft.measures).toEqual(draft.measures);
    }
  });
});

describe('starting with one’s own measurements', () => {
  it('asks for the four, keeps the example drawn, and can be undone', () => {
    const { draft } = bench();
    bench().startFresh();
    expect(bench().station).toBe('body');
    expect(Object.keys(bench().entries).sort()).toEqual(
      ['body.bodyRise', 'body.hipGirth', 'body.insideLeg', 'body.waistGirth'].sort(),
    );
    expect(isStale(bench())).toBe(true);
    bench().undo();
    expect(isStale(bench())).toBe(false);
    expect(bench().draft.measures).toEqual(draft.measures);
  });

  it('draws as soon as all four are typed, even where one is the example’s own', () => {
    bench().startFresh();
    for (const key of ['waistGirth', 'hipGirth', 'bodyRise', 'insideLeg'] as const) {
      const field = { path: `body.${key}`, quantity: length };
      bench().type(field, length.print(measuredOf(exampleProject.body)[key] ?? 0, 'cm'));
    }
    expect(isStale(bench())).toBe(false);
  });
});

describe('a measurement that may be taken in another’s place', () => {
  const type = (key: keyof typeof exampleProject.body, text: string) =>
    bench().type({ path: `body.${key}`, quantity: length, optional: key === 'trouserInseam' }, text);

  it('is enough, and nothing of the example stays behind', () => {
    bench().startFresh();
    type('trouserInseam', '30 in');
    for (const [key, text] of [
      ['waistGirth', '38 in'],
      ['hipGirth', '41 in'],
      ['bodyRise', '11 in'],
    ] as const)
      type(key, text);
    expect(isStale(bench())).toBe(false);
    expect(bench().project.body.insideLeg).toBeUndefined();
    expect(bench().draft.measures.inseamFront).toBeCloseTo(30 * 25.4, 6);
  });

  it('leaves alone what was measured', () => {
    type('trouserInseam', '30 in');
    expect(bench().project.body.insideLeg).toBe(exampleProject.body.insideLeg);
  });
});

describe('opening a file', () => {
  it('shows what was saved', () => {
    const text = saveProject({ ...exampleProject, name: 'Second pair' });
    bench().open(text, 'second.legwork.json');
    expect(bench().project.name).toBe('Second pair');
    expect(bench().notice?.tone).toBe('told');
  });

  it.each([
    ['no JSON', 'not a project'],
    ['another format', '{"format":"recipe","version":2}'],
    ['a newer version', '{"format":"legwork-project","version":999}'],
    ['an empty file', ''],
  ])('that is broken (%s) gives a sentence and loses nothing', (_what, text) => {
    bench().type(hip, '99');
    const { project, draft, history } = bench();
    bench().open(text, 'broken.json');
    expect(bench().notice?.tone).toBe('refused');
    expect(bench().notice?.text).toMatch(/^“broken\.json” .{20,}\. Nothing here was changed\.$/);
    expect(bench().project).toBe(project);
    expect(bench().draft).toBe(draft);
    expect(bench().history).toBe(history);
  });
});

describe('the remedy of a check', () => {
  const hipEase = () => checksOf(bench().draft).find((check) => check.id === 'hip-ease');

  it('is applied as one change that is undone under its own words', () => {
    bench().choose('leg.spread', 5);
    const before = bench().project;
    const check = hipEase();
    if (!check) throw new Error('no check of the hip');
    expect(check.verdict).toBe('doubtful');
    bench().remedy(check);
    expect(hipEase()?.verdict).toBe('good');
    expect(bench().history.past.at(-1)?.label).toMatch(/^Spread by 1.[23] cm$/);
    bench().undo();
    expect(bench().project).toEqual(before);
    expect(hipEase()?.verdict).toBe('doubtful');
  });

  it('clears what was typed into its field, so that no old sentence stays there', () => {
    const spread: Field = { path: 'leg.spread', quantity: length };
    bench().choose('leg.spread', 5);
    bench().type(spread, '5 elephants');
    const check = hipEase();
    if (!check) throw new Error('no check of the hip');
    bench().remedy(check);
    expect(problemAt(bench(), 'leg.spread')).toBeUndefined();
    expect(bench().project.leg.spread).toBe(12.5);
  });

  it('changes nothing where a check has none', () => {
    const { project, history } = bench();
    const good = hipEase();
    if (!good) throw new Error('no check of the hip');
    bench().remedy(good);
    expect(bench().project).toBe(project);
    expect(bench().history).toBe(history);
  });
});

describe('a fresh project', () => {
  it.each([
    ['before', 'en-US', 'Letter'],
    ['before', 'en-GB', 'A4'],
    ['before', 'en-CA', 'Letter'],
    ['after', 'en-US', 'Letter'],
    ['after', 'en-CA', 'Letter'],
  ] as const)('has the paper of its place, whether inches are chosen %s it is begun in %s', (order, locale, sheet) => {
    useBench.setState({ habits: habitsOf(locale) });
    if (order === 'before') bench().showUnits('inch');
    bench().startFresh();
    const { hem } = bench().project;
    if (order === 'after') bench().showUnits('inch');
    expect(bench().project.paper.sheet).toBe(sheet);
    // What was begun in centimetres stays what it was.
    expect(bench().project.hem).toBe(hem);
    expect(hem.depth).toBe(order === 'before' ? 31.75 : 30);
  });

  it('before which there was none leaves nothing to come back to; the next one does', () => {
    useBench.setState({ begun: false });
    bench().startFresh();
    expect([bench().begun, bench().history.past.length]).toEqual([true, 0]);
    bench().startFresh();
    expect(bench().history.past.length).toBe(1);
  });

  it('takes its wearer’s name, letter by letter, until somebody names it', () => {
    bench().startFresh();
    for (const label of ['N', 'No', 'Nora ']) bench().slide('body.label', label);
    expect(bench().project.name).toBe('Lounge pant for Nora');
    bench().choose('body.label', '');
    expect(bench().project.name).toBe('My lounge pant');
    bench().slide('name', 'Sunday');
    bench().choose('body', { ...bench().project.body, label: 'Ida' });
    expect(bench().project.name).toBe('Sunday');
  });

  it('of one’s own blocks asks for the body, and one step back it is drafted', async () => {
    const read = await readBlocks(writeBlocksSvg(bench().draft));
    if (!read.ok) throw new Error('the example’s blocks can’t be read');
    useBench.setState({ begun: false });
    bench().takeBlocks({ source: 'drawn', ...read.value }, say`Here they are.`, false);
    expect([bench().station, bench().project.block.source, isUnmeasured(bench())]).toEqual(['blocks', 'drawn', true]);
    expect(bench().notice?.text).toBe('Here they are. Now measure the body that they are for.');
    bench().undo();
    expect(bench().project.block.source).toBe('drafted');
    bench().takeBlocks({ source: 'drawn', ...read.value }, say`Here they are.`, false);
    expect(bench().notice?.text).toBe('Here they are. Undo brings the others back.');
  });

  it('waits for its measurements without calling them wrong, and names what is wrong before what only waits', () => {
    bench().startFresh();
    const measures = ['body.waistGirth', 'body.hipGirth', 'body.bodyRise', 'body.insideLeg'];
    expect(onlyWaiting(bench())).toEqual(measures);
    expect(measures.every((path) => isWaiting(bench(), path))).toBe(true);
    expect(bench().project.paper.sheet).toBe('A4');
    bench().type({ path: 'body.hipGirth', quantity: length }, '9000');
    expect(onlyWaiting(bench())).toEqual([]);
    expect(isWaiting(bench(), 'body.hipGirth')).toBe(false);
    expect(firstProblem(bench())?.path).toBe('body.hipGirth');
    bench().type({ path: 'body.hipGirth', quantity: length }, '102');
    expect(onlyWaiting(bench())).toEqual(measures.filter((path) => path !== 'body.hipGirth'));
  });
});
