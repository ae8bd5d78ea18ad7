import { expect } from '@playwright/test';
import { openWorkbench } from './support/open-workbench';
import { test } from './support/test';

test('a hall and a wish alone lead to a ring that is used in one step and undone in one', async ({ page, clicks }) => {
  await openWorkbench(page);
  await page.getByRole('button', { name: 'Which panel suits our hall?' }).click();
  const fill = async (name: string, text: string) => {
    const field = page.getByRole('spinbutton', { name, exact: true });
    await field.fill(text);
    await field.press('Enter');
  };
  await fill('Hall, length', '30 m');
  await fill('Hall, width', '26 m');
  await fill('Inside diameter', '20 m');
  await fill('Opening', '4 m');
  await fill('Height', '6 m');
  const builds = page.getByRole('region', { name: 'One best build for each panel' });
  const use = builds.getByRole('button', { name: /^Use / }).first();
  await use.click();
  await expect(page.getByRole('region', { name: 'What is left' })).toContainText('Fullest port');
  expect(clicks.count()).toBeLessThan(12);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Redo' })).toBeEnabled();
});
