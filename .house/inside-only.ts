import { realpathSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import type { Plugin } from 'vite';

/** Keeps the local server from following a link in the built app that leads out of it. */
export const insideOnly = (): Plugin => ({
  name: 'inside-only',
  configurePreviewServer({ config, middlewares }) {
    const folder = resolve(config.root, config.build.outDir);
    middlewares.use((request, response, next) => {
      if (isWithin(folder, request.url ?? '', config.base)) next();
      else response.writeHead(404).end();
    });
  },
});

/** Whether what an address names lies within the folder, or nowhere at all. */
function isWithin(folder: string, url: string, base: string): boolean {
  try {
    const path = decodeURIComponent(url.replace(/[?#].*/s, ''));
    const own = path.startsWith(base) ? path.slice(base.length) : path;
    const [real, home] = [realpathSync(join(folder, own)), realpathSync(folder)];
    return real === home || real.startsWith(home + sep);
  } catch {
    // What isn't there is not served either.
    return true;
  }
}
