import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openProject } from '../../src/project';
import { faultsInBothThemes } from './faults';
import { launchChromium, lookAtExample, type OpenedApp, openApp } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(() => app.close());

const hem = (page: Page) => page.getByRole('textbox', { name: 'Hem depth', exact: true });
const name = (page: Page) => page.getByLabel('Name of the project');
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const told = (page: Page, words: string | RegExp) => page.getByRole('alert').filter({ hasText: words });

/** The workbench's script. */
const WORKBENCH = /\/assets\/begin-[^/]*\.js$/;

/**
 * Parts of the screen, each with words that only it draws and what makes it be drawn anew. In the script that a test hands
 * out, drawing them fails while the page's `broken` names them.
 */
const PARTS = [
  { what: 'What is finished', words: 'measures', anew: (page: Page) => hem(page).fill('4.1') },
  { what: 'The drawing', words: 'table-window', anew: (page: Page) => hem(page).fill('4.2') },
  { what: 'The bar', words: 'bar-button bar-undo', anew: (page: Page) => name(page).fill('Mine') },
  { what: 'The stations', words: 'stop-name', anew: (page: Page) => button(page, 'Leg').click() },
  { what: 'The page', words: 'bench', anew: (page: Page) => button(page, 'Working').click() },
] as const;

async function withFaults(page: Page): Promise<void> {
  await page.route(WORKBENCH, async (route) => {
    let script = await (await route.fetch()).text();
    for (const { what, words } of PARTS) {
      const literal = new RegExp(`([\`"'])${words}\\1`);
      if (!literal.test(script)) throw new Error(`“${words}” is not in the script any more`);
      const failing = `(globalThis.broken==="${what}"?(()=>{throw new Error("put in by a test")})():"${words}")`;
      script = script.replace(literal, failing);
    }
    await route.fulfill({ contentType: 'text/javascript', body: script });
  });
}

const setBroken = (page: Page, what = '') => page.evaluate((broken) => Object.assign(window, { broken }), what);

/** Opens the app with something done to its page before it is loaded. */
async function openWith(prepare: (page: Page) => Promise<unknown>): Promise<Page> {
  app = await openApp(browser);
  await prepare(app.page);
  await app.page.reload();
  return app.page;
}

/** What is in the file that a button saves. */
async function saved(page: Page, press: string | RegExp): Promise<string> {
  const download = page.waitForEvent('download');
  await button(page, press).first().click();
  return readFile(await (await download).path(), 'utf8');
}

async function hemSaved(page: Page, press: string | RegExp): Promise<number | undefined> {
  const opened = openProject(await saved(page, press));
  return opened.ok ? opened.value.hem.depth : undefined;
}

test('a fault while a part is drawn leaves the rest as it is; its words say what can be done, and undo does it', async () => {
  const page = await openWith(withFaults);
  for (const { what, anew } of PARTS) {
    await hem(page).fill('3.9');
    await hem(page).blur();
    await setBroken(page, what);
    await anew(page);
    await told(page, `${what} can’t be drawn because of an error in Legwork.`).waitFor();
    for (const other of PARTS) if (other.what !== what) expect(await told(page, other.what).count(), what).toBe(0);
    expect(await page.locator('.bar, .path, .table, .finished').count(), what).toBe(what === 'The page' ? 0 : 3);
    if (what === 'The stations' || what === 'The page') expect(await faultsInBothThemes(page), what).toEqual([]);
    await setBroken(page);
    await button(page, /^Undo /).click();
    await page.locator('.finished').waitFor();
    expect(await page.getByRole('alert').filter({ hasText: 'fault' }).count(), what).toBe(0);
    await button(page, 'Edges').click();
  }
});

test('where the page can’t be drawn the project is saved as a file, and another one is opened', async () => {
  const page = await openWith(withFaults);
  await hem(page).fill('4.4');
  await setBroken(page, 'The page');
  await button(page, 'Working').click();
  await told(page, 'The page can’t be drawn').waitFor();
  expect(await hemSaved(page, 'Save the project as a file')).toBe(44);
  await setBroken(page);
  await button(page, 'Another project').click();
  await page.getByRole('dialog', { name: 'Projects' }).getByRole('button', { name: 'New' }).click();
  await button(page, /^Draft for a body/).click();
  await page.getByText('Not your drawing yet.').waitFor();
});

describe('a late part that does not come', () => {
  test('is told in its place, and comes when it is asked for again', async () => {
    app = await openApp(browser);
    const { page } = app;
    const gone = (route: { fulfill: (answer: object) => Promise<void> }) => route.fulfill({ status: 404, body: '' });
    const late = /\/assets\/(Working|ProjectsDialog|SewStation)-[^/]*\.js$/;
    await page.route(late, gone);
    await button(page, 'Working').click();
    await told(page, 'The working could not be loaded.').waitFor();
    await button(page, 'Projects').click();
    await page.getByRole('dialog').getByText('The list of projects could not be loaded.').waitFor();
    expect(await faultsInBothThemes(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await button(page, 'Sew').click();
    await told(page, 'The sewing could not be loaded.').waitFor();
    await page.unroute(late);
    await page.locator('.guarded[data-at="working"]').getByRole('button', { name: 'Try again' }).click();
    await page.locator('.working').waitFor();
    await page.locator('.stop').getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('region', { name: 'Step of the sewing' }).waitFor();
    await button(page, 'Projects').click();
    await page.getByRole('dialog', { name: 'Projects' }).waitFor();
  });

  test('because the network is away comes by itself when it is back', async () => {
    app = await openApp(browser);
    const { page } = app;
    await page.context().setOffline(true);
    await button(page, 'Working').click();
    await told(page, 'Are you offline?').waitFor();
    await page.context().setOffline(false);
    await page.locator('.working').waitFor();
  });

  test('because a newer Legwork took its place leads to that one, with everything kept', async () => {
    app = await openApp(browser);
    const { page } = app;
    await page.route(/\/assets\/Working-/, (route) => route.fulfill({ status: 404, body: '' }));
    await page.route(
      (url) => url.pathname.endsWith('/legwork/'),
      (route) =>
        route.request().isNavigationRequest()
          ? route.continue()
          : route.fulfill({
              contentType: 'text/html',
              body: '<script type="module" src="./assets/newer.js"></script>',
            }),
    );
    await hem(page).fill('4.4');
    await button(page, 'Working').click();
    await told(page, 'A newer Legwork is here.').waitFor();
    await button(page, 'Use it now').click();
    await page.waitForEvent('load');
    expect(await hem(page).inputValue()).toBe('4.4');
  });
});

describe('the start', () => {
  test('that fails says so, and leaves what is kept to be saved', async () => {
    app = await openApp(browser);
    const { page } = app;
    await hem(page).fill('4.4');
    await page.getByText(/^kept on this computer/).waitFor();
    await page.route(WORKBENCH, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("the example can not be drafted")' }),
    );
    await page.reload();
    await told(page, 'Legwork can’t be started, by a fault in it.').waitFor();
    expect(await hemSaved(page, /^Save “/)).toBe(44);
    expect(JSON.parse(await saved(page, 'Save everything that is kept'))).toHaveProperty('last');
    await page.getByText('Details of the error').click();
    expect(await page.locator('pre').textContent()).toContain('the example can not be drafted');
    expect(await faultsInBothThemes(page)).toEqual([]);
    await page.unroute(WORKBENCH);
    await button(page, 'Try again').click();
    await page.waitForEvent('load');
    expect(await hem(page).inputValue()).toBe('4.4');
  });

  test('comes up where the browser lets nothing be kept, as in embedded and private windows', async () => {
    const page = await openWith((one) =>
      one.addInitScript(`
        const denied = () => { throw new DOMException('denied', 'SecurityError'); };
        for (const name of ['indexedDB', 'localStorage', 'sessionStorage', 'caches'])
          Object.defineProperty(window, name, { get: denied });
        for (const name of ['serviceWorker', 'storage', 'locks', 'clipboard'])
          Object.defineProperty(navigator, name, { get: denied });
        window.BroadcastChannel = class { constructor() { denied(); } };
        delete window.requestIdleCallback;
      `),
    );
    await lookAtExample(page);
    await hem(page).fill('4.4');
    await button(page, 'Chalkboard').click();
    await button(page, 'Projects').click();
    await page.getByRole('dialog', { name: 'Projects' }).waitFor();
    expect(await hemSaved(page, 'Save as a file')).toBe(44);
    await page.keyboard.press('Escape');
    await button(page, 'Blocks').click();
    await button(page, /^From a photograph/).click();
    await page.getByRole('dialog', { name: 'Blocks from a photograph' }).waitFor();
    expect(await page.getByText('error in Legwork').count()).toBe(0);
  });
});
