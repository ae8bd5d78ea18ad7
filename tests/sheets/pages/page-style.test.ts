import { expect, test } from 'vitest';
import { pageStyle } from '../../../src/sheets/pages/page-style';

test('lines are drawn through but for leaders, and no line is thinner than paper holds', () => {
  for (const [name, { widthMm, dashesMm }] of Object.entries(pageStyle.strokes)) {
    // 0.18 mm: the thinnest line of ISO 128-2 in use here (from memory).
    expect(widthMm).toBeGreaterThanOrEqual(0.18);
    expect(dashesMm.length > 0).toBe(name === 'leader');
  }
});
