import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
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

const SCREEN = { width: 1440, height: 900 };

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
 * Opens the built app where nothing is stored, and looks at the example.
 *
 * @param browser from {@link launchChromium}
 * @param options of the page, e.g. a narrow viewport; only tests of work without a network let the page keep itself
 */
export const openApp = (browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedApp> =>
  opened(browser, options, true);

/** The same as somebody sees it who never saw it before, and is asked how to begin. */
export const openAppAtFirst = (browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedApp> =>
  opened(browser, options, false);

async function opened(browser: Browser, options: BrowserContextOptions, begins: boolean): Promise<OpenedApp> {
  const page = await newPage(browser, options);
  return { ...(await openIn(page, begins)), close: () => page.context().close() };
}

/** The pages that tests of a file have done with, by their options other than how large they are. */
const left = new WeakMap<Browser, Map<string, Page>>();

/**
 * The same in the page that a test before has left, if it was opened alike but for its size: emptied of all that was kept
 * in it, but with the app's files at hand, which takes half the time. Not for tests of what is loaded or kept.
 */
export async function openAppAgain(browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedApp> {
  const pages = left.get(browser) ?? new Map<string, Page>();
  left.set(browser, pages);
  const { viewport = SCREEN, ...others } = options;
  const key = JSON.stringify(others);
  const before = pages.get(key);
  pages.delete(key);
  const again = before !== undefined && !before.isClosed();
  const page = again ? before : await newPage(browser, options);
  if (again) await forget(page);
  if (viewport) await page.setViewportSize(viewport);
  const app = await openIn(page, true);
  return {
    ...app,
    async close() {
      pages.set(key, page);
    },
  };
}

/** An empty page that asks for nothing, not even for an icon. */
const BESIDE = '<!doctype html><link rel="icon" href="data:,">';

/** Empties a page of the app, of what the app kept, and of what the test before listened to. */
async function forget(page: Page): Promise<void> {
  page.removeAllListeners();
  await page.mouse.move(0, 0);
  // The app keeps its work when it is left: only from a page beside it is there nothing more to come.
  const beside = new URL('beside.html', inject('appUrl')).href;
  await page.route(beside, (route) => route.fulfill({ contentType: 'text/html', body: BESIDE }));
  await page.goto(beside);
  await page.unroute(beside);
  await page.evaluate(async () => {
    sessionStorage.clear();
    localStorage.clear();
    const kept = await indexedDB.databases();
    // Each waits for what is still being written to it.
    const emptied = kept.map(
      ({ name = '' }) =>
        new Promise((resolve, reject) => {
          const request = indexedDB.deleteDatabase(name);
          request.onsuccess = resolve;
          request.onerror = reject;
        }),
    );
    await Promise.all(emptied);
  });
}

/**
 * A browser window of its own, of somebody who sews in centimetres and prints on A4, unless the options say otherwise:
 * the browser's own would be American.
 */
export const newWindow = (browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> =>
  browser.newContext({ viewport: SCREEN, locale: 'en-GB', serviceWorkers: 'block', ...options });

const newPage = async (browser: Browser, options: BrowserContextOptions): Promise<Page> =>
  (await newWindow(browser, options)).newPage();

async function openIn(page: Page, begins: boolean): Promise<Omit<OpenedApp, 'close'>> {
  const home = inject('appUrl');
  const complaints: string[] = [];
  const strangers: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => {
    const fault = request.failure()?.errorText;
    // What was on its way when a page is left or loaded again is called off by the browser; that is no fault of either side.
    if (fault !== 'net::ERR_ABORTED') complaints.push(`${request.url()}: ${fault}`);
  });
  page.on('request', (request) => {
    const { protocol } = new URL(request.url());
    if (!request.url().startsWith(home) && protocol !== 'data:' && protocol !== 'blob:') strangers.push(request.url());
  });
  await page.goto(home);
  if (begins) await lookAtExample(page);
  else await page.locator('.way-in').waitFor();
  return { page, complaints, strangers };
}

/** Goes in by the example, which is where most tests begin. */
export async function lookAtExample(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Look at the example/ }).click();
  // It comes a little later than the rest and takes room from the table: what a test measures is measured after that.
  await page.locator('.hint').waitFor();
}
