import { expect } from '@playwright/test';
import { openWorkbench } from './support/open-workbench';
import { dropFile, fixture, savedBy } from './support/plan-file';
import { test } from './support/test';

test('nine processors owned: a rate that does not fit shows what must change', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/horseshoe.json'));
  await page
    .getByRole('navigation', { name: 'Chapters' })
    .getByRole('link', { name: /^Picture/ })
    .click();
  const table = page.getByRole('region', { name: 'Frame rate and depth' });
  await expect(table.getByRole('button', { name: /^120 fps, 12 bit/ })).toBeVisible({ timeout: 60_000 });
  await table.getByRole('button', { name: /^48 fps, 10 bit/ }).click();
  await expect(page.getByText(/Previewing 48 fps, 10 bit/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByText(/Previewing/)).toBeHidden();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('the bill is saved as a file that holds every line', async ({ page }) => {
  await openWorkbench(page);
  await page
    .getByRole('navigation', { name: 'Chapters' })
    .getByRole('link', { name: /^Materials/ })
    .click();
  const saved = await savedBy(page, page.getByRole('button', { name: 'Save as CSV' }));
  expect(saved.name).toMatch(/\.csv$/);
  expect(saved.bytes.toString('utf8')).toContain('Needed');
});
