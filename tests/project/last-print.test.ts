import { describe, expect, test } from 'vitest';
import { readClass } from '../../src/files/class/read-class';
import {
  changedSince,
  draft,
  type LastPrint,
  lastPrintTakenBack,
  openProject,
  reprintOf,
  salvageProject,
  saveProject,
  sheetsOf,
  withFewestSheets,
  withLastPrint,
  withoutLastPrint,
} from '../../src/project';
import { SCHEMAS } from '../../src/project/schema';
import { printPhrase } from '../../src/words';
import { draftOf, draftWith } from '../files/drafts';
import { chanceOf } from '../fuzz/random';
import { type Asked, drawn, type Walked } from '../fuzz/walk';

const printed = withLastPrint(withFewestSheets(draftWith()), new Date('2026-11-30T09:00:00'));

describe('a pattern that was printed', () => {
  test('is kept in the file, and comes out of it as it went in', () => {
    const opened = openProject(saveProject(printed));
    expect(opened.ok && opened.value).toEqual(JSON.parse(JSON.stringify(printed)));
    expect(saveProject(printed).length).toBeLessThan(100_000);
  });

  test('moves nothing that is drafted', () => {
    const [with_, without] = [draftOf(printed), draftWith()];
    expect(with_.pieces).toEqual(without.pieces);
    expect(with_.measures).toEqual(without.measures);
  });

  test('says of a later draft which sheets are to be printed, and what has changed, in words', () => {
    const hem = { ...printed.hem, depth: 40, finish: 'facedHem' } as const;
    const now = draftOf({ ...printed, hem, name: 'Sunday' });
    expect(reprintOf(now)?.anew.length).toBeGreaterThan(0);
    expect(changedSince(now).map((phrase) => printPhrase(phrase, 'cm'))).toEqual([
      `Name: ${printed.name}, now Sunday`,
      'Hem finish: turned, now faced',
      'Hem depth: 3 cm, now 4 cm',
    ]);
    expect(changedSince(draftOf(printed))).toEqual([]);
    expect(reprintOf(draftWith())).toBeUndefined();
  });

  test('is forgotten as a whole where anything of it is broken, and that is told', () => {
    const broken = JSON.parse(saveProject(printed));
    broken.lastPrint.lines[3].points[1] = 'far';
    expect(openProject(JSON.stringify(broken)).ok).toBe(false);
    const saved = salvageProject(JSON.stringify(broken));
    if (!saved.ok) throw new Error('past help');
    expect(saved.value.project.lastPrint).toBeUndefined();
    expect(draft(saved.value.project).ok).toBe(true);
    expect(saved.value.repairs.map(({ problem }) => printPhrase(problem.phrase, 'cm'))[0]).toBe(
      'is not what a print leaves behind.',
    );
  });

  test('is gone on with where that saves paper, and laid afresh where it doesn’t', () => {
    const deeper = draftOf({ ...printed, hem: { ...printed.hem, depth: 40 } });
    expect(sheetsOf(deeper)).toBe(reprintOf(deeper)?.plan);
    const wider = { ...printed, body: { ...printed.body, hipGirth: 1080 } };
    expect(reprintOf(draftOf(wider))).toBeUndefined();
    expect(sheetsOf(draftOf(wider))).toEqual(sheetsOf(draftOf({ ...wider, lastPrint: undefined })));
    const onLetter = draftOf({ ...printed, paper: { ...printed.paper, sheet: 'Letter' } });
    expect(reprintOf(onLetter)).toBeUndefined();
  });

  test('whose sheets lie nowhere near the pattern is no hindrance', () => {
    const noted = printed.lastPrint as LastPrint;
    const far = { ...printed, lastPrint: { ...noted, corner: { x: -20_000, y: 19_000 } } };
    expect(reprintOf(draftOf(far))).toBeUndefined();
  });

  test('that says anything the file may say is gone on with or not, and never a fault', () => {
    const entries = (SCHEMAS.cm as unknown as Walked).entries?.lastPrint?.wrapped?.entries;
    const asked: Asked = {
      chance: chanceOf(16),
      temperature: { present: 1, limit: 0.2, even: 1 },
      limitsAt: () => [0, 1],
      textsAt: () => ['cut', 'level', ''],
    };
    const noted = printed.lastPrint as LastPrint;
    for (const part of ['corner', 'places', 'sheets', 'lines', 'words'])
      for (let i = 0; i < 6; i += 1) {
        const lastPrint = { ...noted, [part]: drawn(entries?.[part] as Walked, asked) };
        const opened = openProject(JSON.stringify({ ...printed, lastPrint }));
        if (!opened.ok) throw new Error(`${part} was refused`);
        const now = draftOf(opened.value);
        expect(reprintOf(now)?.anew.length ?? 0, part).toBeLessThan(sheetsOf(now).sheets.length);
      }
  });

  test('once more as it was is the same print: what came before stays before it', () => {
    const [monday, tuesday] = [new Date(2026, 10, 23), new Date(2026, 10, 24)];
    const first = withLastPrint(draftWith(), monday);
    const changed = draftOf({ ...first, hem: { ...first.hem, depth: 40 } });
    const second = withLastPrint(changed, monday);
    const third = withLastPrint(draftOf(second), tuesday);
    expect([third.lastPrint?.on, third.lastPrint?.before?.project.hem.depth]).toEqual(['2026-11-24', 30]);
    expect(lastPrintTakenBack(third)).toEqual({ ...third, lastPrint: first.lastPrint });
    expect(lastPrintTakenBack(first)).toEqual(withoutLastPrint(first));
  });

  test('is not noted of a sample, which is no pattern', () => {
    const sample = draftOf({ ...printed, paper: { ...printed.paper, scale: 1 / 4 } });
    expect(withLastPrint(sample, new Date(2027, 0, 1)).lastPrint).toEqual(printed.lastPrint);
  });

  test('of a day that there isn’t is not read', () => {
    for (const on of ['2026-02-31', '2026-13-01', 'yesterday', '20261130'])
      expect(openProject(JSON.stringify({ ...printed, lastPrint: { ...printed.lastPrint, on } })).ok, on).toBe(false);
  });

  test('is no class’s: whoever has another body has none of its sheets', () => {
    const table = 'Name,Waist (cm),Hip (cm),Body rise (cm),Inside leg (cm)\nAnna,74,102,27,76\n';
    const read = readClass(new TextEncoder().encode(table), printed);
    const projects = read.ok ? read.value.rows.flatMap(({ project }) => (project.ok ? [project.value] : [])) : [];
    expect(projects.map(({ body, lastPrint }) => [body.hipGirth, lastPrint])).toEqual([[1020, undefined]]);
  });
});
