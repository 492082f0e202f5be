import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { install, NO_INSTALL } from './install.mjs';
import { root } from './paths.mjs';

const FIRST_PORT = 4173;
const SOURCES = ['src', 'public', 'index.html', 'vite.config.ts', 'package-lock.json'];

if (await install(!process.argv.includes(NO_INSTALL))) {
  const vite = await import('vite');
  if (!built()) {
    console.log('Building the workbench …');
    await vite.build({ root, logLevel: 'warn' });
  }
  // Without `strictPort` the next free port is taken.
  const server = await vite.preview({ root, logLevel: 'warn', preview: { port: FIRST_PORT } });
  console.log(`Legwork is ready at ${server.resolvedUrls?.local[0]}   (Ctrl+C stops it)`);
} else {
  process.exitCode = 1;
}

/** Whether the built app is there and no source has been touched since. */
function built() {
  const page = statSync(join(root, 'dist', 'index.html'), { throwIfNoEntry: false });
  return page !== undefined && SOURCES.every((name) => newest(join(root, name)) <= page.mtimeMs);
}

/**
 * When a file, or anything in a folder, was last touched; a folder's own time tells of files that went away.
 *
 * @param {string} path
 * @returns {number} milliseconds
 */
function newest(path) {
  const stats = statSync(path);
  const inside = stats.isDirectory() ? readdirSync(path).map((name) => newest(join(path, name))) : [];
  return Math.max(stats.mtimeMs, ...inside);
}
