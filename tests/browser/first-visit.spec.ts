import { gzipSync } from 'node:zlib';
import type { Page, Response } from '@playwright/test';
import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

/** Bytes of the programs that a page loads until it stands, packed as a server would pack them. */
async function programBytes(page: Page, load: () => Promise<void>): Promise<number> {
  const sizes: Promise<number>[] = [];
  const weigh = (response: Response) => {
    if (/\.js$/.test(new URL(response.url()).pathname))
      sizes.push(response.body().then((body) => gzipSync(body).length));
  };
  page.on('response', weigh);
  await load();
  page.off('response', weigh);
  return (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
}

test('a first visit opens the sample plan with its figures, and loads less than 350 kB of program for it', async ({
  page,
  clicks,
}) => {
  const bytes = await programBytes(page, async () => {
    await openWorkbench(page);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.waitForLoadState('networkidle');
  });
  expect(bytes).toBeGreaterThan(0);
  expect(bytes).toBeLessThan(350_000);
  await expect(page.getByRole('navigation', { name: 'Chapters' }).getByRole('link').first()).toBeVisible();
  await expect(page.getByRole('region', { name: 'What is left' })).toContainText(/\d/);
  expect(clicks.count()).toBe(0);
});
