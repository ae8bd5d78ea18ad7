import type { Page } from '@playwright/test';
import { fillField } from './support/fill-field';
import { goToChapter } from './support/go-to-chapter';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { expect, test } from './support/test';

/** The field that these tests change; it stands on the Walls page. */
const baseHeight = (page: Page) => page.getByRole('spinbutton', { name: 'Base height' });

async function raiseTheWall(page: Page, to: string): Promise<void> {
  await fillField(page, 'Base height', to);
}

test('work typed a second ago is there when the tab is killed and the plan is opened again', async ({
  page,
  context,
}) => {
  await openWorkbench(page);
  await goToChapter(page, 'Walls');
  await raiseTheWall(page, '0.35 m');
  await page.waitForTimeout(1000);
  const address = page.url();
  const crashed = page.waitForEvent('crash');
  const session = await context.newCDPSession(page);
  void session.send('Page.crash').catch(() => undefined);
  await crashed;

  const back = await context.newPage();
  await openWorkbench(back, address);
  await expect(baseHeight(back)).toHaveValue('0.35');

  const elsewhere = await context.newPage();
  await openWorkbench(elsewhere);
  await goToChapter(elsewhere, 'Walls');
  await expect(baseHeight(elsewhere)).toHaveValue('0.35');
});

test('a second tab follows and says so, and takes over when the first closes', async ({ page, context }) => {
  await openWorkbench(page);
  await goToChapter(page, 'Walls');
  const second = await context.newPage();
  await openWorkbench(second, page.url());
  const says = second.getByRole('region', { name: 'Other tab' });
  await expect(says).toContainText('changed in another tab');

  await raiseTheWall(page, '0.4 m');
  await expect(baseHeight(second)).toHaveValue('0.40');
  await raiseTheWall(second, '0.9 m');
  await expect(second.getByRole('alert')).toContainText('another tab');
  await expect(baseHeight(page)).toHaveValue('0.40');
  await baseHeight(second).press('Escape');

  await page.close();
  await expect(says).toBeHidden();
  await raiseTheWall(second, '0.5 m');
  await expect(second.getByText(/^Kept in this browser/)).toBeVisible();
  await second.reload();
  await figuresAreThere(second);
  await expect(baseHeight(second)).toHaveValue('0.50');
});

const troubles = [
  { trouble: 'full', name: 'QuotaExceededError', says: 'has no room left' },
  { trouble: 'refused', name: 'SecurityError', says: 'does not let this page keep anything' },
] as const;

for (const { trouble, name, says } of troubles) {
  test(`where the browser's storage is ${trouble}, the plan stays, can be saved, and is not left unasked`, async ({
    page,
  }) => {
    await page.addInitScript((errorName) => {
      const fail = () => {
        throw new DOMException('refused by the test', errorName);
      };
      if (errorName === 'QuotaExceededError') IDBObjectStore.prototype.put = fail;
      else IDBFactory.prototype.open = fail;
    }, name);
    await openWorkbench(page);
    await expect(page.getByRole('alert')).toContainText(says);
    await goToChapter(page, 'Walls');
    await raiseTheWall(page, '0.45 m');
    await figuresAreThere(page);
    await expect(baseHeight(page)).toHaveValue('0.45');

    const asked = page.waitForEvent('dialog');
    await page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe('beforeunload');
    await dialog.dismiss();

    const saved = await savedBy(page, page.getByRole('alert').getByRole('button', { name: 'Save file' }));
    expect(JSON.parse(saved.bytes.toString('utf8')).walls[0].baseMm).toBe(450);
  });
}
