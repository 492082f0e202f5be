import ts from 'typescript';
import { expect, test } from 'vitest';
import { printedObjects } from '../../.house/printed-objects.mjs';

const SOURCE = `
declare const phrase: { readonly template: string };
declare const perhaps: { readonly template: string } | string;
declare const name: string;
declare const count: number;
declare function tag(words: unknown, ...values: unknown[]): string;
export const good = [\`\${name} \${count}\`, name + count, tag\`\${phrase}\`, count + count];
export const first = \`The \${phrase}\`;
export const second = \`The \${perhaps}\`;
export const third = 'The ' + phrase;
export const fourth = \`\${tag\`a\`} \${phrase}\`;
`;

test('a phrase that nobody printed is found within a text, and a text, a number and a tagged template are not', () => {
  const file = ts.createSourceFile('a.ts', SOURCE, ts.ScriptTarget.Latest, true);
  const host: ts.CompilerHost = {
    fileExists: (name) => name === 'a.ts',
    readFile: () => undefined,
    getSourceFile: (name) => (name === 'a.ts' ? file : undefined),
    getDefaultLibFileName: () => '',
    writeFile: () => {},
    getCurrentDirectory: () => '',
    getCanonicalFileName: (name) => name,
    useCaseSensitiveFileNames: () => true,
    getNewLine: () => '\n',
  };
  const program = ts.createProgram(['a.ts'], { noLib: true, types: [] }, host);
  expect(printedObjects(program, (name) => name === 'a.ts').map((line) => line.replace(/:.*: /, ' '))).toEqual([
    'a.ts(8) phrase',
    'a.ts(9) perhaps',
    'a.ts(10) phrase',
    'a.ts(11) phrase',
  ]);
  expect(printedObjects(program, () => false)).toEqual([]);
});
