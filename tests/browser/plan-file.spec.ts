import type { Page } from '@playwright/test';
import { chooseFile } from './support/choose-file';
import { fillField } from './support/fill-field';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { dropFile, savedBy } from './support/plan-file';
import { expect, test } from './support/test';

/** Opens the sample, changes it by hand and saves it; the Walls page is in view. */
async function changeAndSave(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  await openWorkbench(page);
  await goToChapter(page, 'Walls');
  await fillField(page.getByRole('group', { name: 'A Horseshoe' }), 'Base height', '250 mm');
  await expect(page.getByRole('spinbutton', { name: 'Base height' })).toHaveValue('0.25');
  const saved = await savedBy(page, page.getByRole('button', { name: 'Save file' }));
  return { name: saved.name, text: saved.bytes.toString('utf8') };
}

test('a saved file opens again as the same document, to the byte', async ({ page }) => {
  const file = await changeAndSave(page);
  expect(JSON.parse(file.text).walls[0].baseMm).toBe(250);

  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Wish' })).toBeVisible();
  await figuresAreThere(page);
  await chooseFile(page, file);
  await goToChapter(page, 'Walls');
  await expect(page.getByRole('spinbutton', { name: 'Base height' })).toHaveValue('0.25');
  const again = await savedBy(page, page.getByRole('button', { name: 'Save file' }));
  expect(again.bytes.toString('utf8')).toBe(file.text);
});

test('a broken file says why and where, and the plan that was open stays with its history', async ({ page }) => {
  const file = await changeAndSave(page);
  const broken = [
    { text: file.text.slice(0, 400), reason: /ends in the middle/ },
    { text: file.text.replace('"baseMm": 250', '"baseMm": "high"'), reason: /walls\[0\]\.baseMm/ },
    { text: file.text.replace(/"version": \d+/, '"version": 999'), reason: /newer/ },
  ];
  for (const { text, reason } of broken) {
    expect(text).not.toBe(file.text);
    await dropFile(page, { name: file.name, text });
    await expect(page.getByRole('main')).toContainText(reason);
    await expect(page.getByRole('definition').filter({ hasText: file.name })).toBeVisible();
    await page.getByRole('button', { name: 'Back to the plan' }).click();
    await expect(page.getByRole('spinbutton', { name: 'Base height' })).toHaveValue('0.25');
  }
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('spinbutton', { name: 'Base height' })).toHaveValue('0.00');
});
