import type { Page } from '@playwright/test';
import { expectAccessible } from './support/expect-accessible';
import { goToChapter } from './support/go-to-chapter';
import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

const drawing = (page: Page) => page.getByRole('application');
const row = (page: Page, name: string) =>
  page.getByRole('region', { name: 'What goes dark, as planned and without returns' }).getByRole('row', { name });

async function ask(page: Page, question: 'One part fails' | 'Panels are dark'): Promise<void> {
  await page.getByRole('group', { name: 'Question' }).getByRole('button', { name: question }).click();
}

test('a part that fails shows what it takes along, on every view, and stays picked from page to page', async ({
  page,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'What goes dark');
  await page.getByLabel('What fails').selectOption({ label: 'processor' });
  // Processor 1 drives 13 columns of 14 panels of wall A, which has 75 columns: 182 of 1050.
  await expect(row(page, 'A Horseshoe')).toContainText('182');
  await expect(row(page, 'A Horseshoe')).toContainText('17.3');
  const dark = page.locator('.overlay-dark');
  await expect(dark).toHaveAttribute('d', /M/);
  await page.getByRole('button', { name: 'From above' }).click();
  await expect(dark).toHaveAttribute('d', /M/);

  await goToChapter(page, 'Power');
  await expect(dark).toBeHidden();
  await expect(page.getByRole('region', { name: 'Picked' })).toContainText('processor 1');
  await goToChapter(page, 'What goes dark');
  await expect(page.getByLabel('Which one')).toHaveValue('processor 1');
  await expectAccessible(page);
});

test('a run marked as dark by the keyboard leads to its home run, and a name does the same', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'What goes dark');
  await ask(page, 'Panels are dark');
  await page.getByRole('button', { name: 'its run' }).click();
  await drawing(page).focus();
  // The cursor begins at the first panel of the wall, on run 1A-01 or beside it, and goes up to row 9.
  for (let step = 0; step < 9; step++) await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('Space');
  // Above row 2 every column is a run of its own: 12 panels.
  await expect(page.getByText('12 panels are marked as dark.')).toBeVisible();
  const suspects = page.getByRole('list', { name: 'Likeliest culprits' });
  const first = suspects.getByRole('listitem').first();
  await expect(first).toContainText('each darkens just these panels');
  await expect(first.getByRole('button').first()).toHaveText(/^home run 1[AB]-\d\d$/);
  await page.keyboard.press('Space');
  await expect(page.getByText('No panel is marked as dark.')).toBeVisible();

  const name = page.getByLabel('Mark by name');
  await name.fill('port 3B-04');
  await name.press('Enter');
  await expect(first.getByRole('button').first()).toHaveText('home run 3B-04');
  await first.getByRole('button').first().click();
  await expect(page.getByRole('region', { name: 'Picked' })).toContainText('Home run 3B-04');
  await expectAccessible(page);
});

test('a press on the drawing marks a panel and one more lights it again; marks outlive a turn of the page', async ({
  page,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'What goes dark');
  await ask(page, 'Panels are dark');
  const box = (await drawing(page).boundingBox())!;
  const press = () => page.mouse.click(box.x + box.width * 0.4, box.y + box.height * 0.25);
  await press();
  await expect(page.getByText('1 panel is marked as dark.')).toBeVisible();
  await press();
  await expect(page.getByText('No panel is marked as dark.')).toBeVisible();
  await press();
  await goToChapter(page, 'Runs');
  await goToChapter(page, 'What goes dark');
  await expect(page.getByText('1 panel is marked as dark.')).toBeVisible();
  await page.getByRole('button', { name: 'All are lit' }).click();
  await expect(page.getByText('No panel is marked as dark.')).toBeVisible();
});

test('the ten worst failures lead to what they darken', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'What goes dark');
  const worst = page.getByRole('region', { name: 'The ten worst single failures' });
  // A line of titles and ten of failures.
  await expect(worst.getByRole('row')).toHaveCount(11);
  const [, line] = await worst.getByRole('row').all();
  const lost = await line!.getByRole('cell').first().textContent();
  await line!.getByRole('button').click();
  await expect(row(page, 'The stage')).toContainText(lost!);
});
