import { expectLegible } from './support/expect-accessible';
import { openWorkbench } from './support/open-workbench';
import { test } from './support/test';

test('what lies under the pointer can be read as well as before, in both themes', async ({ page }) => {
  await openWorkbench(page);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    for (const name of ['Save file', 'Open', 'Put away']) {
      await page.getByRole('button', { name, exact: true }).hover();
      await expectLegible(page);
    }
  }
});
