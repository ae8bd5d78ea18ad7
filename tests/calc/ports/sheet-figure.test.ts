import { expect, test } from 'vitest';
import { sheetFigure } from '../../../src/calc/ports/sheet-figure';
import { plainPanel, plainProcessor } from './plain-items';

const pair = (portPixels: number | null) => plainPanel(216, { drivenBy: [{ processorId: 'proc', portPixels }] });

test('sheetFigure takes the pair before the processor', () => {
  expect(sheetFigure(pair(500_000), plainProcessor())).toBe(500_000);
  expect(sheetFigure(pair(null), plainProcessor())).toBe(650_000);
  expect(sheetFigure(plainPanel(216, { drivenBy: [] }), plainProcessor())).toBe(650_000);
  expect(sheetFigure(pair(null), plainProcessor({ sheetPixels: null }))).toBeNull();
});
