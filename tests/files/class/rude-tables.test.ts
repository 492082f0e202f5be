import { describe, expect, test } from 'vitest';
import { cellText } from '../../../src/files/class/cells';
import { csvFile } from '../../../src/files/class/write-table';
import { bodiesOf, problemsOf, readTableOf, tableOf } from './tables';

/** Whatever is read, nobody waits for it longer than this, ms: far more than it takes here, for a slow machine. */
const PATIENCE = 10_000;

const NEEDED = 'Name,Waist (cm),Hip (cm),Body rise (cm),Inside leg (cm)';
const GOOD = 'Ada,74.2,102,27.2,75.8';
const told = (text: string | Uint8Array) => {
  const table = tableOf(text);
  return 'rows' in table ? problemsOf(table).join('\n') : table.join('\n');
};

describe('tables that were made to be slow', () => {
  test.each([
    ['columns', `${NEEDED}${',x'.repeat(100_000)}\n${GOOD}`, /a row of more than 500 cells/],
    ['commas', ','.repeat(5_000_000), /a row of more than 500 cells/],
    ['rows', `${NEEDED}\n${`${GOOD}\n`.repeat(100_000)}`, /more than 20000 lines: divide it/],
    ['rows of a class', `${NEEDED}\n${`${GOOD}\n`.repeat(6000)}`, /has 6000 rows; at most 5000/],
    ['lines', '\r\n'.repeat(2_500_000), /more than 20000 lines/],
    ['megabytes', new Uint8Array(5_000_001).fill(65), /has 5 MB; a table of bodies has at most 5 MB/],
    ['a head of spaces', `${NEEDED},${' '.repeat(2_000_000)}x\n${GOOD},1`, /^$/],
    [
      'a head of signs',
      `${NEEDED},Hip${' (-_,'.repeat(90)}mm${'[(('.repeat(500_000)}\n${GOOD},1`,
      /for the same thing/,
    ],
    ['a cell of figures', `${NEEDED}\nAda,${'7'.repeat(4_000_000)},102,27.2,75.8`, /isn’t a length/],
    ['a cell of fractions', `${NEEDED}\nAda,${'1/2 '.repeat(1_000_000)},102,27.2,75.8`, /isn’t a length/],
    ['quotation marks', `${NEEDED}\n${'"'.repeat(4_900_001)}`, /a quotation mark is opened/],
    ['quotation marks in cells', `${NEEDED}\n${`"a"b,`.repeat(400)}`, /quotation mark is opened|cells below/],
    ['a mark never closed', `${NEEDED}\n"${`${GOOD}\n`.repeat(19_000)}`, /opened in row 2 and never closed/],
  ])(
    'are refused or read at once: %s',
    (_, text, sentence) => {
      expect(told(text)).toMatch(sentence);
    },
    PATIENCE,
  );
});

describe('what others wrote into a cell', () => {
  test('is no command to a terminal, and no second line', () => {
    const table = readTableOf(
      `${NEEDED},Evil\u001b[2J\u202etxt\n"\u001b]0;x\u0007Ada\u0000\nRow 9",74.2,102,27.2,75.8,1`,
    );
    expect(table.rows[0]?.name).toBe(']0;x Ada Row 9');
    expect(table.unused).toEqual(['Evil [2J txt']);
  });

  test('is cut between two characters, never within one', () => {
    const { rows } = readTableOf(`${NEEDED}\n${'👖'.repeat(100)},74.2,102,27.2,75.8`);
    expect(rows[0]?.name).toBe('👖'.repeat(80));
    const { unused } = readTableOf(`${NEEDED},x${'👖'.repeat(100)}\n${GOOD},1`);
    expect(unused.join('').isWellFormed()).toBe(true);
  });

  const FORMULAS = [
    '=1+1',
    '+1',
    '-1',
    '@SUM(1)',
    '\t=1',
    '\r=1',
    '=1\n+2',
    '\n=1',
    ' =1',
    '＝1',
    '＋1',
    '－1',
    '＠x',
    '\u0000=1',
    '\u202e=1',
  ];
  test.each(FORMULAS)('is never a formula in a file of ours: %j', (formula) => {
    const text = csvFile([['Name', formula]]);
    const cells = text.replace(/^\ufeff/, '').split(/,|\r\n/);
    for (const cell of cells) expect(cell.replace(/^"/, '')).not.toMatch(/^[\s\p{Cc}]*[=+\-@＝＋－＠]/u);
    // And is what it was when the file is read again, but for what is no word.
    expect(cellText(cells[1]?.replace(/^"|"$/g, '') ?? '')).toMatch(/^[=+\-@＝＋－＠]/);
  });

  test('stays one cell, whatever signs are in it', () => {
    const name = 'a"b,c;d\u2028e\u2029f\u0085g';
    const table = readTableOf(csvFile([NEEDED.split(','), [name, '74.2', '102', '27.2', '75.8']]));
    expect(bodiesOf(table)[0]?.label).toBe('a"b,c;d e f g');
  });
});
