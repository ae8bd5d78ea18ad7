import type { Page } from '@playwright/test';
import { goToChapter } from './support/go-to-chapter';
import { openWorkbench } from './support/open-workbench';
import { expect, test } from './support/test';

function scaleOf(page: Page): Promise<number> {
  return page
    .getByRole('application')
    .locator('svg')
    .first()
    .evaluate((svg) => Number((svg as SVGElement).dataset.scale));
}

test('whoever looks close stays close: picking a panel, moving on and the bar below leave the drawing where it is', async ({
  page,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'Runs');
  const drawing = page.getByRole('application');
  const whole = await scaleOf(page);
  const { x, y } = (await drawing.boundingBox())!;
  await page.mouse.move(x + 200, y + 200);
  await page.mouse.wheel(0, -240);
  await expect.poll(() => scaleOf(page)).toBeGreaterThan(whole * 1.3);
  const close = await scaleOf(page);

  await page.mouse.click(x + 200, y + 200);
  await expect(page.getByRole('heading', { name: /^Panel A C\d+ R\d+/ })).toBeVisible();
  await page.mouse.move(x + 260, y + 190, { steps: 5 });
  await page.mouse.wheel(0, -240);
  await expect.poll(() => scaleOf(page)).toBeGreaterThan(close * 1.3);
  const closer = await scaleOf(page);
  await page.mouse.move(x + 120, y + 230, { steps: 5 });
  await expect(page.getByText(/^A C\d+ R\d+, port /)).toBeVisible();
  expect(await scaleOf(page)).toBe(closer);

  await page.getByRole('button', { name: 'Show all' }).click();
  await expect.poll(() => scaleOf(page)).toBeLessThan(close);
});
