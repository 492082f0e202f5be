import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What a machine finds wrong with names, roles, contrasts and targets on a page: the rule and where it is broken.
 *
 * @param page as it stands
 * @param what everything, or contrast alone, where nothing but the colours is another
 */
export async function faultsOf(page: Page, what: 'all' | 'contrast' = 'all'): Promise<readonly string[]> {
  // There are no frames to go into; without them the machine needs no second page, and half the time.
  const machine = new AxeBuilder({ page }).setLegacyMode(true);
  const asked = what === 'all' ? machine.withTags(STANDARDS) : machine.withRules(['color-contrast']);
  const { violations } = await asked.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(', ')}`);
}
