import { fillField } from './support/fill-field';
import { goToChapter } from './support/go-to-chapter';
import { openWorkbench } from './support/open-workbench';
import { dropFile, fixture } from './support/plan-file';
import { expect, test } from './support/test';

test('from 8 to 10 bit a check turns, is said aloud, and turns back with undo', async ({ page }) => {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await goToChapter(page, 'Picture');
  const chapters = page.getByRole('navigation', { name: 'Chapters' });
  const depth = page.getByRole('region', { name: 'Given' }).getByRole('combobox', { name: 'Bit depth' }).first();
  await expect(depth).toHaveValue('8');
  await expect(chapters.getByRole('link', { name: 'Wish passes' })).toBeVisible();

  await depth.selectOption('10 bit');
  await expect(chapters.getByRole('link', { name: 'Wish watch 1' })).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: /^watch: .*Brook/ })).toBeAttached();

  await goToChapter(page, 'Wish');
  const stock = page.getByRole('region', { name: 'Checks' }).getByRole('listitem').filter({ hasText: 'Brook' });
  await expect(stock).toHaveAttribute('data-status', 'watch');

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Picture' })).toBeVisible();
  await expect(depth).toHaveValue('8');
  await expect(chapters.getByRole('link', { name: 'Wish passes' })).toBeVisible();
});

test('a joint that the lock does not take is repaired by one press, and undo brings it back', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Walls');
  const joint = page
    .getByRole('group', { name: 'A Horseshoe' })
    .getByRole('spinbutton', { name: 'Joint', exact: true });
  const repair = page.getByRole('button', { name: 'Take the nearest joints of the lock' });
  const stopped = page.getByRole('link', { name: /^Walls stop/ });
  await expect(joint.nth(1)).toHaveValue('3');

  await joint.nth(1).fill('3.4');
  await joint.nth(1).press('Enter');
  await expect(stopped).toBeVisible();

  await repair.click();
  await expect(joint.nth(1)).toHaveValue('3');
  await expect(stopped).toHaveCount(0);
  await expect(repair).toHaveCount(0);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(joint.nth(1)).toHaveValue('3.4');
  await expect(stopped).toBeVisible();
});

test('a value that cannot stand is refused at its field with the reason, and the plan stays', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Walls');
  await fillField(page.getByRole('group', { name: 'A Horseshoe' }), 'Base height', 'two doors');
  await expect(page.getByRole('alert')).toContainText(/\w/);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});
