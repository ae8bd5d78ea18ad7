import type { Page } from '@playwright/test';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { type ServedCopy, serveCopy } from './support/serve-copy';
import { expect, test } from './support/test';

test.use({ serviceWorkers: 'allow' });

/** Waits until the whole page is kept on the device and serves this tab. */
async function pageIsKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
  });
}

test('after one visit the page works without a network: other chapters, the 3D view, a PDF, another plan', async ({
  page,
  context,
}) => {
  await openWorkbench(page);
  await pageIsKept(page);
  await context.setOffline(true);
  // Nothing of this was open before the network went.
  await goToChapter(page, 'Power');
  await page.reload();
  await figuresAreThere(page);
  await expect(page.getByRole('heading', { level: 1, name: 'Power' })).toBeVisible();
  await page.getByRole('button', { name: 'Stage', exact: true }).click();
  await expect(page.locator('canvas').first()).toBeVisible();
  // The fonts of the print, and the worker that writes it.
  await goToChapter(page, 'Labels');
  const { name } = await savedBy(page, page.getByRole('button', { name: 'Save PDF' }));
  expect(name).toMatch(/ labels\.pdf$/);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Wish' })).toBeVisible();
  await context.setOffline(false);
});

test('a share link opens without a network, in a browser that saw the page once', async ({ page, context }) => {
  await openWorkbench(page);
  await pageIsKept(page);
  await page.getByRole('button', { name: 'Share' }).click();
  const link = await page.getByRole('textbox', { name: 'Link', exact: true }).inputValue();
  await context.setOffline(true);
  const other = await context.newPage();
  await other.goto(link);
  await expect(other.getByRole('region', { name: 'Shared copy' })).toBeVisible();
  await other.reload();
  await figuresAreThere(other);
  await expect(other).toHaveURL(/#plan=shared-/);
  await context.setOffline(false);
});

test('the page can be installed: a manifest with icons that are there', async ({ page, request }) => {
  await page.goto('./');
  const address = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await (await request.get(address!)).json();
  expect(manifest).toMatchObject({ name: 'Voussoir', display: 'standalone', start_url: './' });
  const sizes = manifest.icons.map(({ sizes: size }: { sizes: string }) => size);
  expect(sizes).toEqual(expect.arrayContaining(['192x192', '512x512']));
  for (const { src, type } of manifest.icons) {
    const icon = await request.get(src);
    expect(icon.status()).toBe(200);
    expect(icon.headers()['content-type']).toBe(type);
  }
});

test.describe('a newer version', () => {
  const port = 4188;
  let served: ServedCopy;
  test.use({ baseURL: `http://127.0.0.1:${port}/` });
  test.beforeAll(async () => {
    served = await serveCopy(port);
  });
  test.afterAll(() => served.stop());

  test('is offered while one works on, and taken when one says so, with the plan as it was left', async ({ page }) => {
    await openWorkbench(page);
    await pageIsKept(page);
    const offer = page.getByRole('region', { name: 'New version' });
    await expect(offer).toBeHidden();
    await page.getByTitle(/Show lengths/).click();
    served.publish();
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await expect(offer).toBeVisible();
    await expect(page.getByTitle(/Show lengths/)).toHaveText(/^ft/);
    await Promise.all([page.waitForEvent('load'), offer.getByRole('button', { name: 'Reload' }).click()]);
    await figuresAreThere(page);
    await expect(page.getByTitle(/Show lengths/)).toHaveText(/^ft/);
    await expect(offer).toBeHidden();
  });
});
