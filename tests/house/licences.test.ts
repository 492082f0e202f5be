import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { licences } from '../../.house/licences';
import { root } from '../../.house/paths.mjs';

const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  dependencies: Record<string, string>;
};

/** What the plugin does with a bundle of these modules. */
function written(...modules: readonly string[]): { text: string; refused: readonly string[] } {
  let text = '';
  const refused: string[] = [];
  const around = {
    error: (message: string) => refused.push(message),
    emitFile: ({ source }: { source: string }) => {
      text = source;
    },
  };
  const { generateBundle } = licences();
  if (typeof generateBundle !== 'function') throw new Error('the plugin writes nothing');
  generateBundle.call(around as never, {} as never, { a: { type: 'chunk', moduleIds: modules } } as never, true);
  return { text, refused };
}

it('brings the licence of each package that the built app may hold', () => {
  const { text, refused } = written(join(root, 'node_modules/react/index.js'), join(root, 'src/plane/curve.ts'));
  expect(refused).toEqual([]);
  for (const [name, version] of Object.entries(dependencies)) expect(text).toContain(`\n${name} ${version}\nLicence: `);
  expect(text).toMatch(/react-dom [\d.]+\nLicence: MIT\n\nMIT License\n[\s\S]*Permission is hereby granted/);
  expect(text).toMatch(/SIL OPEN FONT LICENSE/i);
});

it('fails the build that holds a package whose licence it would lack', () => {
  const { refused } = written(join(root, 'node_modules/vitest/index.js'));
  expect(refused).toEqual([expect.stringContaining('vitest is in the built app')]);
});
