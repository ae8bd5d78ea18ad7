import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from '@playwright/test';

/** A file as a person would hand it to the page. */
export interface GivenFile {
  readonly name: string;
  readonly text: string;
}

/** A file of the fixtures folder: 'plans/horseshoe.voussoir.json'. */
export function fixture(path: string): GivenFile {
  const place = fileURLToPath(new URL(`../../../fixtures/${path}`, import.meta.url));
  return { name: basename(place), text: readFileSync(place, 'utf8') };
}

/** Drops a file on the page, as from the desktop. */
export async function dropFile(page: Page, file: GivenFile): Promise<void> {
  const carried = await page.evaluateHandle(({ name, text }) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], name, { type: 'application/json' }));
    return transfer;
  }, file);
  for (const type of ['dragenter', 'dragover', 'drop']) {
    await page.dispatchEvent('body', type, { dataTransfer: carried });
  }
  await carried.dispose();
}

/** What a control saves: the name that it proposes and the bytes. */
export async function savedBy(page: Page, control: Locator): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), control.click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
