import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { root } from '../../.house/paths.mjs';
import { findChromium } from '../../.house/tools.mjs';
import { lookAtExample, newWindow } from '../browser/open-app';
import { type Timing, timing } from './timing';

/** The yellow buttons, by station, with the way in which each is drawn, pixels a frame. */
const HANDLES = [
  ['Leg', 'Spread', 1, 0],
  ['Leg', 'Straighten: lean of centre back', 0.5, 0],
  ['Leg', 'Waist height', 0, 1],
  ['Leg', 'Leg width at the hem', -1, 0],
  ['Leg', 'Hem level: inseam', 0, -2],
  ['Edges', 'Waist height', 0, 1],
  ['Edges', 'Hem level: inseam', 0, -2],
] as const;

/** There and back, so that no limit is met. */
const WAY = 40;

/** A frame of the page: what the trace tells of one task of its main thread, microseconds. */
interface Task {
  readonly name: string;
  readonly ts: number;
  readonly tid: number;
  readonly dur?: number;
  /** Time that the thread itself had the processor, whoever else wanted it. */
  readonly tdur?: number;
}

/**
 * How long a frame takes while a yellow button is drawn over the built app's table: drafting, drawing anew, layout and
 * paint together, on the page's main thread. The panels beside the table follow between frames; the second
 * line of a button is both together, all that the main thread does from one frame to the next.
 *
 * @param frames for each button
 * @param slowdown how many times slower than this computer the page's own would be
 */
export async function timeDrags(frames: number, slowdown: number): Promise<readonly Timing[]> {
  const outDir = mkdtempSync(join(tmpdir(), 'legwork-drags-'));
  try {
    await build({ root, logLevel: 'error', build: { outDir, emptyOutDir: true } });
    const server = await preview({ root, logLevel: 'warn', build: { outDir }, preview: { port: 4383 } });
    const browser = await chromium.launch({
      executablePath: findChromium(),
      chromiumSandbox: process.getuid?.() !== 0,
      args: ['--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-sync'],
    });
    try {
      const context = await newWindow(browser);
      const page = await context.newPage();
      await page.goto(server.resolvedUrls?.local[0] ?? '');
      await lookAtExample(page);
      await page.getByRole('button', { name: 'no more hints' }).click();
      const session = await context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
      const timings: Timing[] = [];
      for (const [station, name, dx, dy] of HANDLES) {
        await page.getByRole('button', { name: station, exact: true }).click();
        const times = await frameTimes(browser, page, () => drag(page, name, dx, dy, frames));
        timings.push(timing(`${station}: ${name}`, times.frames), timing('  and what follows it', times.together));
      }
      return timings;
    } finally {
      await browser.close();
      await server.close();
    }
  } finally {
    rmSync(outDir, { recursive: true });
  }
}

async function drag(page: Page, name: string, dx: number, dy: number, frames: number): Promise<void> {
  const box = await page.getByRole('slider', { name, exact: true }).boundingBox();
  if (!box) throw new Error(`${name} is not on the table`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= frames; i += 1) {
    const there = WAY - Math.abs((i % (2 * WAY)) - WAY);
    // Chromium answers when the frame is done that shows it.
    await page.mouse.move(x + dx * there, y + dy * there);
  }
  await page.mouse.up();
}

/** Of the frames in which the page had something to draw, and of those with all until the next one: milliseconds. */
interface FrameTimes {
  readonly frames: readonly number[];
  readonly together: readonly number[];
}

async function frameTimes(browser: Browser, page: Page, doing: () => Promise<void>): Promise<FrameTimes> {
  await browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline'] });
  await doing();
  const { traceEvents }: { traceEvents: readonly Task[] } = JSON.parse((await browser.stopTracing()).toString());
  const drawn = traceEvents.filter(({ name }) => name === 'FireAnimationFrame');
  const main = drawn[0]?.tid;
  const within = (task: Task, at: number) => task.ts <= at && at <= task.ts + (task.dur ?? 0);
  const time = ({ dur = 0, tdur }: Task) => (tdur ?? dur) / 1000;
  const frames: number[] = [];
  const together: number[] = [];
  const tasks = traceEvents.filter(
    ({ name, tid, dur }) => tid === main && dur !== undefined && name.endsWith('RunTask'),
  );
  for (const task of tasks.toSorted((a, b) => a.ts - b.ts)) {
    if (drawn.some(({ ts }) => within(task, ts))) {
      frames.push(time(task));
      together.push(time(task));
    } else if (together.length > 0) together[together.length - 1] = (together.at(-1) ?? 0) + time(task);
  }
  return { frames, together };
}
