import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Web Content Accessibility Guidelines 2.0, 2.1 and 2.2, levels A and AA. */
const guidelines = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];
/** The rules among them that look at colours: all that another theme can break. */
const colourRules = ['color-contrast', 'link-in-text-block'];
const width = 1280;

/**
 * Makes the window as tall as the chapter. What is scrolled out of sight is not judged, and where a heading that sticks
 * lies there, the rule on contrast gives up for the whole page and says so only among what is incomplete (axe 4.13).
 */
export async function showWhole(page: Page): Promise<void> {
  await page.setViewportSize({ width, height: 800 });
  const height = await page.getByRole('main').evaluate((book) => book.scrollHeight + book.getBoundingClientRect().top);
  await page.setViewportSize({ width, height: Math.ceil(height) });
}

async function expectNoViolation(builder: AxeBuilder): Promise<void> {
  // The older way of running it spares a page for every look; it differs only for frames, and there are none.
  const { violations, passes, incomplete } = await builder.setLegacyMode().analyze();
  const told = violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
  const gaveUp = incomplete.flatMap(({ id, nodes }) =>
    nodes.flatMap(({ failureSummary }) => (failureSummary?.includes('encountered an error') ? [`${id} gave up`] : [])),
  );
  expect([...told, ...gaveUp]).toEqual([]);
  expect(passes.map(({ id }) => id)).toContain('color-contrast');
}

/** Fails with the rule, the elements and what is wrong with them where the page, or the part of it, breaks a rule. */
export async function expectAccessible(page: Page, part = 'body'): Promise<void> {
  await expectNoViolation(new AxeBuilder({ page }).include(part).withTags(guidelines));
}

/** The same for colours alone, once another theme is shown. */
export async function expectLegible(page: Page, part = 'body'): Promise<void> {
  await expectNoViolation(new AxeBuilder({ page }).include(part).withRules(colourRules));
}
