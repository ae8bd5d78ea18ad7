import type { Page } from '@playwright/test';
import type { GivenFile } from './plan-file';

/** Opens a file by the menu and the chooser of the browser, as one does who has it on the desktop. */
export async function chooseFile(page: Page, file: GivenFile): Promise<void> {
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('menuitem', { name: 'Open a file …' }).click(),
  ]);
  await chooser.setFiles({ name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) });
}
