import type { Page } from '@playwright/test';
import { dragByTouch } from './support/drag-by-touch';
import { goToChapter } from './support/go-to-chapter';
import { goToChapterOnPhone, phone, showLeaf } from './support/on-phone';
import { openWorkbench } from './support/open-workbench';
import { dropFile, fixture } from './support/plan-file';
import { findByName, spotOf } from './support/spot-of';
import { expect, test } from './support/test';

async function openRuns(page: Page): Promise<void> {
  await openWorkbench(page);
  await dropFile(page, fixture('plans/flat.json'));
  await goToChapter(page, 'Runs');
  await page.getByRole('switch', { name: 'A drag on Unrolled wires' }).check();
}

const runCount = (page: Page) => page.getByText(/^\d+ ports?; least possible \d+$/);

test('a run is cut and joined again by two presses of the keyboard each, and undone step by step', async ({ page }) => {
  await openRuns(page);
  await expect(runCount(page)).toHaveText(/^4 ports/);
  const drawing = page.getByRole('application');
  await drawing.focus();
  // From the entry of the first run to the panel above it, which follows it.
  await findByName(page, 'C1 R1');
  await drawing.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await expect(runCount(page)).toHaveText(/^5 ports/);

  await page.keyboard.press('Enter');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Enter');
  await expect(runCount(page)).toHaveText(/^4 ports/);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(runCount(page)).toHaveText(/^5 ports/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(runCount(page)).toHaveText(/^4 ports/);
});

test('a drag from a panel to the next cuts the run between them, and does not move the drawing', async ({ page }) => {
  await openRuns(page);
  const drawing = page.getByRole('application');
  // C1 R1 and the panel above it follow each other on a run.
  const [from, to] = [await spotOf(page, 'C1 R1'), await spotOf(page, 'C1 R2')];
  const scale = await drawing.locator('svg').first().getAttribute('data-scale');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
  await expect(runCount(page)).toHaveText(/^5 ports/);
  await expectOverNothing(page);
  expect(await drawing.locator('svg').first().getAttribute('data-scale')).toBe(scale);
});

/** What the program says stands over no chapter, no drawing and no way of a panel. */
async function expectOverNothing(page: Page): Promise<void> {
  const notice = (await page.getByText('Changed by hand.').boundingBox())!;
  const leaves = page.locator('.book, .draw');
  for (const leaf of await leaves.all()) {
    if (await leaf.isVisible())
      expect((await leaf.boundingBox())!.y).toBeGreaterThanOrEqual(notice.y + notice.height - 1);
  }
}

test('one zone is pinned to a way by hand and left to the search again', async ({ page }) => {
  await openRuns(page);
  await findByName(page, 'C1 R1');
  const zone = page.getByRole('region', { name: 'Wire by hand' }).getByRole('combobox');
  await expect(zone).toHaveValue('');
  await zone.selectOption({ index: 1 });
  await expect(zone).not.toHaveValue('');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await zone.selectOption({ label: 'as the search chooses' });
  await expect(zone).toHaveValue('');
});

test.describe('by touch', () => {
  test.use(phone);

  test('a finger that goes from a panel to the next cuts the run between them, and joins it again', async ({
    page,
  }) => {
    await openWorkbench(page);
    await dropFile(page, fixture('plans/flat.json'));
    await goToChapterOnPhone(page, 'Runs');
    await expect(runCount(page)).toHaveText(/^4 ports/);
    await page.getByRole('switch', { name: 'A drag on Unrolled wires' }).tap();
    await showLeaf(page, 'Drawing');
    const [from, to] = [await spotOf(page, 'C1 R1'), await spotOf(page, 'C1 R2')];
    const scale = () => page.getByRole('application').locator('svg').first().getAttribute('data-scale');
    const before = await scale();
    await dragByTouch(page, from, to);
    await expect(page.getByText('Changed by hand.')).toBeVisible();
    await expectOverNothing(page);
    expect(await scale()).toBe(before);
    await showLeaf(page, 'Book');
    await expect(runCount(page)).toHaveText(/^5 ports/);

    await showLeaf(page, 'Drawing');
    await dragByTouch(page, to, from);
    await showLeaf(page, 'Book');
    await expect(runCount(page)).toHaveText(/^4 ports/);
  });
});
