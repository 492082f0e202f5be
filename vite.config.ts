import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

const nothing = fileURLToPath(new URL('.house/nothing.ts', import.meta.url));

export default defineConfig({
  // Relative addresses, so that the built app also works from a sub-folder of a site.
  base: './',
  plugins: [react()],
  // A worker that loads a writer late has to be a module, as the page is.
  worker: { format: 'es' },
  resolve: {
    // The PDF writer would load these only to print HTML pages and SVG pictures, which Legwork never asks of it.
    alias: [{ find: /^(html2canvas|canvg|dompurify)$/, replacement: nothing }],
  },
  test: {
    reporters: ['default', './.house/count-reporter.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'rooms',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'workbench',
          environment: 'jsdom',
          include: ['tests/workbench/**/*.test.tsx'],
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['./.house/serve-built-app.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
