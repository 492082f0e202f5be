import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

/** The rooms whose figures a cutter would ask about. */
const ROOMS = ['body', 'block', 'leg'] as const;

/** Where a figure can come from: a survey, a print, practice, memory; or it is none of the body's and only a tolerance. */
const SOURCE =
  /practice|memory|tolerance|geometry|for showing only|ANSUR|UM-HSRI|AnthroKids|NHANES|ISO 8559|EN 14682|C-209|\*[A-Z][^*]+\*|open surveys/;

/** A constant with figures in it at the outside of a file: its name, and what stands in the comment over it. */
function figuresOf(text: string): readonly { readonly name: string; readonly comment: string }[] {
  const found: { name: string; comment: string }[] = [];
  let comment = '';
  let open = '';
  for (const line of text.split('\n')) {
    if (/^(\/\*\*| \*|\/\/)/.test(line)) {
      open = /^(\/\*\*|\/\/)/.test(line) && !open.startsWith('//') ? line : `${open}\n${line}`;
      continue;
    }
    if (open !== '') comment = open;
    open = '';
    if (line.trim() === '') comment = '';
    const name = /^(?:export )?const ([A-Z][A-Z_]*)\b/.exec(line)?.[1];
    // A text that names its source itself, or a table whose file begins with it, needs no comment of its own.
    if (name)
      found.push({
        name,
        comment: `${text.startsWith('//') ? text.split('\n')[0] : ''}${comment}${/'.*'|`.*`/.exec(line)?.[0] ?? ''}`,
      });
  }
  return found.filter(({ name }) => new RegExp(`const ${name}\\b[^;]*?=[^;]*?[^\\w.][-−]?\\d`, 's').test(text));
}

const files = ROOMS.flatMap((room) => {
  const folder = fileURLToPath(new URL(`../../src/${room}/`, import.meta.url));
  return readdirSync(folder).map((file) => ({ file: `${room}/${file}`, text: readFileSync(folder + file, 'utf8') }));
});

/** Lists and texts that hold a digit and are no figures of a body. */
const NO_FIGURES = [
  'SEEN',
  'NO_CORRECTIONS',
  'NOTHING',
  'NO_LEG',
  'UNFITTED',
  'FIGURES',
  'STARTING_BODIES',
  'RISE_SOURCE',
  'FORK_SOURCE',
  'WAIST_SOURCE',
];

test('every figure of body, block and leg says where it comes from', () => {
  const figures = files.flatMap(({ file, text }) => figuresOf(text).map((one) => ({ ...one, file })));
  const silent = figures
    .filter(({ name, comment }) => !SOURCE.test(comment) && !NO_FIGURES.includes(name))
    .map(({ file, name }) => `${file} ${name}`);
  console.log(`${figures.length} constants with figures`);
  expect(silent).toEqual([]);
  expect(figures.length).toBeGreaterThan(50);
});

test('a figure without a source is seen, with one it is not', () => {
  const bare = '/** How wide. */\nconst WIDE = 12;\n';
  expect(figuresOf(bare).map(({ comment }) => SOURCE.test(comment))).toEqual([false]);
  expect(figuresOf(bare.replace('wide.', 'wide (practice).')).map(({ comment }) => SOURCE.test(comment))).toEqual([
    true,
  ]);
  expect(figuresOf('/** Practice. */\nconst A = 1;\n\nconst B = 2;\n').map(({ comment }) => comment)).toEqual([
    '/** Practice. */',
    '',
  ]);
});
