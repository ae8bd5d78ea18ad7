import { expect, type Page } from '@playwright/test';
import { goToChapter } from './go-to-chapter';

/** What a test on a phone takes: its window, and fingers instead of a mouse. */
export const phone = { viewport: { width: 390, height: 844 }, hasTouch: true } as const;

const foot = (page: Page) => page.locator('.foot-bar');

/** Opens the list of chapters from the bar at the thumb, and a chapter from it. */
export async function goToChapterOnPhone(page: Page, title: string): Promise<void> {
  await foot(page).getByRole('button', { expanded: false }).tap();
  await goToChapter(page, title);
}

/** Shows one leaf and puts the others away. */
export async function showLeaf(page: Page, name: 'Drawing' | 'Book'): Promise<void> {
  const button = foot(page).getByRole('button', { name, exact: true });
  await button.tap();
  await expect(button).toHaveAttribute('aria-pressed', 'true');
}
