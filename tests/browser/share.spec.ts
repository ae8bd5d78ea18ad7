import type { Browser, Page } from '@playwright/test';
import readCode from 'jsqr';
import { PNG } from 'pngjs';
import { itemLink } from '../../src/sheets/item-link';
import { chooseFile } from './support/choose-file';
import { expectAccessible, expectLegible } from './support/expect-accessible';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { fixture, type GivenFile, savedBy } from './support/plan-file';
import { expect, test } from './support/test';

const shareDialog = (page: Page) => page.getByRole('dialog', { name: 'Share' });

async function linkOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Share' }).click();
  return shareDialog(page).getByRole('textbox', { name: 'Link', exact: true }).inputValue();
}

/** Another person's browser: nothing in it is shared with the first. */
async function openElsewhere(browser: Browser, address: string, width = 1280): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

/** What a phone reads from the screen. */
async function scan(page: Page): Promise<string | undefined> {
  const code = shareDialog(page).getByRole('img', { name: 'Code that holds the link' });
  const { data, width, height } = PNG.sync.read(await code.screenshot());
  return readCode(new Uint8ClampedArray(data), width, height)?.data;
}

test('the code on the screen holds the link, and the dialog breaks no rule in either theme', async ({ page }) => {
  await openWorkbench(page);
  const link = await linkOf(page);
  expect(await scan(page)).toBe(link);
  await expectAccessible(page, '[role=dialog]');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectLegible(page, '[role=dialog]');
});

test('a link opens elsewhere as a read-only copy that replaces nothing, and is made one’s own', async ({
  page,
  browser,
}) => {
  await openWorkbench(page);
  const link = await linkOf(page);
  const other = await openElsewhere(browser, page.url().replace(/#.*/, ''));
  await figuresAreThere(other);
  const own = other.url();
  await other.goto(link);
  const copy = other.getByRole('region', { name: 'Shared copy' });
  await expect(copy).toBeVisible();
  await expect(other).toHaveURL(/#plan=shared-/);
  // Both plans are kept now.
  await other.getByRole('button', { name: 'Open', exact: true }).click();
  await other.getByRole('menuitem', { name: 'All plans kept here …' }).click();
  await expect(other.getByRole('dialog').getByRole('listitem')).toHaveCount(2);
  await other.keyboard.press('Escape');
  // Planning is refused in a sentence.
  await other.getByTitle(/Show lengths/).click();
  await expect(other.getByText(/read-only copy of a plan that was shared. Make it yours/)).toBeVisible();
  await copy.getByRole('button', { name: 'Make it mine' }).click();
  await expect(copy).toBeHidden();
  await expect(other).not.toHaveURL(/shared-/);
  await other.getByTitle(/Show lengths/).click();
  await expect(other.getByTitle(/Show lengths/)).toHaveText(/^ft/);
  // What was there before is as it was.
  await other.goto(own);
  await figuresAreThere(other);
  await expect(other.getByTitle(/Show lengths/)).toHaveText(/^m/);
  await other.context().close();
});

test('a code opened at 390 px leads to its panel, and a label of the same plan then finds it again', async ({
  page,
  browser,
}) => {
  await openWorkbench(page, './#panel=A-C38-R9');
  await page.getByRole('button', { name: 'Share' }).click();
  await shareDialog(page).getByRole('switch', { name: 'Open it at A C38 R9' }).click();
  const phone = await openElsewhere(browser, (await scan(page))!, 390);
  await figuresAreThere(phone);
  await expect(phone.getByRole('region', { name: 'Picked' }).getByRole('heading')).toHaveText('Panel A C38 R9');
  await expect(phone).toHaveURL(/#plan=shared-\w+&page=\w+&panel=A-C38-R9$/);
  const copy = phone.url();
  const label = itemLink(copy, 'sample-horseshoe', { kind: 'port', name: '3B-04' });
  await phone.goto(label);
  await expect(phone.getByRole('region', { name: 'Picked' }).getByRole('heading')).toHaveText('Port 3B-04');
  await expect(phone).toHaveURL(/#plan=shared-\w+&page=\w+$/);
  await phone.context().close();
});

test('a link that was cut, and a code of a plan that is not kept, say what to do', async ({ page }) => {
  await openWorkbench(page);
  const link = await linkOf(page);
  await page.goto(link.slice(0, -9));
  await expect(page.getByRole('heading', { name: 'The link is not whole' })).toBeVisible();
  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await figuresAreThere(page);
  await page.goto('./#of=elsewhere&panel=A-C1-R1');
  await expect(page.getByRole('heading', { name: 'This plan is not on this device' })).toBeVisible();
  await expectAccessible(page);
});

/** The sample with a wiring that runs in no order, so that nothing about it can be said short. */
function tangled(rows: number): GivenFile {
  const { name, text } = fixture('plans/horseshoe.json');
  // A generator of Lehmer's, so that the plan is the same every time.
  let state = 1;
  const any = (most: number) => {
    state = (state * 48271) % 2147483647;
    return 1 + (state % most);
  };
  const row = () => ({ panel: `A C${any(75)} R${any(14)}`, port: `${any(8)}A-${any(89) + 10}`, place: any(60_000) });
  const existingWiring = { source: 'wiring.csv', rows: Array.from({ length: rows }, row) };
  return { name, text: JSON.stringify({ ...JSON.parse(text), existingWiring }) };
}

test('a plan too long for a code is shared as a link, one too long for a link as a file', async ({ page }) => {
  await openWorkbench(page);
  await chooseFile(page, tangled(500));
  await figuresAreThere(page);
  const link = await linkOf(page);
  expect(link.length).toBeGreaterThan(2953);
  await expect(shareDialog(page).getByText('too long for a code')).toBeVisible();
  await expect(shareDialog(page).getByRole('img')).toBeHidden();
  await page.keyboard.press('Escape');
  await chooseFile(page, tangled(6000));
  await figuresAreThere(page);
  await page.getByRole('button', { name: 'Share' }).click();
  await expect(shareDialog(page).getByText('Share it as a file')).toBeVisible();
  await expect(shareDialog(page).getByRole('textbox', { name: 'Link', exact: true })).toBeHidden();
  const { name } = await savedBy(page, shareDialog(page).getByRole('button', { name: 'Save as a file' }));
  expect(name).toMatch(/\.json$/);
});

test('the plan can be shared as a file', async ({ page }) => {
  await openWorkbench(page);
  await linkOf(page);
  const { name, bytes } = await savedBy(page, shareDialog(page).getByRole('button', { name: 'Save as a file' }));
  expect(name).toMatch(/\.json$/);
  expect(JSON.parse(bytes.toString())).toMatchObject({ format: 'voussoir-plan', revisions: [], log: { ticks: [] } });
});
