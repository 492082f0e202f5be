import { existsSync, lstatSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './paths.mjs';
import { run } from './run.mjs';

/** Said after a house command, it keeps it from installing anything: one sentence tells what is missing. */
export const NO_INSTALL = '--no-install';

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
 * Whether the packages are borrowed from another folder through a link. Installing would empty that other folder.
 *
 * @param {string} folder the repository
 */
export function borrowed(folder) {
  return lstatSync(join(folder, 'node_modules'), { throwIfNoEntry: false })?.isSymbolicLink() === true;
}

/**
 * Installs exactly the locked packages, unless they are there already.
 *
 * @param {boolean} mayInstall whether anything may be installed, or only said to be missing
 * @returns {Promise<boolean>} false where that can't be done; why has been said
 */
export async function install(mayInstall) {
  if (installed(root)) return true;
  if (borrowed(root)) {
    console.error('node_modules is a link to packages that do not fit the lock file: please remove the link first.');
    return false;
  }
  if (!mayInstall) {
    console.error(
      'The packages of package-lock.json are not installed: please run "npm ci" once, or leave out --no-install.',
    );
    return false;
  }
  console.log('Installing the packages of package-lock.json into node_modules, because Legwork is built of them …');
  // npm names its own program file; going through it needs neither a shell nor a search of the path.
  const npm = process.env.npm_execpath;
  const arguments_ = ['ci', '--no-audit', '--no-fund'];
  const code = npm?.endsWith('.js') ? await run(process.execPath, [npm, ...arguments_]) : await run('npm', arguments_);
  return code === 0;
}
