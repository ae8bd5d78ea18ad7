import type { Page } from '@playwright/test';
import { expectAccessible, expectLegible } from './support/expect-accessible';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

const table = (page: Page) => page.getByRole('grid', { name: 'What changed' });
const issue = (page: Page, name: string) => page.getByRole('button', { name: `Issue revision ${name}`, exact: true });

/** One column more at the right end of the sample's first segment. */
async function widen(page: Page): Promise<void> {
  await goToChapter(page, 'Walls');
  const columns = page.getByRole('spinbutton', { name: 'Columns' }).first();
  await columns.fill(`${Number(await columns.inputValue()) + 1}`);
  await columns.press('Enter');
  await figuresAreThere(page);
  await goToChapter(page, 'Revisions');
}

test('a revision that was issued holds names, is compared with the plan as it is now, and is restored and undone', async ({
  page,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'Revisions');
  await expect(page.getByText('Nothing was issued yet.')).toBeVisible();
  await page.getByLabel('Note').fill('For the build.');
  await issue(page, 'A').click();
  await expect(page.getByText('The plan is as issued in revision A.')).toBeVisible();
  await expect(page.getByText('For the build.')).toBeVisible();
  await expect(page.getByText('Nothing a crew reads is otherwise.')).toBeVisible();
  await expect(issue(page, 'B')).toBeVisible();

  await widen(page);
  await expect(page.getByText('The plan has changed since revision A was issued.')).toBeVisible();
  await expect(page.getByRole('region', { name: 'Names held' })).toContainText('Names of ports that were issued');
  // Every column of wall A has 14 panels.
  await page.getByLabel('Of what').selectOption({ value: 'panel' });
  await page.getByLabel('Change', { exact: true }).selectOption({ label: 'added (14)' });
  await expect(table(page).getByRole('row')).toHaveCount(15);
  await table(page).getByRole('row').nth(1).click();
  await expect(page.getByRole('region', { name: 'Picked' })).toContainText(/A C\d+ R1/);

  const mark = page.locator('.overlay-changed');
  await expect(mark).toBeHidden();
  await page.getByRole('switch', { name: 'Mark in the drawing what changed' }).check();
  await expect(mark).toHaveAttribute('d', /M/);
  await expect(page.getByText('dashed: changed since revision A')).toBeVisible();
  await expectAccessible(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectLegible(page);

  await page.getByRole('button', { name: 'Restore A …' }).click();
  await expect(page.getByText('Undo brings back what is there now.')).toBeVisible();
  await page.getByRole('button', { name: 'Restore revision A' }).click();
  await expect(page.getByText('The plan is as issued in revision A.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('The plan has changed since revision A was issued.')).toBeVisible();
});

test('two revisions are compared with each other, and the same name is not issued twice', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Revisions');
  await issue(page, 'A').click();
  await widen(page);
  await issue(page, 'B').click();
  await page.getByLabel('From', { exact: true }).last().selectOption({ label: 'revision A' });
  await page.getByLabel('To', { exact: true }).selectOption({ label: 'revision B' });
  await expect(table(page)).toBeVisible();
  await page.getByLabel('Of what').selectOption({ value: 'panel' });
  await page.getByLabel('Change', { exact: true }).selectOption({ label: 'added (14)' });

  await page.getByLabel('Name', { exact: true }).fill('a');
  await page.getByLabel('Name', { exact: true }).press('Enter');
  await issue(page, 'a').click();
  await expect(page.getByRole('alert')).toContainText('revision a was issued already');
});
