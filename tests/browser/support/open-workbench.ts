import { expect, type Page } from '@playwright/test';

/** Opens the page as on a first visit, with the sample plan in it, and waits until every figure is there. */
export async function openWorkbench(page: Page, address = './'): Promise<void> {
  await page.goto(address);
  await figuresAreThere(page);
}

/** Waits until the headroom strip shows what belongs to the plan as it stands. */
export async function figuresAreThere(page: Page): Promise<void> {
  await expect(page.getByRole('region', { name: 'What is left' })).toHaveAttribute('aria-busy', 'false');
}
