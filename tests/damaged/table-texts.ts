import { measurements } from '../../src/body';
import { csvFile, measurementHead, measurementText } from '../../src/files/class/write-table';
import type { Project } from '../../src/project';
import type { Chance } from '../fuzz/random';
import { below } from './texts';

const CELLS = [
  '',
  '0',
  '-5',
  '1e9',
  '40 1/8 in',
  '102,5',
  '102.5 cm',
  '9'.repeat(400),
  '=1+1',
  "'=1",
  '#',
  '# note',
  'yes',
  'NaN',
  'Infinity',
  '\u0000',
  '\u001b[2J',
  '"',
  '""',
  'a"b',
  '\n',
  '\r',
  '\u2028',
  '\u202e',
  '\ud800',
  ' ',
  '1/0',
  '5 ft',
  '3 ft 4 in',
  '½',
  '__proto__',
  'x'.repeat(2000),
  '👖'.repeat(90),
];
const HEADS = [
  'Name',
  'Hip',
  'Hip (cm)',
  'hip_mm',
  'body.hipGirth',
  'Waist, in',
  'Length',
  'Cloth width',
  'Nappy',
  '',
  'Hip ((((',
  'toString',
  'x'.repeat(300),
  '-_-_-_mm',
  'Age (years)',
];
const ENDS = ['\n', '\r\n', '\r', '\n\n'];

/** A table of bodies in which heads, cells, rows or the signs between them are something else. */
export function damagedTable(body: Project['body'], chance: Chance): string {
  const rows = [
    ['Name', ...measurements.map((m) => measurementHead(m, 'cm'))],
    ...Array.from({ length: 1 + below(chance, 6) }, (_, i) => [
      `Row ${i}`,
      ...measurements.map((m) => measurementText(m, body, 'cm')),
    ]),
  ].map((cells) => [...cells]);
  for (let i = below(chance, 6); i > 0; i -= 1) {
    const cells = chance.oneOf(rows);
    cells[below(chance, cells.length)] = chance.oneOf(cells === rows[0] ? HEADS : CELLS);
  }
  if (chance.happens(0.1))
    chance.oneOf(rows).push(...Array.from({ length: below(chance, 600) }, () => chance.oneOf(CELLS)));
  if (chance.happens(0.1)) rows.splice(below(chance, rows.length), 1);
  if (chance.happens(0.3)) return csvFile(rows);
  const between = chance.oneOf([',', ';', '\t', '|', ' ']);
  const quoted = (cell: string) =>
    chance.happens(0.3) || cell.includes(between) ? `"${cell.replaceAll('"', '""')}"` : cell;
  return (
    (chance.happens(0.1) ? `sep=${between}\n` : '') +
    rows.map((cells) => cells.map(quoted).join(between)).join(chance.oneOf(ENDS))
  );
}
