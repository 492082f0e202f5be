import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import configuration from '../.dependency-cruiser.cjs';
import { folders, rooms } from './rooms.cjs';

/**
 * Holds the layer rule against the files of `src/`.
 *
 * @param {string} folder the repository
 * @returns {Promise<{ looked: number, problems: string[] }>} how many files were looked at, and one line for each breach
 */
export async function layerProblems(folder) {
  const { options, ...ruleSet } = configuration;
  const { output } = await cruise(['src'], { ...options, baseDir: folder, validate: true, ruleSet });
  if (typeof output === 'string') throw new Error('The layer tool gave no result object.');
  const problems = output.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);

  const files = readdirSync(join(folder, 'src'), { recursive: true, encoding: 'utf8' })
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'));
  // The tool can see no files at all and still call that a success, so what it saw is held against what is there.
  const seen = new Set(output.modules.map((module) => module.source));
  problems.push(...files.filter((name) => !seen.has(name)).map((name) => `not-looked-at: ${name}`));
  if (files.length === 0) problems.push('not-looked-at: src holds no TypeScript file');
  // A room that is not in the order is bound by no rule, so there may be none.
  problems.push(...files.filter((name) => !rooms.includes(name.split('/')[1] ?? '')).map((name) => `no-room: ${name}`));
  const unordered = files.filter((name) => {
    const [, room = '', folder = '', ...rest] = name.split('/');
    return rest.length > 0 && folders[room]?.includes(folder) === false;
  });
  problems.push(...unordered.map((name) => `no-folder: ${name}`));
  return { looked: files.length, problems: problems.sort() };
}
