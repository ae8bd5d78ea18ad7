import { csvParse } from 'd3-dsv';
import { readPdf } from '../files/read-pdf-pages';
import { readQr } from '../sheets/read-qr';
import { expectAccessible, expectLegible } from './support/expect-accessible';
import { fillField } from './support/fill-field';
import { figuresAreThere, openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { expect, test } from './support/test';

test('a grid that is typed in is shown, printed and kept for the next visit', async ({ page }) => {
  await openWorkbench(page, './#page=labels');
  const main = page.getByRole('main');
  await fillField(main, 'Columns', '4');
  await fillField(main, 'Rows', '10');
  await fillField(main, 'Margin at the top', '20');
  await expect(main.getByRole('combobox', { name: 'Begin with' })).toHaveValue('typed');
  await main.getByRole('checkbox', { name: 'Data jumpers' }).uncheck();
  await main.getByRole('checkbox', { name: 'Power jumpers' }).uncheck();
  const { name, bytes } = await savedBy(page, main.getByRole('button', { name: 'Save CSV' }));
  expect(name).toMatch(/ labels\.csv$/);
  const rows = csvParse(bytes.toString());
  const sheets = Math.ceil(rows.length / 40);
  await expect(main.getByText(`Sheet 1 of ${sheets}`)).toBeVisible();
  const preview = main.getByRole('img', { name: `Labels, sheet 1 of ${sheets}` });
  await expect(preview).toContainText(`from ${rows[0]!.from}`);
  await expectAccessible(page, 'main');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectLegible(page, 'main');
  await page.reload();
  await figuresAreThere(page);
  await expect(main.getByRole('spinbutton', { name: 'Columns', exact: true })).toHaveValue('4');
  await fillField(main, 'Margin left', '400');
  await expect(main.getByText('leave no room for labels')).toBeVisible();
  await expect(main.getByRole('button', { name: 'Save PDF' })).toBeDisabled();
});

test('the code on a printed label leads to its port, in the browser that keeps the plan', async ({ page }) => {
  await openWorkbench(page, './#page=labels');
  const main = page.getByRole('main');
  for (const kind of ['Trunk', 'Return', 'Data jumpers', 'Circuit', 'Power jumpers']) {
    await main.getByRole('checkbox', { name: kind, exact: true }).uncheck();
  }
  const { bytes } = await savedBy(page, main.getByRole('button', { name: 'Save PDF' }));
  const { pages } = await readPdf(new Uint8Array(bytes));
  const { paths, links, heightMm, texts } = pages[0]!;
  const [left, bottom, right] = links[0]!.box as [number, number, number, number];
  const [code] = paths.filter(({ isFilled }) => isFilled);
  // 43 to 62 bytes take version 4 at level M, 33 modules a side (ISO/IEC 18004, table 7).
  const [modules, top] = [33, heightMm - (bottom + right - left)];
  const module = (right - left) / (modules + 8);
  const xyMm = code!.lines.flatMap((line) =>
    line.flatMap(([x, y]) => [(x - left) / module - 4, (y - top) / module - 4]),
  );
  let end = 0;
  const ends = code!.lines.map((line) => (end += line.length));
  const lines = { xyMm: Float64Array.from(xyMm), ends: Uint32Array.from(ends), closed: true };
  const address = readQr(lines, modules);
  expect(address).toBe(links[0]!.url);
  const port = texts.find((text) => /^\d+[A-Z]*-\d+$/.test(text))!;
  await page.goto(address!);
  await expect(page.getByRole('region', { name: 'Picked' }).getByRole('heading')).toHaveText(`Port ${port}`);
});
