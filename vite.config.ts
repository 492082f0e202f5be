import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { insideOnly } from './.house/inside-only.ts';
import { licences } from './.house/licences.ts';
import { pagePolicy } from './.house/page-policy.ts';
import { preloadWorkbench } from './.house/preload-workbench.ts';

const nothing = fileURLToPath(new URL('.house/nothing.ts', import.meta.url));

/** Everything the app needs without a network is fetched at the first visit; a newer one waits until it is asked for. */
const offline = () =>
  VitePWA({
    registerType: 'prompt',
    injectRegister: null,
    manifest: {
      name: 'Legwork',
      short_name: 'Legwork',
      description: 'Drafts the lounge pant, from the tape measure to a true-scale pattern.',
      lang: 'en',
      display: 'standalone',
      background_color: '#FAF6EE',
      theme_color: '#1F2A33',
      icons: [
        { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,woff2,ttf,svg}', 'licences.txt'],
      // The page that is open at the first visit works without a network, too.
      clientsClaim: true,
      cleanupOutdatedCaches: true,
    },
  });

/**
 * What the first screen and the later ones share, in one file: the checks with all that they import, and the small parts
 * of the table. As small files they would be larger by 16 kB.
 */
const SHARED =
  /src\/(workbench\/(fields\/(Switch|FileInput|start-measuring)\.|view\/|finished\/(Verdict|order|rows|look-at-check|good-checks)|class\/class-open|working\/sewing-shown|chalk\/(first-cut|chalk)|store\/field-id|shelf\/kept\.|table\/(table-state|ChalkLines|LitLines|use-station-drawing|apart|path-text|Word|use-height|drawings\/(HalfTints|Line|Marks))\.)|project\/(checks|hem-ends)\.|files\/work\/file-name|cloth\/layout-words|leg\/(lean|changes))/;

/** What the stations share, and the first screen has no use for. */
const FIELDS = /src\/workbench\/fields\//;

const tally = process.env.LEGWORK_TALLY;

/** The one test of the rooms that puts something in the place of what a module exports: it has a process of its own. */
const PUTS_IN_PLACE = 'tests/command/faults.test.ts';

export default defineConfig({
  // Relative addresses, so that the built app also works from a sub-folder of a site.
  base: './',
  // A worker that loads a writer late has to be a module, as the page is.
  worker: { format: 'es' },
  plugins: [react(), pagePolicy(), insideOnly(), licences(), preloadWorkbench('/workbench/begin.tsx'), offline()],
  resolve: {
    // The PDF writer would load these only to print HTML pages and SVG pictures, which Legwork never asks of it.
    alias: [{ find: /^(html2canvas|canvg|dompurify)$/, replacement: nothing }],
  },
  build: {
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'shared', test: SHARED, priority: 1 },
            { name: 'fields', test: FIELDS },
          ],
        },
      },
    },
  },
  test: {
    // `npm test` sums up what several runs wrote.
    reporters: tally === undefined ? ['default'] : ['default', ['json', { outputFile: tally }]],
    projects: [
      {
        extends: true,
        test: {
          name: 'rooms',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/workbench/**', PUTS_IN_PLACE],
          testTimeout: 120_000,
          // The rooms are pure: loaded once for all files, they give each what they would give it alone.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          // The store and the shelf remember, and what is put in the place of a module stays there.
          name: 'bench',
          environment: 'node',
          include: ['tests/workbench/**/*.test.ts', PUTS_IN_PLACE],
          setupFiles: ['tests/workbench/in-britain.ts'],
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'workbench',
          environment: 'jsdom',
          include: ['tests/workbench/**/*.test.tsx'],
          setupFiles: ['tests/workbench/in-britain.ts', 'tests/workbench/patience.ts', 'tests/workbench/unstyled.ts'],
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['./.house/serve-built-app.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          isolate: false,
        },
      },
    ],
  },
});
