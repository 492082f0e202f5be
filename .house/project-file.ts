import { type Measurement, type MeasurementKey, measurements } from '../src/body';
import {
  FIELDS_BY_PATH,
  type Field,
  figureWanted,
  measurementWanted,
  usualValue,
  wantedOf,
} from '../src/project/fields';
import { fieldSentence } from '../src/project/fields/sentences';
import { TAPE_LENGTHS, TAPE_PLACES, type TapeLength } from '../src/trace';
import { printPhrase, said, words } from '../src/words';

/** Nothing of the draft rests on these where they were not measured. */
const LEFT_OUT: ReadonlySet<MeasurementKey> = new Set([
  'trouserInseam',
  'crotchLength',
  'frontCrotchLength',
  'highHipGirth',
  'outsideLeg',
  'height',
]);

/** What `docs/project-file.md` says, with its tables written anew from the catalogues of fields, of tape lengths and of measurements. */
export const projectFileText = (text: string): string =>
  [
    { name: 'choices', head: FIELD_HEAD, rows: [...FIELDS_BY_PATH].map(choiceRow) },
    { name: 'numbers', head: TAPE_HEAD, rows: TAPE_LENGTHS.map(tapeRow) },
    { name: 'body', head: FIELD_HEAD, rows: measurements.map(measurementRow) },
  ].reduce(withTable, text);

const FIELD_HEAD = ['field', 'on the screen', 'what it is', 'takes', 'left out'];
const TAPE_HEAD = ['length', 'on the screen', 'where the tape lies', 'takes'];

/** The text with the table between two comments of a name in place of the one that stood there. */
function withTable(
  text: string,
  { name, head, rows }: { readonly name: string; readonly head: readonly string[]; readonly rows: readonly string[] },
): string {
  const [start, end] = [`<!-- table: ${name} -->`, `<!-- end of table: ${name} -->`];
  const [from, to] = [text.indexOf(start), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`There is no place for the table “${name}”.`);
  const lines = [`| ${head.join(' | ')} |`, `|${' --- |'.repeat(head.length)}`];
  return [text.slice(0, from + start.length), ...lines, ...rows, text.slice(to)].join('\n');
}

const row = (path: string, ...cells: readonly string[]): string => `| \`${path}\` | ${cells.join(' | ')} |`;

const choiceRow = ([path, field]: readonly [string, Field]): string =>
  row(
    path,
    printPhrase(field.name, 'cm'),
    said(fieldSentence(path)),
    printPhrase(wantedOf(field), 'cm'),
    String(usualValue(field, 'cm') ?? 'not answered'),
  );

const tapeRow = (one: TapeLength): string =>
  row(
    one.key,
    words`${one.name}`,
    words`${TAPE_PLACES[one.key]}`,
    printPhrase(figureWanted({ unit: 'mm', ...one }), 'cm'),
  );

const measurementRow = (one: Measurement): string =>
  row(
    `body.${one.key}`,
    words`${one.name}`,
    words`${one.definition}`,
    printPhrase(measurementWanted(one), 'cm'),
    leftOut(one),
  );

function leftOut({ key, required, inPlace, unit }: Measurement): string {
  if (required) return inPlace ? `must be measured, or \`body.${inPlace}\`` : 'must be measured';
  if (unit === 'years') return 'is unknown';
  return LEFT_OUT.has(key) ? 'is left out' : 'is estimated';
}
