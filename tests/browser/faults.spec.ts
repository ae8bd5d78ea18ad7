import type { Page } from '@playwright/test';
import { dragByTouch } from './support/drag-by-touch';
import { expectAccessible } from './support/expect-accessible';
import { goToChapter } from './support/go-to-chapter';
import { goToChapterOnPhone, phone, showLeaf } from './support/on-phone';
import { openWorkbench } from './support/open-workbench';
import { spotOf } from './support/spot-of';
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

test('a rectangle of panels is marked by drag and by the keyboard, and the drawing stays where it is', async ({
  page,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'What goes dark');
  await ask(page, 'Panels are dark');
  await page.getByRole('switch', { name: 'A drag on Unrolled marks a rectangle' }).check();
  const from = await spotOf(page, 'A C10 R3');
  const to = await spotOf(page, 'A C14 R6');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 5 });
  await expect(page.locator('.overlay-stroke')).toHaveAttribute('d', /M/);
  await page.mouse.up();
  // Columns 10 to 14 and rows 3 to 6.
  await expect(page.getByText('20 panels are marked as dark.')).toBeVisible();
  expect(await spotOf(page, 'A C10 R3')).toEqual(from);

  // From C10 R3 two columns on and one row up: all of them are dark, and so they are lit again.
  await drawing(page).focus();
  await page.keyboard.press('Enter');
  for (const key of ['ArrowLeft', 'ArrowLeft', 'ArrowUp']) await page.keyboard.press(`Shift+${key}`);
  await page.keyboard.press('Enter');
  await expect(page.getByText('14 panels are marked as dark.')).toBeVisible();
  await expectAccessible(page);
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

test.describe('by touch', () => {
  test.use(phone);

  test('a finger marks a rectangle of panels', async ({ page }) => {
    await openWorkbench(page);
    await goToChapterOnPhone(page, 'What goes dark');
    await page.getByRole('button', { name: 'Panels are dark' }).tap();
    await page.getByRole('switch', { name: 'A drag on Unrolled marks a rectangle' }).tap();
    await showLeaf(page, 'Drawing');
    await dragByTouch(page, await spotOf(page, 'A C3 R1'), await spotOf(page, 'A C5 R2'));
    await expect(page.locator('.overlay-dark')).toHaveAttribute('d', /M/);
    await showLeaf(page, 'Book');
    await expect(page.getByText('6 panels are marked as dark.')).toBeVisible();
  });
});
