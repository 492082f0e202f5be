import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { findChromium } from '../../.house/tools.mjs';

/** The built app in a page of its own, with what it did that it should not have done. */
export interface OpenedApp {
  readonly page: Page;
  /** Errors in the console, uncaught errors and failed requests, as they come. */
  readonly complaints: readonly string[];
  /** Requests to anywhere but where the app came from. */
  readonly strangers: readonly string[];
  close(): Promise<void>;
}

/** A browser that draws without a graphics card and asks nobody anything. */
export const CHROMIUM_ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-sync',
] as const;

/** Starts the Chromium that `npm test` found; close it after the file's last test. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: findChromium(),
    // Chromium refuses its sandbox to root, which is who runs tests in a container.
    chromiumSandbox: process.getuid?.() !== 0,
    args: [...CHROMIUM_ARGS],
  });
}

/**
 * Opens the built app as somebody would who never saw it before: nothing is stored.
 *
 * @param browser from {@link launchChromium}
 * @param options of the page, e.g. a narrow viewport; only tests of work without a network let the page keep itself
 */
export async function openApp(browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedApp> {
  const home = inject('appUrl');
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block',
    ...options,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  const strangers: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => complaints.push(`${request.url()}: ${request.failure()?.errorText}`));
  page.on('request', (request) => {
    const { protocol } = new URL(request.url());
    if (!request.url().startsWith(home) && protocol !== 'data:' && protocol !== 'blob:') strangers.push(request.url());
  });
  await page.goto(home);
  // It comes a little later than the rest and takes room from the table: what a test measures is measured after that.
  await page.locator('.hint').waitFor();
  return { page, complaints, strangers, close: () => context.close() };
}
