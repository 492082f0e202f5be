import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

/** The rooms whose figures a cutter would ask about: each of them has a source. */
const ROOMS = ['body', 'block', 'trace', 'leg'] as const;

/** Where a figure can come from: a survey, a rule, a print, practice, memory; or it is none of the body's and only a tolerance. */
const SOURCE =
  /^(practice|memory|tolerance|geometry|propagation of covariance|ANSUR II|UM-HSRI-77-17|NHANES|Unicode CLDR \d|SVG 2|ISO \d|EN \d|ASTM|16 CFR|a guild guideline|the published DXF reference|widths published|names and clauses ISO|\S\. .*\*.+\*|\*[A-Z][^*]+\*)/;

/** What only looks like a source, or points out of the repository: a word in brackets, a paper that isn't here. */
const NO_SOURCE =
  /\((from |for )?(practice|memory|tolerance|geometry|ANSUR|UM-HSRI|EN \d)|from memory\)|\bSources?: |\b(the|our|blocks') recipe|sources['’] list|the contract\b|home-sewing pages/;

interface Comment {
  readonly text: string;
  /** What the tag `@source` says, a paragraph as one line. */
  readonly source: string | undefined;
}

const src = fileURLToPath(new URL('../../src/', import.meta.url));
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('words/english/'))
  .map((file) => ({ file, text: readFileSync(src + file, 'utf8') }));

const COMMENT = /^ *(?:\/\*\*(?:(?!\*\/)[\s\S])*\*\/|(?:\/\/.*(?:\n *)?)+)/gm;

function commentRead(text: string): Comment {
  const line = text.replace(/^ *(\/\*\*|\*\/|\*|\/\/)|\*\/ *$/gm, '').replace(/\s+/g, ' ');
  return { text: line, source: /@source (.*?)(?= @[a-z]|$)/.exec(line)?.[1]?.trim() };
}

/** A constant with a figure in it at the outside of a file: its name, and the comment over it or over its neighbours. */
function figuresOf(text: string): readonly { readonly name: string; readonly comment: Comment }[] {
  return text.split(/\n\n+/).flatMap((block) => {
    let comment = commentRead('');
    return block.split(/\n(?=\/|const|export)/).flatMap((part) => {
      if (/^\/[*/]/.test(part)) comment = commentRead(part.match(COMMENT)?.[0] ?? '');
      const [, name, value = ''] =
        /^(?:export )?const ([A-Z][A-Z_]*)\b([\s\S]*)/m.exec(part.replace(COMMENT, '')) ?? [];
      const bare = value.replace(/'[^']*'|`[^`]*`|\/\/.*/g, '');
      return name && /[^\w.](?!0[^.\d])\d/.test(bare) && !/\bsource:/.test(value) ? [{ name, comment }] : [];
    });
  });
}

test('every figure of body, block, trace and leg names its source', () => {
  const figures = files
    .filter(({ file }) => ROOMS.some((room) => file.startsWith(`${room}/`)))
    .flatMap(({ file, text }) => figuresOf(text).map((one) => ({ ...one, file })));
  console.log(`${figures.length} constants with figures`);
  expect(figures.filter(({ comment }) => !comment.source).map(({ file, name }) => `${file} ${name}`)).toEqual([]);
  expect(figures.length).toBeGreaterThan(50);
});

test('what is named as a source is one, and no comment has it in brackets or somewhere outside the repository', () => {
  const comments = files.flatMap(({ file, text }) =>
    (text.match(COMMENT) ?? []).map((comment) => ({ file, ...commentRead(comment) })),
  );
  const sources = comments.filter(({ source }) => source !== undefined);
  console.log(`${sources.length} sources`);
  expect(
    sources.filter(({ source = '' }) => !SOURCE.test(source)).map(({ file, source }) => `${file}: ${source}`),
  ).toEqual([]);
  expect(comments.filter(({ text }) => NO_SOURCE.test(text)).map(({ file, text }) => `${file}:${text}`)).toEqual([]);
  expect(sources.length).toBeGreaterThan(150);
});

test('a figure without a source is seen, with one it is not', () => {
  const sourcesIn = (text: string) => figuresOf(text).map(({ comment }) => comment.source);
  expect(sourcesIn('/** How wide. */\nconst WIDE = 12;\n')).toEqual([undefined]);
  expect(sourcesIn('/** How wide. @source practice */\nconst WIDE = 12;\n')).toEqual(['practice']);
  expect(
    sourcesIn('/**\n * How wide.\n *\n * @source practice,\n *   tried\n */\nconst A = { b: 1 };\nconst B = 2;\n'),
  ).toEqual(['practice, tried', 'practice, tried']);
  expect(sourcesIn('/** A. @source memory */\nconst A = 1;\n\nconst B = 2;\n\nconst NONE = { b: 0 };\n')).toEqual([
    'memory',
    undefined,
  ]);
  expect(NO_SOURCE.test('How wide (practice).')).toBe(true);
});
