import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Web Content Accessibility Guidelines 2.0, 2.1 and 2.2, levels A and AA. */
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** Fails with the rule, the elements and what is wrong with them where the page breaks a rule. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
  const told = violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
  expect(told).toEqual([]);
}
