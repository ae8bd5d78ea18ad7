import { expect, type Page } from '@playwright/test';

/** Finds something by its name, as a person does with the keyboard. */
export async function findByName(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('dialog', { name: 'Find' }).getByRole('combobox').fill(name);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Find' })).toBeHidden();
}

/** The middle of a panel in the drawing, which is picked by its name; on a phone the drawing is brought up for it. */
export async function spotOf(page: Page, name: string): Promise<{ x: number; y: number }> {
  await findByName(page, name);
  const leaf = page.locator('.foot-bar').getByRole('button', { name: 'Drawing', exact: true });
  if (await leaf.isVisible()) await leaf.click();
  const { x, y, width, height } = (await page.locator('.overlay-selected').boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}
