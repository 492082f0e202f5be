import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What the machine leaves in a page that it has looked at. */
interface Machine {
  readonly run: (where: Document, how: object) => Promise<{ readonly violations: readonly Violation[] }>;
}

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[] }[];
}

/**
 * What a machine finds wrong with names, roles, contrasts and targets on a page: the rule and where it is broken.
 *
 * @param page as it stands; the machine is brought into it once, which takes longer than looking
 */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    // There are no frames to go into; without them the machine needs no second page, and half the time.
    await new AxeBuilder({ page }).setLegacyMode(true).withRules(['html-has-lang']).analyze();
  }
  return page.evaluate(async (tags) => {
    const { axe } = window as unknown as { readonly axe: Machine };
    const how = { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'], preload: false };
    const { violations } = await axe.run(document, how);
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
  }, STANDARDS);
}

/** The same in both themes, without going anywhere between them; each fault once with the theme in which it is. */
export async function faultsInBothThemes(page: Page): Promise<readonly string[]> {
  const found: string[] = [];
  for (const theme of ['daylight', 'chalkboard']) {
    await page.evaluate((worn) => document.documentElement.setAttribute('data-theme', worn), theme);
    found.push(...(await faultsOf(page)).map((fault) => `${theme}: ${fault}`));
  }
  return found;
}
