import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NO_CORRECTIONS } from '../../../src/block';
import { measuredOf, measurements } from '../../../src/body';
import { csvFile, emptyTable, measurementHead, measurementText } from '../../../src/files/class/write-table';
import type { Project } from '../../../src/project';
import { adultBody } from '../../properties/bodies';
import { chance, PATIENCE } from '../../properties/seed';
import { projectWith } from '../drafts';
import { bodiesOf, figuresOf, problemsOf, readTableOf, tableOf } from './tables';

const NEEDED = 'Name,Waist (cm),Hip (cm),Body rise (cm),Inside leg (cm)';
const GOOD = 'Ada,74.2,102,27.2,75.8';

/** To the tenth of a millimetre, as a tape is read at its finest. */
const tenths = (body: Project['body']): Project['body'] =>
  Object.fromEntries(
    Object.entries(body).map(([key, value]) => [key, typeof value === 'number' ? Math.round(value * 10) / 10 : value]),
  ) as unknown as Project['body'];

/** How people and programs write a table. */
const manner = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  decimal: fc.constantFrom('.', ','),
  unit: fc.constantFrom('mm', 'cm', 'in'),
  unitIn: fc.constantFrom('head', 'cell', 'both'),
  head: fc.constantFrom('name', 'key', 'girth'),
  mark: fc.boolean(),
  quoted: fc.boolean(),
  end: fc.constantFrom('\n', '\r\n'),
  above: fc.boolean(),
  blank: fc.boolean(),
  utf16: fc.boolean(),
});
type Manner = typeof manner extends fc.Arbitrary<infer M> ? M : never;

const SIZE = { mm: 1, cm: 10, in: 25.4 } as const;

/** A table of bodies in some manner: written here by RFC 4180, without the library that reads it. */
function written(bodies: readonly Project['body'][], how: Manner): Uint8Array {
  const { delimiter, decimal, unit, unitIn, head, end } = how;
  const cell = (text: string) =>
    how.quoted || text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
  const line = (cells: readonly string[]) => cells.map(cell).join(delimiter);
  const headOf = ({ key, name: { template: name }, unit: kind }: (typeof measurements)[number]) => {
    const word = head === 'key' ? key : head === 'girth' && key.endsWith('Girth') ? `${name} girth` : name;
    return kind === 'years' || unitIn === 'cell' ? word : `${word} (${unit})`;
  };
  const text = ({ key, unit: kind }: (typeof measurements)[number], body: Project['body']) => {
    const value = measuredOf(body)[key];
    if (value === undefined) return '';
    const figure = String(kind === 'years' ? value : value / SIZE[unit]).replace('.', decimal);
    return kind === 'years' || unitIn === 'head' ? figure : `${figure} ${unit}`;
  };
  const lines = [
    ...(how.above ? ['Evening class', ''] : []),
    line([...measurements.map(headOf), 'Name']),
    ...bodies.flatMap((body) => [
      line([...measurements.map((m) => text(m, body)), body.label]),
      ...(how.blank ? [delimiter.repeat(measurements.length), ''] : []),
    ]),
  ];
  const all = `${how.mark ? '\uFEFF' : ''}${lines.join(end)}${end}`;
  return how.utf16 ? Buffer.from(`\uFEFF${lines.join(end)}`, 'utf16le') : new TextEncoder().encode(all);
}

describe('a table of bodies', () => {
  test('in whatever manner it is written, is read as the bodies that were written', { timeout: PATIENCE }, () => {
    const names = fc
      .string({ minLength: 1, maxLength: 20 })
      .map((name) => name.replace(/[\r\n#]/g, '').trim() || 'Ada');
    const bodies = fc.array(
      fc.tuple(adultBody, names).map(([body, label]) => tenths({ ...body, label })),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(bodies, manner, (wanted, how) => {
        const read = bodiesOf(readTableOf(written(wanted, how)));
        expect(read).toHaveLength(wanted.length);
        for (const [i, body] of wanted.entries()) {
          expect(read[i]?.label).toBe(body.label.replace(/^'(?=[=+\-@])/, ''));
          for (const [k, figure] of figuresOf(body).entries()) {
            const got = figuresOf(read[i] ?? body)[k];
            if (figure === undefined) expect(got).toBeUndefined();
            else expect(Math.abs((got ?? Number.NaN) - figure)).toBeLessThan(1e-9);
          }
        }
      }),
      chance('tables', 150),
    );
  });

  test('written by our own writer is read as the same, formulas among its names too', () => {
    const body = { waistGirth: 742, hipGirth: 1020, bodyRise: 272, insideLeg: 758 };
    const labels = ['=1+1', '-Ada', '@b', '+c', 'Q "X", y', ' ä;ö '];
    for (const units of ['cm', 'inch'] as const) {
      const rows = labels.map((label) => [
        label,
        ...measurements.map((m) => measurementText(m, { ...body, label }, units)),
      ]);
      const text = csvFile([['Name', ...measurements.map((m) => measurementHead(m, units))], ...rows]);
      expect(text).not.toMatch(/(^|[,\n])"?[=+@]/);
      const read = bodiesOf(readTableOf(text, projectWith({ units })));
      expect(read.map(({ label }) => label)).toEqual(labels.map((label) => label.trim()));
      for (const one of read) expect(one.hipGirth).toBeCloseTo(1020, 1);
    }
  });

  test('empty, to fill in, holds nobody; filled in it is read, its notes passed over', () => {
    for (const units of ['cm', 'inch'] as const) {
      const project = projectWith({ units });
      const empty = emptyTable(project);
      for (const {
        where: { template: where },
      } of measurements)
        expect(empty).toContain(where.includes(',') ? `"${where}"` : where);
      expect(tableOf(empty, project)).toEqual([expect.stringContaining('holds no body')]);
      const example = empty.split('\r\n').find((line) => line.startsWith('# example')) ?? '';
      const { rows } = readTableOf(`${empty}${example.replace('# example', 'Ada')}\r\n`, project);
      expect(rows.map(({ row, name, project: made }) => [row, name, made.ok])).toEqual([[6, 'Ada', true]]);
    }
  });

  test('in the letters of an older program keeps its names', () => {
    const bytes = Buffer.from(`${NEEDED}\nZoë Müller,74.2,102,27.2,75.8\n`, 'latin1');
    expect(bodiesOf(readTableOf(bytes))[0]?.label).toBe('Zoë Müller');
  });

  test('says its delimiter in a first line, as some spreadsheets do', () => {
    expect(bodiesOf(readTableOf(`sep=;\r\n${`${NEEDED}\n${GOOD}`.replaceAll(',', ';')}`))).toHaveLength(1);
  });

  test('takes the estimate where a cell asks for it, and for nothing that must be measured', () => {
    const [body] = bodiesOf(readTableOf(`${NEEDED}\nAda,74.2,102,estimated,Est.\n`));
    expect([body?.bodyRise, body?.insideLeg]).toEqual(['estimated', 'estimated']);
    expect(problemsOf(readTableOf(`${NEEDED}\nAda,estimated,102,27,76\n`))).toHaveLength(1);
  });

  test('reads units of the cell before those of the head, and inches as people write them', () => {
    const read = readTableOf(`${NEEDED}\nAda,742 mm,"40 1/8 in",10.7",2' 6"\n`);
    expect(problemsOf(read)).toEqual([]);
    const [body] = bodiesOf(read).map(measuredOf);
    expect([body?.waistGirth, body?.hipGirth, body?.bodyRise, body?.insideLeg].map((v) => v?.toFixed(3))).toEqual([
      '742.000',
      '1019.175',
      '271.780',
      '762.000',
    ]);
  });

  test('joins first and last names, numbers who has none, and gives each their own length and cloth', () => {
    const { rows, unused } = readTableOf(
      'First name,Surname,Waist,Hip,Body rise,Inside leg,Length,Cloth width,Nappy,Shoe\nAda,Moor,74,102,27,76,at the knee,110,no,38\n,,74,102,27,76,44,,,\n',
    );
    expect(rows.map(({ row, name }) => [row, name])).toEqual([
      [2, 'Ada Moor'],
      [3, 'Row 3'],
    ]);
    expect(rows.map(({ project }) => project.ok && [project.value.leg.length, project.value.cloth.width])).toEqual([
      ['knee', 1100],
      [{ inseam: 440 }, projectWith().cloth.width],
    ]);
    expect(unused).toEqual(['Shoe']);
  });

  test('leaves out what was typed for one body', () => {
    const fit = { ...NO_CORRECTIONS, flatSeat: 10 };
    const { rows, leftOut } = readTableOf(`${NEEDED}\n${GOOD}`, {
      ...projectWith({ waist: { elasticLength: 700 } }),
      fit,
    });
    expect(leftOut).toHaveLength(2);
    expect(rows[0]?.project.ok && [rows[0].project.value.fit, rows[0].project.value.waist.elasticLength]).toEqual([
      null,
      'auto',
    ]);
  });
});

describe('a bad row is told with its column and what would be right, and the others are read', () => {
  test.each([
    ['B,30,102,27,76', 'Waist (cm): "30": was read as 30 cm; Waist must lie between 35 cm and 210 cm.'],
    [
      'B,742,102,27,76',
      'Waist (cm): "742": was read as 742 cm; Waist must lie between 35 cm and 210 cm. In millimetres it would do: write the unit into the head or the cell.',
    ],
    ['B,74,1O2,27,76', 'Hip (cm): "1O2": isn’t a length; write a number such as 102.5 cm.'],
    ['B,=SUM(A1:A9),102,27,76', 'Waist (cm): "=SUM(A1:A9)": isn’t a length; write a number such as 102.5 cm.'],
    ['B,74,,27,76', 'Hip (cm): missing: Hip is needed: round the fullest part of the seat, tape level.'],
    ['B,-74,102,27,76', 'Waist (cm): "-74": was read as −74 cm; Waist must lie between 35 cm and 210 cm.'],
    [
      'B,74,5,102,27,3,76',
      'row 3: "7 cells": has 7 cells below 5 names of columns; a decimal comma must stand in quotation marks, or the cells must be separated by semicolons.',
    ],
  ])('%s', (row, sentence) => {
    const table = readTableOf(`${NEEDED}\n${GOOD}\n${row}\n${GOOD}\n`);
    expect(problemsOf(table)).toEqual([sentence]);
    expect(bodiesOf(table)).toHaveLength(2);
  });

  test('every one of several, in one row', () => {
    const table = readTableOf(
      'Name,Waist,Hip,Body rise,Inside leg,Hip depth,Age,Nappy,Length\nB,x,,27,76,40,old,perhaps,long\n',
    );
    expect(problemsOf(table).map((problem) => problem.split(':')[0])).toEqual([
      'Waist',
      'Age',
      'Nappy',
      'Length',
      'Hip',
    ]);
  });

  test('measurements that contradict each other, by the column', () => {
    const table = readTableOf(`${NEEDED},Hip depth (cm)\n${GOOD},39\n`);
    expect(problemsOf(table)).toEqual([
      'Hip depth (cm): "39": the fullest hip can’t lie more than 10 cm below the seat; the body rise is 27.2 cm.',
    ]);
  });
});

describe('a table that can’t be understood is refused, once', () => {
  test.each([
    ['', 'no row names the columns'],
    ['\u0000\u0001 no table', 'no row names the columns'],
    ['Name,Ada,Ben\nWaist,74,75\nHip,102,103\n', 'turn the table'],
    [`${NEEDED}\n`, 'holds no body'],
    ['Name,Waist,Hip\nA,74,102\n', 'column Body rise: missing: Body rise is needed'],
    [`${NEEDED},Hip girth (in)\n${GOOD},40\n`, 'are columns for the same thing'],
    [`${NEEDED}\n"Ada,74,102,27,76\nB,74,102,27,76\n`, 'a quotation mark is opened in row 2 and never closed'],
    [`${NEEDED}\n${`${GOOD}\n`.repeat(5001)}`, 'at most 5000 are made at once'],
  ])('%#', (text, sentence) => {
    expect(tableOf(text)).toEqual(expect.arrayContaining([expect.stringContaining(sentence)]));
  });

  test('a column of ours under another name is spoken of', () => {
    expect(tableOf('Name,Waist,Hip,Rise of body,Inside leg\nA,74,102,27,76\n')).toEqual([
      expect.stringMatching(/Body rise is needed.*not known are “Rise of body”\.$/),
    ]);
  });

  test('blocks that were brought along are one body’s', () => {
    const project = { ...projectWith(), block: { source: 'drawn' } } as unknown as Project;
    expect(tableOf(`${NEEDED}\n${GOOD}`, project)).toEqual([expect.stringContaining('fit one body only')]);
  });
});
