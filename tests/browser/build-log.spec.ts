import type { Browser, BrowserContext, Page } from '@playwright/test';
import { PNG } from 'pngjs';
import { encode } from 'uqr';
import { tickLink } from '../../src/files/tick-link';
import { itemLink } from '../../src/sheets/item-link';
import { chooseFile } from './support/choose-file';
import { expectAccessible, expectLegible } from './support/expect-accessible';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { expect, test } from './support/test';

const phone = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  serviceWorkers: 'block',
} as const;
const picked = (page: Page) => page.getByRole('region', { name: 'Picked' });
const tickOf = (page: Page, thing: string, step: string) =>
  page.getByRole('group', { name: thing }).getByRole('button', { name: new RegExp(`^${step}`) });

/** A phone of the crew, with nothing of anybody else in it. */
async function openPhone(browser: Browser, address: string): Promise<Page> {
  const context: BrowserContext = await browser.newContext(phone);
  const page = await context.newPage();
  await openWorkbench(page, address);
  return page;
}

async function findInHand(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Find', exact: true }).tap();
  await page.getByLabel('Panel, port or circuit').fill(name);
  await page.getByLabel('Panel, port or circuit').press('Enter');
}

/** The first tick of a phone asks who ticks. */
async function tickAs(page: Page, who: string, thing: string, step: string): Promise<void> {
  await tickOf(page, thing, step).tap();
  const dialog = page.getByRole('dialog', { name: 'Who ticks?' });
  await dialog.getByRole('textbox').fill(who);
  await dialog.getByRole('button', { name: 'Tick' }).tap();
  await expect(tickOf(page, thing, step)).toHaveAttribute('aria-pressed', 'true');
}

/** A code as a phone's photo shows it: grey, turned by some degrees, on a sheet in a picture far larger than a code needs. */
function photoOf(text: string): { name: string; mimeType: string; buffer: Buffer } {
  const { data, size } = encode(text, { ecc: 'M' });
  const [wide, high, modulePx, turn] = [2400, 1800, 22, (11 * Math.PI) / 180];
  const picture = new PNG({ width: wide, height: high });
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) {
      const [dx, dy] = [x - wide / 2, y - high / 2];
      const column = Math.floor((dx * Math.cos(turn) + dy * Math.sin(turn)) / modulePx + size / 2);
      const row = Math.floor((dy * Math.cos(turn) - dx * Math.sin(turn)) / modulePx + size / 2);
      const grey = data[row]?.[column] ? 60 : 205 + ((x * 7 + y * 13) % 17);
      picture.data.set([grey, grey, grey, 255], (y * wide + x) * 4);
    }
  }
  return { name: 'photo.png', mimeType: 'image/png', buffer: PNG.sync.write(picture) };
}

test('on a phone a panel is found, its column ticked, and the tick is there after a reload and can be taken back', async ({
  browser,
  baseURL,
}) => {
  const page = await openPhone(browser, baseURL!);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Behind the wall');
  await findInHand(page, 'a c38 r9');
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C38 R9');
  await expect(page.getByRole('region', { name: 'Way' }).getByRole('listitem').first()).toContainText('Node N3');
  await tickAs(page, 'Ada', 'Column A C38', 'Stands');
  await expect(tickOf(page, 'Column A C38', 'Stands')).toContainText('Ada, ');
  await page.reload();
  await figuresAreThere(page);
  await expect(tickOf(page, 'Column A C38', 'Stands')).toHaveAttribute('aria-pressed', 'true');
  // Behind the wall the next column is at the left hand; the name is asked for only once.
  await page.getByRole('button', { name: 'A C39', exact: true }).tap();
  await tickOf(page, 'Column A C39', 'Stands').tap();
  await expect(tickOf(page, 'Column A C39', 'Stands')).toContainText('Ada, ');
  await tickOf(page, 'Column A C39', 'Stands').tap();
  await expect(tickOf(page, 'Column A C39', 'Stands')).toContainText('taken back, Ada, ');
  await page.getByRole('button', { name: 'Let go' }).tap();
  // 113 columns: 75 of the wall and 38 of the ceiling.
  await expect(page.getByRole('list', { name: 'Progress by area' }).getByText('1 of 113 columns')).toBeVisible();
  await page.context().close();
});

test('a thumb goes along the cable and sees what fails with it; every target is 44 px high', async ({
  browser,
  baseURL,
}) => {
  const page = await openPhone(browser, `${baseURL}/#panel=A-C38-R9`);
  const cable = page.getByRole('region', { name: 'Along the cable' });
  await cable.getByRole('button', { name: 'after A C38 R10' }).tap();
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C38 R10');
  await expect(cable.getByRole('button', { name: 'before A C38 R9' })).toBeVisible();
  const dark = page.getByRole('region', { name: 'What goes dark' });
  // Port 3B-07 has rows 3 to 14 of column 38, entry below: 14 - 9 = 5 panels from row 10 on.
  await expect(dark.getByRole('button', { name: 'jumper A C38 R9 to A C38 R10' })).toContainText('5 panels');
  const low = await page.evaluate(() =>
    [...document.querySelectorAll('.hand button, .hand label.button, .hand input:not(.unseen), .foot-bar button')]
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 44)
      .map((element) => element.textContent),
  );
  expect(low).toEqual([]);
  await page.context().close();
});

test('what two phones ticked apart is all there once both files are opened on a third, each once', async ({
  page,
  browser,
  baseURL,
}) => {
  const [one, other] = [await openPhone(browser, baseURL!), await openPhone(browser, baseURL!)];
  await findInHand(one, 'A C38');
  await tickAs(one, 'Ada', 'Column A C38', 'Stands');
  await findInHand(other, '3B-04');
  await tickAs(other, 'Bo', 'Port 3B-04', 'Wired');
  await other.getByRole('button', { name: '3B-05', exact: true }).tap();
  await tickOf(other, 'Port 3B-05', 'Wired').tap();
  const files = [];
  for (const each of [one, other]) {
    await each.getByRole('button', { name: 'Let go' }).tap();
    files.push(await savedBy(each, each.getByRole('button', { name: 'Save ticks to a file' })));
    await each.context().close();
  }
  await openWorkbench(page);
  const notice = page.getByRole('status').filter({ hasText: 'came in' });
  const sayings = [
    '1 tick came in, all of them new.',
    '2 ticks came in, all of them new.',
    'all of them were here already',
  ];
  for (const [place, file] of [...files, files[1]!].entries()) {
    await chooseFile(page, { name: file.name, text: file.bytes.toString() });
    await expect(notice).toContainText(sayings[place]!);
  }
  await expect(page.getByRole('heading', { level: 1, name: 'Build log' })).toBeVisible();
  const stage = page.getByRole('list', { name: 'Progress by area' }).getByRole('listitem').first();
  await expect(stage).toContainText('1 of 113 columns');
  await expect(stage).toContainText('2 of 124 ports');
  await page.getByRole('button', { name: 'Ports', exact: true }).click();
  await page.getByLabel('Show those that').selectOption('done wired');
  const grid = page.getByRole('grid', { name: 'Ports and their steps' });
  await expect(grid.getByRole('row')).toHaveCount(3);
  await expect(grid.getByRole('row').nth(1)).toContainText('✓ Bo, ');
  // One step of undo takes one file out again.
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(stage).toContainText('0 of 124 ports');
  await expect(stage).toContainText('1 of 113 columns');
});

test('a link with ticks asks before it fills another plan, and what the plan does not have rests in it', async ({
  page,
  browser,
  baseURL,
}) => {
  const one = await openPhone(browser, baseURL!);
  await one.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await findInHand(one, 'B C1');
  await tickAs(one, 'Ada', 'Column B C1', 'Stands');
  await one.getByRole('button', { name: 'Let go' }).tap();
  await one.getByRole('button', { name: 'Copy link with ticks' }).tap();
  await expect(one.getByText('The link with the ticks is copied.')).toBeVisible();
  const link = await one.evaluate(() => navigator.clipboard.readText());
  await one.context().close();

  await page.goto(link);
  await figuresAreThere(page);
  await expect(page.getByText('1 tick came in, all of them new.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1, name: 'Build log' })).toBeVisible();
  await expect(page).toHaveURL(/page=log$/);

  const ticks = [{ step: 'wired', of: 'port', name: '99A-01', done: true, who: 'Bo', atMs: 1 } as const];
  const list = { format: 'voussoir-ticks', version: 1, planId: 'elsewhere', planName: 'Another stage' } as const;
  await page.goto(tickLink(baseURL!, { ...list, ticks: [...ticks] })!);
  const dialog = page.getByRole('dialog', { name: 'Ticks of another plan' });
  await expect(dialog).toContainText('Another stage');
  await expectAccessible(page, '[role=dialog]');
  await dialog.getByRole('button', { name: 'Take them in here' }).click();
  await expect(page.getByText('1 tick came in, all of them new.')).toBeVisible();
  await expect(page.getByRole('region', { name: 'Ticked, and not in the plan now' })).toContainText('Port 99A-01');
  await page.goto(link.slice(0, -6));
  await expect(page.getByRole('heading', { name: 'The link is not whole' })).toBeVisible();
});

test('a code in a photo leads to its panel on the phone, and a code of something else is named', async ({
  browser,
  baseURL,
}) => {
  const page = await openPhone(browser, baseURL!);
  const scan = page.getByLabel('Scan a code');
  await scan.setInputFiles(
    photoOf(itemLink('https://another.example/plan/', 'sample-horseshoe', { kind: 'panel', name: 'A C12 R3' })),
  );
  await expect(picked(page).getByRole('heading')).toHaveText('Panel A C12 R3');
  await scan.setInputFiles(photoOf('3B-04'));
  await expect(picked(page).getByRole('heading')).toHaveText('Port 3B-04');
  await scan.setInputFiles(photoOf('https://elsewhere.example/menu'));
  await expect(page.getByText('This code says something else: https://elsewhere.example/menu')).toBeVisible();
  await scan.setInputFiles({
    name: 'grey.png',
    mimeType: 'image/png',
    buffer: PNG.sync.write(new PNG({ width: 80, height: 80 })),
  });
  await expect(page.getByText('No code was found in this picture.')).toBeVisible();
  await expect(picked(page).getByRole('heading')).toHaveText('Port 3B-04');
  await page.context().close();
});

test('behind the wall nothing keeps anybody out, in either theme', async ({ browser, baseURL }) => {
  const page = await openPhone(browser, baseURL!);
  await expectAccessible(page);
  await findInHand(page, 'A C38 R9');
  await tickAs(page, 'Ada', 'Column A C38', 'Stands');
  await expectAccessible(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectLegible(page);
  await page.getByLabel('Panel, port or circuit').fill('3B');
  await expectLegible(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.context().close();
});

test('the planner sees the chosen step hatched on the drawing, and ticks from the table', async ({ page }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Build log');
  await page.getByLabel('Ticked here as').fill('Cy');
  await page.getByLabel('Ticked here as').press('Enter');
  const hatch = page.locator('.overlay-done');
  await expect(hatch).toHaveAttribute('d', '');
  await page.getByRole('grid', { name: 'Columns and their steps' }).getByRole('row').nth(2).click();
  await tickOf(page, 'Column A C2', 'Stands').click();
  await expect(hatch).toHaveAttribute('d', /M/);
  await page.getByRole('group', { name: 'Step that the drawing marks' }).getByRole('button', { name: 'Wired' }).click();
  await expect(hatch).toHaveAttribute('d', '');
  await goToChapter(page, 'Runs');
  await expect(hatch).toBeHidden();
});
