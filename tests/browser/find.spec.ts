import type { Page } from '@playwright/test';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

const picked = (page: Page) => page.getByRole('region', { name: 'Picked' });

async function find(page: Page, text: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('dialog', { name: 'Find' }).getByRole('combobox').fill(text);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Find' })).toBeHidden();
}

test('Ctrl K finds a panel and shows its whole way, stations of it lead on', async ({ page, clicks }) => {
  await openWorkbench(page);
  await find(page, 'A C38 R9');
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C38 R9');
  const way = await picked(page).getByRole('listitem').allTextContents();
  const stations = [/^Node N\d/, /^Processor \d/, /^Breakout \d[A-Z]/, /^Port \d[A-Z]-\d\d/, /^\d+(st|nd|rd|th) of \d/];
  const supply = [/^Circuit D\d+-\d+/, /^L\d/, /^Distro \d+/];
  expect(way).toHaveLength(stations.length + supply.length);
  for (const [place, pattern] of [...stations, ...supply].entries()) expect(way[place]).toMatch(pattern);
  expect(clicks.count()).toBe(0);
  await picked(page)
    .getByRole('button', { name: /^Distro/ })
    .click();
  await expect(picked(page).getByRole('heading')).toHaveText(/^Distro \d+$/);
});

test('one box finds ports, circuits, boxes, chapters and commands', async ({ page }) => {
  await openWorkbench(page);
  const names = [
    ['port 3B-04', 'Port 3B-04'],
    ['3b-04', 'Port 3B-04'],
    ['distro 4', 'Distro 4'],
    ['D4-11', 'Circuit D4-11'],
    ['N3', 'Node N3'],
    ['b c1', 'Column B C1'],
  ] as const;
  for (const [text, heading] of names) {
    await find(page, text);
    await expect(picked(page).getByRole('heading')).toHaveText(heading);
  }
  // What was picked last hangs overhead, and the drawing has gone there.
  await expect(page.getByRole('combobox', { name: 'Surface' })).toContainText('B ');
  await find(page, 'what goes dark');
  await expect(page.getByRole('heading', { level: 1, name: 'What goes dark' })).toBeVisible();
  await find(page, 'dark or light');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
});

test('a link to a panel opens on it, and the address follows what is picked without a step back for each', async ({
  page,
}) => {
  await openWorkbench(page, './#panel=A-C38-R9');
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C38 R9');
  await find(page, 'power');
  await find(page, 'A C12 R3');
  await expect(page).toHaveURL(/page=power&panel=A-C12-R3$/);
  const link = page.url();
  await find(page, 'A C1 R1');
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Summary' })).toBeVisible();
  await page.goto(link);
  await page.reload();
  await figuresAreThere(page);
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C12 R3');
});

test('at 390 px a link to a panel opens with it in hand, and so does a found name, which the drawing shows', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openWorkbench(page, './#panel=A-C38-R9');
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C38 R9');
  await page.getByRole('button', { name: 'Find', exact: true }).click();
  await expect(page.getByLabel('Panel, port or circuit')).toBeFocused();
  await page.getByLabel('Panel, port or circuit').fill('port 3B-04');
  await page.getByRole('button', { name: 'Port 3B-04' }).click();
  await expect(picked(page).getByRole('heading')).toHaveText('Port 3B-04');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.getByRole('button', { name: 'On the drawing' }).click();
  await expect(page.getByRole('application')).toBeVisible();
  await expect(picked(page).getByRole('heading')).toHaveText('Port 3B-04');
});
