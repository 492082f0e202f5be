import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { root } from './paths.mjs';

/** Where the licences of everything that is in the built app stand in it. */
export const LICENCES_FILE = 'licences.txt';

const LICENCE_NAME = /^(licen[cs]e|copying|ofl)(\..*)?$/i;

/**
 * Writes the licence texts of all packages that the built app may hold, as their licences ask. A build that holds a
 * package whose licence isn't there fails.
 */
export const licences = (): Plugin => ({
  name: 'licences',
  apply: 'build',
  generateBundle(_options, bundle) {
    const packages = packagesUsed();
    const held = Object.values(bundle).flatMap((file) => (file.type === 'chunk' ? file.moduleIds : []));
    for (const id of held) {
      const name = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
      if (name !== undefined && !packages.has(name) && !BUILT_IN.has(name))
        this.error(`${name} is in the built app, but not among the dependencies whose licences are written`);
    }
    const texts = [...packages].map(([name, path]) => licenceText(name, path));
    this.emitFile({ type: 'asset', fileName: LICENCES_FILE, source: texts.join(`\n${'-'.repeat(72)}\n\n`) });
  },
});

/** What the bundler itself puts in: a few lines that load what is late, and the offline copy's. */
const BUILT_IN: ReadonlySet<string> = new Set(['vite', 'vite-plugin-pwa', 'rolldown', '@oxc-project/runtime']);

/** All packages that are no tools of development, by name, with where they lie; from the lock file. */
function packagesUsed(): ReadonlyMap<string, string> {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dev?: boolean; optional?: boolean }>;
  };
  const used = Object.entries(lock.packages)
    .filter(([path, { dev, optional }]) => path.startsWith('node_modules/') && !dev && !optional)
    .map(([path]) => [path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length), path] as const);
  return new Map(used.sort(([a], [b]) => (a < b ? -1 : 1)));
}

function licenceText(name: string, path: string): string {
  const folder = join(root, path);
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    version: string;
    license?: string;
    homepage?: string;
  };
  const file = readdirSync(folder).find((one) => LICENCE_NAME.test(one));
  const text = file === undefined ? 'Its package brings no text of it.' : readFileSync(join(folder, file), 'utf8');
  return `${name} ${about.version}\nLicence: ${about.license ?? 'see below'}\n\n${text.trim()}\n`;
}
