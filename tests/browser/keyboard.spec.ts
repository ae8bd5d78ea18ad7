import { openWorkbench } from './support/open-workbench';
import { tabTo } from './support/tab-to';
import { expect, test } from './support/test';

test('from a first visit to a ring, its undo and a saved file by the keyboard alone', async ({ page, clicks }) => {
  await openWorkbench(page);
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'To the chapter' })).toBeFocused();
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Which panel suits our hall?' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Wish' })).toBeVisible();

  const wished = [
    ['Inside diameter', '20 m'],
    ['Height', '6 m'],
    ['Opening', '4 m'],
    ['Hall, length', '30 m'],
    ['Hall, width', '26 m'],
  ] as const;
  for (const [name, text] of wished) {
    await tabTo(page, page.getByRole('spinbutton', { name, exact: true }));
    await page.keyboard.type(text);
  }
  const builds = page.getByRole('region', { name: 'One best build for each panel' });
  const use = builds.getByRole('button', { name: /^Use / }).first();
  await tabTo(page, use);
  await expect(use).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText(/\d/);

  await page.keyboard.press('Control+z');
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText('nothing to measure');
  await page.keyboard.press('Control+Shift+z');
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText(/\d/);

  const [saved] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  expect(saved.suggestedFilename()).toMatch(/\.json$/);
  expect(clicks.count()).toBe(0);
});
