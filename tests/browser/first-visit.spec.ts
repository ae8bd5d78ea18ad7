import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

test('a first visit opens the sample plan with its figures', async ({ page, clicks }) => {
  await openWorkbench(page);
  await expect(page.getByRole('navigation', { name: 'Chapters' }).getByRole('link').first()).toBeVisible();
  await expect(page.getByRole('region', { name: 'What is left' })).toContainText(/\d/);
  expect(clicks.count()).toBe(0);
});
