import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { root } from './paths.mjs';
import { findChromium } from './tools.mjs';

// Draws the icons of an installed Legwork from public/icon.svg: `node --import tsx .house/make-icons.ts`.

const button = readFileSync(join(root, 'public/icon.svg'), 'utf8');

/** The button alone, or smaller on paper that may be cut to any shape (its middle four fifths are always seen). */
const page = (size: number, onPaper: boolean): string => {
  const [inset, ground] = onPaper ? [size * 0.16, '#FAF6EE'] : [0, 'transparent'];
  const sized = button.replace(/width="64" height="64"/, `width="${size - 2 * inset}" height="${size - 2 * inset}"`);
  return `<body style="margin:0;padding:${inset}px;background:${ground}">${sized}</body>`;
};

const browser = await chromium.launch({ executablePath: findChromium(), chromiumSandbox: process.getuid?.() !== 0 });
for (const [name, size, onPaper] of [
  ['icon-192.png', 192, false],
  ['icon-512.png', 512, false],
  ['icon-maskable-512.png', 512, true],
  ['icon-touch-180.png', 180, true],
] as const) {
  const sheet = await browser.newPage({ viewport: { width: size, height: size } });
  await sheet.setContent(page(size, onPaper));
  writeFileSync(join(root, 'public', name), await sheet.screenshot({ omitBackground: true }));
}
await browser.close();
