import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './paths.mjs';

const KEPT = join(root, '.cache');
/** The folders of bundles; the fonts lie as far from each as from the sources. */
const NAMED = 'command-';
const SOURCES = ['src', 'package-lock.json', '.house/command-bundle.mjs'];
/** A process that began with an earlier bundle may still load its writers; none runs for a day. */
const DAY = 86_400_000;

/**
 * The command line as plain JavaScript: bundled from its sources where they were touched since, so that Node runs it
 * without anything in between. Its writers are files of their own, loaded when they write.
 *
 * @returns {Promise<string | undefined>} the file to run; undefined where the packages are not installed
 */
export async function commandFile() {
  if (!existsSync(join(root, 'node_modules', 'vite'))) return undefined;
  const folder = join(KEPT, NAMED + stampOf(SOURCES));
  const file = join(folder, 'draft.mjs');
  if (existsSync(file)) return file;
  await bundle(folder);
  for (const name of readdirSync(KEPT).filter((one) => one.startsWith(NAMED))) {
    const other = join(KEPT, name);
    if (Date.now() - statSync(other).mtimeMs > DAY) rmSync(other, { recursive: true, force: true });
  }
  return file;
}

/** @param {string} folder appears whole or not at all, for several may bundle at once */
async function bundle(folder) {
  const { build } = await import('vite');
  mkdirSync(KEPT, { recursive: true });
  const made = mkdtempSync(join(KEPT, NAMED));
  const nothing = join(root, '.house', 'nothing.ts');
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    // What libraries would load in Node for pages and canvases that the command line has not.
    resolve: { alias: [{ find: /^(html2canvas|canvg|dompurify|jsdom|\.\/node\/.*)$/, replacement: nothing }] },
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: 'src/command/draft.ts',
      target: 'node20',
      outDir: made,
      minify: false,
      // Read only to tell where in the sources a fault came about.
      sourcemap: 'hidden',
      rolldownOptions: { output: { entryFileNames: 'draft.mjs', chunkFileNames: '[name]-[hash].mjs' } },
    },
  });
  try {
    renameSync(made, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    rmSync(made, { recursive: true });
  }
}

/**
 * A short name for the state of files, another one when any of them is touched.
 *
 * @param {readonly string[]} names files and folders of the repository
 */
function stampOf(names) {
  const hash = createHash('sha256');
  /** @param {string} path */
  const add = (path) => {
    const stats = statSync(path);
    if (stats.isDirectory()) for (const name of readdirSync(path).sort()) add(join(path, name));
    else hash.update(`${path} ${stats.size} ${stats.mtimeMs}\n`);
  };
  for (const name of names) add(join(root, name));
  return hash.digest('hex').slice(0, 12);
}
