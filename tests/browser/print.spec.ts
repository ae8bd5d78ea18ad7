import { csvParseRows } from 'd3-dsv';
import { goToChapter } from './support/go-to-chapter';
import { openWorkbench } from './support/open-workbench';
import { savedBy } from './support/plan-file';
import { readPdfText } from './support/read-pdf-text';
import { expect, test } from './support/test';

/** Spaces are drawn as gaps or as letters, and a narrow column breaks lines: neither belongs to what is said. */
const dense = (text: string) => text.replace(/\s/g, '');

for (const format of ['A4', 'Letter'] as const) {
  test(`the bill printed on ${format} holds every line, its totals, title block, page numbers and caution`, async ({
    page,
  }) => {
    await openWorkbench(page);
    await goToChapter(page, 'Materials');
    const bill = await savedBy(page, page.getByRole('button', { name: 'Save as CSV' }));
    const lines = csvParseRows(bill.bytes.toString('utf8')).slice(1, -1);
    expect(lines.length).toBeGreaterThan(10);

    const pages = readPdfText(await page.pdf({ format }));
    const text = dense(pages.join('\n'));
    // Added up here, from what the CSV lists line by line; a line without a price says so in words.
    const priced = lines.filter((line) => line[10] !== 'not stated');
    const toGet = priced.reduce((sum, line) => sum + Number(line[10]), 0);
    const written = new Intl.NumberFormat('en-GB', { style: 'currency', currency: 'EUR', maximumFractionDigits: 0 });
    expect(text).toContain(dense(`To get${written.format(toGet)}`));
    for (const [, item] of lines) expect(text).toContain(dense(item!));

    expect(text).toContain(dense('Plan Saltmarsh Stage (invented sample) Revision A Printed'));
    expect(text).toContain(dense(`${new Date().getUTCFullYear()} Checks that stop it 0`));
    expect(text).toContain(dense('Local code and a licensed electrician, a qualified rigger or a structural engineer'));
    pages.forEach((one, index) => {
      expect(dense(one)).toContain(`page${index + 1}of${pages.length}`);
    });
    // Nothing to press, and none of the frame.
    expect(text).not.toContain(dense('Save as CSV'));
    expect(text).not.toContain('Undo');
  });
}
