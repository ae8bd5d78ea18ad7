import { expect } from '@playwright/test';
import { expectAccessible } from './support/expect-accessible';
import { openWorkbench } from './support/open-workbench';
import { dropFile, fixture } from './support/plan-file';
import { test } from './support/test';

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every chapter can be read by all, in the ${colorScheme} theme`, async ({ page }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme });
    await openWorkbench(page);
    const links = page.getByRole('navigation', { name: 'Chapters' }).getByRole('link');
    for (const link of await links.all()) {
      await link.click();
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      await expectAccessible(page);
    }
  });
}

test('at 390 px no page scrolls sideways', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openWorkbench(page);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
});

test('a broken file says why, and the plan that was open stays', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, { name: 'cut.json', text: fixture('plans/flat.json').text.slice(0, 400) });
  await expect(page.getByText(/cut|end/i).first()).toBeVisible();
});
