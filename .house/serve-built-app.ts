import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { preview } from 'vite';
import type {} from 'vitest';
import type { TestProject } from 'vitest/node';
import { root } from './paths.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, with a closing slash. */
    appUrl: string;
  }
}

/**
 * Serves the built app for the browser tests. It is served from a sub-folder, because whatever works there also works at
 * the top of a site, and the other way round does not hold.
 */
export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(join(root, 'dist', 'index.html'))) {
    throw new Error('There is no built app to test: run "npm run build" first.');
  }
  const server = await preview({ root, base: '/sewing/legwork/', logLevel: 'warn', preview: { port: 4273 } });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The built app could not be served.');
  project.provide('appUrl', url);
  return () => server.close();
}
