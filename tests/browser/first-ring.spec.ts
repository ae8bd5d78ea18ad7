import { fillField } from './support/fill-field';
import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

/** Job (a): a hall 30 x 26 m, about a 20 m ring with a gap for a truck, 6 m high: which panel should we buy? */
test('a hall and a wish alone lead to a ring that is used in one step and undone in one', async ({ page, clicks }) => {
  await openWorkbench(page);
  await page.getByRole('button', { name: 'Which panel suits our hall?' }).click();
  await fillField(page, 'Hall, length', '30 m');
  await fillField(page, 'Hall, width', '26 m');
  await fillField(page, 'Inside diameter', '20 m');
  await fillField(page, 'Opening', '4 m');
  await fillField(page, 'Height', '6 m');
  const builds = page.getByRole('region', { name: 'One best build for each panel' });
  const use = builds.getByRole('button', { name: /^Use / });
  await expect(use).not.toHaveCount(0);
  await expect(builds.getByText('…', { exact: true })).toHaveCount(0, { timeout: 30_000 });
  await use.first().click();
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText(/\d/);
  // The one that was taken says so at its head, and the last build is reached by the keyboard.
  const heads = builds.getByRole('columnheader');
  await expect(heads.filter({ hasText: 'in use' })).toHaveAttribute('aria-current', 'true');
  await expect(heads.filter({ hasText: 'in use' })).toHaveCount(1);
  await heads.last().scrollIntoViewIfNeeded();
  await builds.focus();
  for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowRight');
  await expect(heads.last()).toBeInViewport({ ratio: 0.95 });
  // The way in, five fields, one ring.
  expect(clicks.count()).toBeLessThanOrEqual(7);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText('nothing to measure');
  await expect(page.getByRole('spinbutton', { name: 'Inside diameter', exact: true })).toHaveValue('20.00');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page.getByRole('link', { name: /^Fullest port/ })).toContainText(/\d/);
});
