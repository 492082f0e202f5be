import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { root } from '../../.house/paths.mjs';
import { findChromium } from '../../.house/tools.mjs';
import { benchFont, printClasses, printLongWork, printPaper, printPdfs, printSheets } from './print-paper';
import { timeDrafts } from './time-drafts';
import { timeDrags } from './time-drags';
import { timeLays } from './time-lays';
import { timeParallels } from './time-parallels';
import type { Timing } from './timing';

// Numbers only: nothing here passes or fails. `npm run bench`, or one part of it: `npm run bench -- paper`.

const RUNS = 500;
const BODIES = 1000;

const PARTS: Readonly<Record<string, () => void | Promise<void>>> = {
  async drafts() {
    printTimings('Node', timeDrafts(RUNS, BODIES));
    const inPage = (page: Page) =>
      page.evaluate(([runs, bodies]) => window.timeDrafts?.(runs, bodies) ?? [], [RUNS, BODIES] as const);
    printTimings('Chromium', await inChromium(inPage));
  },
  async drags() {
    printTimings('Frames of a drag, built app in Chromium', await timeDrags(160, 1));
    printTimings('The same on a processor four times slower', await timeDrags(80, 4));
  },
  lays: () => printTimings('Lays, in Node', timeLays(100)),
  sheets: printSheets,
  async paper() {
    await printPaper();
    const font = [...benchFont()];
    const inPage = (page: Page) => page.evaluate((letters) => window.timePaper?.(letters, 15), font);
    const seen = await inChromium(inPage);
    printPdfs('Chromium', seen?.pdf ?? []);
    printLongWork('Chromium (greatest heap)', seen?.long ?? []);
  },
  class: printClasses,
  parallels: printParallels,
  bundles: printBundles,
};

const asked = process.argv.slice(2);
for (const [name, print] of Object.entries(PARTS)) if (asked.length === 0 || asked.includes(name)) await print();

function printTimings(where: string, timings: readonly Timing[]): void {
  console.log(`\n${where}: milliseconds`);
  console.log(`${''.padEnd(34)}${'runs'.padStart(8)}${'p50'.padStart(9)}${'p95'.padStart(9)}`);
  for (const t of timings) {
    console.log(
      `${t.name.padEnd(34)}${String(t.runs).padStart(8)}${t.p50.toFixed(2).padStart(9)}${t.p95.toFixed(2).padStart(9)}`,
    );
  }
}

function printParallels(): void {
  console.log('\nParallel outlines of 200 legs, in Node: milliseconds each, and pieces in the cut line');
  for (const { name, p50, p95, pieces } of timeParallels(200)) {
    console.log(
      `${name.padEnd(34)}${p50.toFixed(2).padStart(9)}${p95.toFixed(2).padStart(9)}${pieces.toFixed(0).padStart(9)}`,
    );
  }
}

/** Measures in a page of Chromium, from a production build. */
async function inChromium<T>(measure: (page: Page) => Promise<T>): Promise<T> {
  const outDir = mkdtempSync(join(tmpdir(), 'legwork-bench-'));
  try {
    await build({
      root,
      logLevel: 'warn',
      build: { outDir, emptyOutDir: true, rolldownOptions: { input: join(root, 'tests/bench/page.html') } },
    });
    const server = await preview({ root, logLevel: 'warn', build: { outDir }, preview: { port: 4373 } });
    const browser = await chromium.launch({
      executablePath: findChromium(),
      chromiumSandbox: process.getuid?.() !== 0,
      args: ['--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-sync'],
    });
    try {
      const page = await browser.newPage();
      await page.goto(new URL('tests/bench/page.html', server.resolvedUrls?.local[0]).href);
      await page.waitForFunction(() => window.timePaper !== undefined);
      return await measure(page);
    } finally {
      await browser.close();
      await server.close();
    }
  } finally {
    rmSync(outDir, { recursive: true });
  }
}

/** What the app's built files weigh, and which of them the first load asks for. */
async function printBundles(): Promise<void> {
  const outDir = mkdtempSync(join(tmpdir(), 'legwork-bundle-'));
  try {
    await build({ root, logLevel: 'warn', build: { outDir, emptyOutDir: true } });
    const page = readFileSync(join(outDir, 'index.html'), 'utf8');
    const files = readdirSync(join(outDir, 'assets')).filter((file) => /\.(js|css)$/.test(file));
    console.log('\nBundles: kB, gzip');
    let first = 0;
    for (const file of files.sort()) {
      const size = gzipSync(readFileSync(join(outDir, 'assets', file))).length / 1000;
      const early = page.includes(file);
      if (early && file.endsWith('.js')) first += size;
      console.log(`${file.padEnd(42)}${size.toFixed(1).padStart(9)}${early ? '  first load' : '  on demand'}`);
    }
    console.log(`${'scripts of the first load'.padEnd(42)}${first.toFixed(1).padStart(9)}`);
  } finally {
    rmSync(outDir, { recursive: true });
  }
}
