import { expect, test } from 'vitest';
import { columnWidthPx } from '../../../src/ui/widgets/column-width';

// Letters of the figures' face are 0.6 em wide (IBM Plex Mono): 7.5 px at 12.5 px.
test('columnWidthPx holds the longest of its cells whole', () => {
  for (const text of ['not stated', '58 of 3°, 16 of 0°', 'A C120 R14']) {
    expect(columnWidthPx('Limit', ['1', text, ''])).toBeGreaterThanOrEqual(text.length * 7.5 + 16);
  }
});

test('columnWidthPx keeps short columns short, so that more of them stand side by side', () => {
  expect(columnWidthPx('Leg', ['L1', 'L2'])).toBeLessThanOrEqual(60);
  expect(columnWidthPx('Leg', [])).toBe(columnWidthPx('Leg', ['L1']));
});

test('columnWidthPx lets no name push all other columns away', () => {
  expect(columnWidthPx('Name', ['a name that goes on '.repeat(20)])).toBeLessThanOrEqual(240);
});
