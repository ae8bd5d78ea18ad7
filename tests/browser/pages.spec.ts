import type { Page } from '@playwright/test';
import { pages } from '../../src/ui/state/pages';
import { expectAccessible, expectLegible, showWhole } from './support/expect-accessible';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { dropFile, fixture } from './support/plan-file';
import { expect, test } from './support/test';

/** Opens every chapter by its address, which works at any width, and calls `look` on each. */
async function eachChapter(page: Page, look: (title: string) => Promise<void>): Promise<void> {
  for (const { id, title } of pages) {
    await page.evaluate((chapter) => {
      location.hash = location.hash.replace(/page=\w+/, `page=${chapter}`);
    }, id);
    await expect(page.getByRole('heading', { level: 1, name: title })).toBeVisible();
    await look(title);
  }
}

/** Plans that look different on every page. */
const plans: readonly { readonly name: string; readonly open: (page: Page) => Promise<void> }[] = [
  { name: 'the sample', open: async () => undefined },
  { name: 'a new plan', open: (page) => page.getByRole('button', { name: 'New', exact: true }).click() },
  { name: 'a ring in feet', open: (page) => dropFile(page, fixture('plans/ring-feet.json')) },
];

for (const { name, open } of plans) {
  test(`every chapter of ${name} can be read by all, in the light theme and in the dark one`, async ({ page }) => {
    test.setTimeout(240_000);
    await openWorkbench(page);
    await open(page);
    await figuresAreThere(page);
    await expectAccessible(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    await expectLegible(page);
    await eachChapter(page, async () => {
      await page.emulateMedia({ colorScheme: 'light' });
      await showWhole(page);
      await expectAccessible(page, 'main');
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectLegible(page, 'main');
    });
  });
}

/** What reaches past the right edge of the window and lies in nothing that scrolls sideways by itself, such as a table. */
function findCutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const main = document.querySelector('main');
    const scrollsInside = (element: Element | null): boolean =>
      element !== null &&
      element !== main &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrollsInside(element.parentElement));
    return [...document.querySelectorAll('#root *')]
      .filter((element) => element.getBoundingClientRect().right > window.innerWidth + 0.5 && !scrollsInside(element))
      .map((element) => `${element.tagName} ${element.className} ${element.textContent?.slice(0, 30)}`);
  });
}

test('at 390 px no chapter is cut off or scrolls sideways, whatever the plan is called', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openWorkbench(page);
  const file = fixture('plans/ring-feet.json');
  const name = 'a-name-without-a-space'.repeat(9);
  const text = file.text.replace(/("name": )"[^"]*"/, `$1"${name}"`);
  await dropFile(page, { name: 'long.json', text });
  await expect(page.getByRole('button', { name: new RegExp(name) })).toBeVisible();
  await eachChapter(page, async (title) => {
    expect(await findCutOff(page), title).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), title).toBeLessThanOrEqual(390);
  });
});
