import { expect, type Page } from '@playwright/test';

/** Opens a chapter by its line in the contents, and waits until it stands. One click. */
export async function goToChapter(page: Page, title: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Chapters' })
    .getByRole('link', { name: new RegExp(`^${title}`) })
    .click();
  await expect(page.getByRole('heading', { level: 1, name: title })).toBeVisible();
}
