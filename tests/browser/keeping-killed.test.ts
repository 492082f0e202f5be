import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { chromium, type Page } from 'playwright-core';
import { afterEach, beforeEach, expect, inject, test } from 'vitest';
import { findChromium } from '../../.house/tools.mjs';
import { CHROMIUM_ARGS, lookAtExample } from './open-app';

// The whole browser is killed as a dead battery does it: no page hears of it, and the same profile is opened again.

/** Nobody may lose more than was typed in this time, ms. */
const LAST_SECOND = 1000;
/** A machine that does much else at the moment may write a little later: it gets another try, with everything new. */
const BUSY = { retry: 2 };

let profile: string;
let running: ChildProcess | undefined;

beforeEach(async () => {
  profile = await mkdtemp(join(tmpdir(), 'profile-'));
});

afterEach(async () => {
  await kill();
  await rm(profile, { recursive: true, force: true, maxRetries: 5 });
});

async function open(): Promise<Page> {
  const args = [
    ...CHROMIUM_ARGS,
    '--headless=new',
    '--window-size=1440,900',
    '--lang=en-GB',
    '--accept-lang=en-GB',
    '--remote-debugging-port=0',
    `--user-data-dir=${profile}`,
  ];
  if (process.getuid?.() === 0) args.push('--no-sandbox');
  // A group of its own, so that all of its processes end at one blow.
  running = spawn(findChromium(), [...args, 'about:blank'], { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  const browser = await chromium.connectOverCDP(await addressOf(running));
  const page = await (browser.contexts()[0] ?? (await browser.newContext())).newPage();
  await page.goto(inject('appUrl'));
  await page.locator('.way-in, .stop').first().waitFor();
  return page;
}

async function addressOf({ stderr }: ChildProcess): Promise<string> {
  if (!stderr) throw new Error('Chromium says nothing');
  for await (const line of createInterface(stderr)) {
    const [, address] = /DevTools listening on (\S+)/.exec(line) ?? [];
    if (address !== undefined) return address;
  }
  throw new Error('Chromium did not start');
}

async function kill(): Promise<void> {
  const { pid } = running ?? {};
  if (!running || pid === undefined) return;
  const over = once(running, 'exit');
  process.kill(-pid, 'SIGKILL');
  await over;
  running = undefined;
}

const depth = (page: Page) => page.getByRole('textbox', { name: 'Hem depth', exact: true });

test('a browser that is killed in the middle of typing loses nothing but the last second', BUSY, async () => {
  const page = await open();
  await lookAtExample(page);
  await page.getByRole('textbox', { name: 'Name of the project' }).fill('Sunday');
  // For three seconds one change follows the other, so that no pause gives an opportunity to save.
  const written = new Map<string, number>();
  const start = performance.now();
  for (let tenth = 20; performance.now() - start < 3 * LAST_SECOND; tenth = tenth === 90 ? 20 : tenth + 1) {
    const text = `${Math.floor(tenth / 10)}.${tenth % 10}`.replace('.0', '');
    await depth(page).fill(text);
    written.set(text, performance.now());
  }
  const [last] = [...written].toSorted(([, a], [, b]) => b - a)[0] ?? [''];
  await kill();
  const killed = written.get(last) ?? 0;

  const again = await open();
  const found = await depth(again).inputValue();
  const lost = killed - (written.get(found) ?? Number.NEGATIVE_INFINITY);
  console.log(`lost with the browser: ${Math.round(lost)} ms of typing`);
  expect(lost).toBeLessThanOrEqual(LAST_SECOND);
  expect(await again.getByRole('textbox', { name: 'Name of the project' }).inputValue()).toBe('Sunday');
  // What was done before can be undone still.
  await again.getByRole('button', { name: 'undo hem depth' }).click();
  expect(await depth(again).inputValue()).toBe('3');
});
