import { csvParseRows } from 'd3-dsv';
import { readSheet } from 'read-excel-file/node';
import { fillField } from './support/fill-field';
import { goToChapter } from './support/go-to-chapter';
import { openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { expect, test } from './support/test';

/** Job (b): we own 1,500 panels and 9 processors: does 48 fps at 10 bit fit, and if not, what must change? */
test('what is owned meets a rate: it fits or not, what must change is listed, applied and undone', async ({
  page,
  clicks,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'Wish');
  await fillField(page, 'Sedge 2.6 (invented), owned', '1500');
  await fillField(page, 'Weir, three breakouts (invented), owned', '9');
  await fillField(page, 'Weir, three breakouts (invented), more to be had', '0');
  await goToChapter(page, 'Picture');

  const rates = page.getByRole('region', { name: 'Frame rate and depth' });
  const asked = rates.getByRole('button', { name: /^48 fps, 10 bit/ });
  await expect(asked).toHaveAccessibleName(/ fits/, { timeout: 30_000 });
  const change = page.getByRole('region', { name: 'What must change' });
  await expect(change).toContainText('nothing must change');
  expect(clicks.count()).toBeLessThanOrEqual(5);

  // A faster rate asks for more than the nine: looked at first, then kept.
  const faster = rates.getByRole('button', { name: /^120 fps, 8 bit/ });
  await expect(faster).toHaveAccessibleName(/ does not fit/, { timeout: 30_000 });
  await faster.click();
  const preview = page.getByText('Previewing 120 fps, 8 bit');
  await expect(preview).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(preview).toBeHidden();
  await faster.click();
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByRole('link', { name: 'Wish stop 1' })).toBeVisible();

  const apply = change.getByRole('button', { name: /^Apply: / }).first();
  await expect(apply).toBeVisible({ timeout: 30_000 });
  await apply.click();
  await expect(change).toContainText('nothing must change', { timeout: 30_000 });
  await expect(page.getByRole('link', { name: /^Wish stop/ })).toBeHidden();
  expect(clicks.count()).toBeLessThanOrEqual(9);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('link', { name: 'Wish stop 1' })).toBeVisible();
});

/** Job (c): everything for Monday. */
test('the crew set is two presses away from the first visit, as one PDF', async ({ page, clicks }) => {
  await openWorkbench(page);
  await page.getByRole('link', { name: 'What does the crew need on Monday?' }).click();
  const pdf = await savedBy(page, page.getByRole('button', { name: 'Save PDF' }));
  expect(clicks.count()).toBe(2);
  expect(pdf.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
});

/** Job (c): print the bill for Monday; `print.spec.ts` reads what is printed. */
test('the bill is one press away as CSV, as a spreadsheet and as a print, and all hold the same lines', async ({
  page,
  clicks,
}) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  await openWorkbench(page);
  await page.getByRole('link', { name: 'bill', exact: true }).click();
  const csv = await savedBy(page, page.getByRole('button', { name: 'Save as CSV' }));
  const xlsx = await savedBy(page, page.getByRole('button', { name: 'Save as spreadsheet' }));
  await page.getByRole('button', { name: 'Print the bill' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', '');
  expect(clicks.count()).toBeLessThanOrEqual(4);

  expect([csv.name, xlsx.name].map((name) => name.slice(name.lastIndexOf('.')))).toEqual(['.csv', '.xlsx']);
  // Needed: 75 columns of 14 rows. Spare: 3 % of 1050, rounded up. Owned: as the sample says. To get: 1050 + 32 - 1060.
  const item = 'Sedge 2.6 (invented)';
  const rows = csvParseRows(csv.bytes.toString('utf8'));
  expect(rows.find((row) => row.includes(item))?.slice(2, 6)).toEqual(['1050', '32', '1060', '22']);
  const sheet = await readSheet(xlsx.bytes);
  expect(sheet.find((row) => row.includes(item))?.slice(2, 6)).toEqual([1050, 32, 1060, 22]);
  // The files have a line of totals more than the page.
  const shown = page.getByRole('table', { name: 'Bill of materials' }).getByRole('row');
  await expect(shown).toHaveCount(rows.length - 1);
});
