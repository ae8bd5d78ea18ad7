import { expect, type Locator, type Page } from '@playwright/test';

/** Stops of the Tab key that a person puts up with between two things of one page. */
const stopsMost = 60;

/** Presses Tab until the focus is on the element, and fails where it is not within reach of the keyboard. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeEnabled();
  for (let stops = 0; stops < stopsMost; stops++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  await expect(target).toBeFocused({ timeout: 1 });
}
