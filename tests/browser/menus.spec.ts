import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

test('a menu opens by pointer and by key, is moved through by arrows, and gives the focus back', async ({ page }) => {
  await openWorkbench(page);
  const theme = page.getByRole('button', { name: 'Theme', exact: true });
  const items = page.getByRole('menu', { name: 'Theme' }).getByRole('menuitem');
  await theme.click();
  await expect(items).toHaveCount(3);
  await expect(theme).toHaveAttribute('aria-expanded', 'true');
  await page.keyboard.press('Escape');
  await expect(items).toHaveCount(0);
  await expect(theme).toBeFocused();

  await page.keyboard.press('ArrowDown');
  await expect(items.nth(0)).toBeFocused();
  await page.keyboard.press('End');
  await expect(items.nth(2)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await expect(items).toHaveCount(0);
  await expect(theme).toBeFocused();

  // A press elsewhere closes it.
  await theme.click();
  await expect(items).toHaveCount(3);
  await page.mouse.click(5, 780);
  await expect(items).toHaveCount(0);
  await expect(theme).toHaveAttribute('aria-expanded', 'false');
});
