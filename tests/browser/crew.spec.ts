import type { Page } from '@playwright/test';
import { readPdf } from '../files/read-pdf-pages';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { dropFile, fixture, savedBy } from './support/plan-file';
import { expect, test } from './support/test';

/** ISO 216; ANSI/ASME Y14.1 sizes A and B (8.5 x 11 and 11 x 17 in). */
const papers = [
  { id: 'a4', name: 'A4', widthMm: 210, heightMm: 297 },
  { id: 'a3', name: 'A3', widthMm: 297, heightMm: 420 },
  { id: 'letter', name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
  { id: 'tabloid', name: 'Tabloid', widthMm: 279.4, heightMm: 431.8 },
] as const;

async function openCrewSet(page: Page, plan = 'plans/flat.json'): Promise<void> {
  await openWorkbench(page);
  await dropFile(page, fixture(plan));
  await figuresAreThere(page);
  await goToChapter(page, 'Crew set');
}

const sheetsOf = (page: Page) => page.getByRole('button', { name: /^Open sheet \d+:/ });

/** Waits until all pages are laid out, and tells how many there are. */
async function pagesAreThere(page: Page): Promise<number> {
  await expect(page.getByRole('button', { name: 'Save PDF' })).toBeEnabled({ timeout: 30_000 });
  return sheetsOf(page).count();
}

for (const { id, name, widthMm, heightMm } of papers) {
  test(`the set printed on ${name} is as many pages as it shows, each of that paper, nothing outside and nothing else`, async ({
    page,
  }) => {
    await openCrewSet(page);
    await page.getByLabel('Paper').selectOption(id);
    const count = await pagesAreThere(page);
    expect(count).toBeGreaterThan(8);
    const { pages } = await readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }), 'texts');
    expect(pages).toHaveLength(count);
    pages.forEach((printed, index) => {
      const isLying = printed.widthMm > printed.heightMm;
      const [width, height] = isLying ? [heightMm, widthMm] : [widthMm, heightMm];
      // The browser rounds a sheet to its own pixels, of 0.26 mm.
      expect(Math.abs(printed.widthMm - width)).toBeLessThan(0.3);
      expect(Math.abs(printed.heightMm - height)).toBeLessThan(0.3);
      for (const { text, xMm, yMm } of printed.places) {
        const isInside = xMm > 5 && xMm < width - 5 && yMm > 5 && yMm < height - 5;
        expect([text, isInside]).toEqual([text, true]);
      }
      expect(printed.texts.join(' ').replace(/\s/g, '')).toContain(`${index + 1}of${count}`);
      expect(printed.texts.join(' ')).not.toContain('Save PDF');
    });
  });
}

test('the PDF is saved by one button, its fonts are fetched for it and not before', async ({ page }) => {
  const fonts: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('.ttf')) fonts.push(request.url());
  });
  await openCrewSet(page);
  await page.getByLabel('Paper').selectOption('a3');
  const count = await pagesAreThere(page);
  expect(fonts).toEqual([]);
  const { name, bytes } = await savedBy(page, page.getByRole('button', { name: 'Save PDF' }));
  expect(name).toMatch(/crew set A3\.pdf$/);
  expect(fonts).toHaveLength(3);
  const { pages } = await readPdf(bytes, 'texts');
  expect(pages).toHaveLength(count);
  for (const { widthMm, heightMm } of pages) {
    expect([Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)].map((mm) => mm.toFixed(2))).toEqual([
      '297.00',
      '420.00',
    ]);
  }
});

test('parts are left out and put back, each with its number of pages', async ({ page }) => {
  await openCrewSet(page);
  const all = await pagesAreThere(page);
  const bill = page.getByRole('checkbox', { name: /^Bill of materials/ });
  await expect(bill).toBeChecked();
  await expect(page.getByRole('group', { name: 'Parts' })).toContainText(/Bill of materials\s*1 page/);
  await bill.uncheck();
  await expect(sheetsOf(page)).toHaveCount(all - 1);
  await expect(page.getByRole('button', { name: /^Open sheet \d+: Bill/ })).toHaveCount(0);
  await bill.check();
  await expect(sheetsOf(page)).toHaveCount(all);
});

test('a sheet opens large, arrow keys turn pages, and Escape goes back to it', async ({ page }) => {
  await openCrewSet(page);
  const count = await pagesAreThere(page);
  await sheetsOf(page).nth(2).click();
  const viewer = page.getByRole('dialog');
  await expect(viewer.getByRole('heading')).toContainText(`Sheet 3 of ${count}`);
  await page.keyboard.press('ArrowRight');
  await expect(viewer.getByRole('heading')).toContainText(`Sheet 4 of ${count}`);
  // At its actual size a millimetre of the sheet is one of the screen's.
  await viewer.getByRole('button', { name: 'Actual size' }).click();
  const width = await viewer.locator('svg').evaluate((svg) => svg.getBoundingClientRect().width);
  const stated = await viewer.locator('svg').evaluate((svg) => Number.parseFloat(svg.getAttribute('width')!));
  expect(width).toBeCloseTo((stated / 25.4) * 96, 0);
  await page.keyboard.press('Escape');
  await expect(viewer).toHaveCount(0);
  await expect(sheetsOf(page).nth(2)).toBeFocused();
});

test('laying out can be stopped and begun again', async ({ page }) => {
  await openCrewSet(page, 'plans/horseshoe.json');
  // At once: the page does not hold still while it goes on.
  await page.getByRole('button', { name: 'Stop' }).dispatchEvent('click');
  await expect(page.getByText('Stopped before it was done.')).toBeVisible();
  await page.getByRole('button', { name: 'Start again' }).click();
  expect(await pagesAreThere(page)).toBeGreaterThan(30);
});
