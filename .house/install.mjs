import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './paths.mjs';
import { run } from './run.mjs';

/**
 * Whether the installed packages are those of the lock file: npm writes its own record of what it installed, and a
 * lock file newer than that record has changed since.
 *
 * @param {string} folder the repository
 */
export function installed(folder) {
  const record = join(folder, 'node_modules', '.package-lock.json');
  return existsSync(record) && statSync(record).mtimeMs >= statSync(join(folder, 'package-lock.json')).mtimeMs;
}

/**
 * Installs exactly the locked packages, unless they are there already.
 *
 * @returns {Promise<boolean>} false where npm failed; it has said why
 */
export async function install() {
  if (installed(root)) return true;
  console.log('Installing the packages of the lock file …');
  // npm names its own program file; going through it needs neither a shell nor a search of the path.
  const npm = process.env.npm_execpath;
  const arguments_ = ['ci', '--no-audit', '--no-fund'];
  const code = npm?.endsWith('.js') ? await run(process.execPath, [npm, ...arguments_]) : await run('npm', arguments_);
  return code === 0;
}
