import { expect, test } from 'vitest';
import { readPrintFonts } from '../../src/cli/read-print-fonts';
import { printFonts } from '../sheets/pages/print-fonts';

test('readPrintFonts reads the files whose widths pages are measured by', () => {
  expect(readPrintFonts()).toEqual(printFonts);
});
