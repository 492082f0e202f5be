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

/** The rules that a theme can break: it changes colours, and nothing of names, roles and places. */
export const OF_COLOURS = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };

/**
 * What a machine finds wrong with names, roles, contrasts and targets on a page: the rule and where it is broken.
 *
 * @param page as it stands; the machine is brought into it once, which takes longer than looking
 * @param rules that it looks for: all of the standards, if nothing else is said
 */
export async function faultsOf(
  page: Page,
  rules: object = { type: 'tag', values: STANDARDS },
): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    // There are no frames to go into; without them the machine needs no second page, and half the time.
    await new AxeBuilder({ page }).setLegacyMode(true).withRules(['html-has-lang']).analyze();
  }
  return page.evaluate(async (runOnly) => {
    const { axe } = window as unknown as { readonly axe: Machine };
    const how = { runOnly, resultTypes: ['violations'], preload: false };
    const { violations } = await axe.run(document, how);
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
  }, rules);
}

/** The same by daylight, and the colours of the other theme, without going anywhere; each fault with its theme. */
export async function faultsInBothThemes(page: Page): Promise<readonly string[]> {
  const wear = (worn: string) =>
    page.evaluate((theme) => document.documentElement.setAttribute('data-theme', theme), worn);
  await wear('daylight');
  const found = await faultsOf(page);
  await wear('chalkboard');
  const ofColours = await faultsOf(page, OF_COLOURS);
  return [...found.map((fault) => `daylight: ${fault}`), ...ofColours.map((fault) => `chalkboard: ${fault}`)];
}
