import { expect, test } from 'vitest';
import { columnHeading } from '../../src/files/column-heading';

const column = (unit: Parameters<typeof columnHeading>[0]['unit']) =>
  ({ key: 'k', title: 'Figure', unit, align: 'end' }) as const;

test.each([
  [null, 'Figure'],
  ['count', 'Figure'],
  ['share', 'Figure'],
  ['mm', 'Figure (mm)'],
  ['m2', 'Figure (m²)'],
  ['money', 'Figure (USD)'],
] as const)('columnHeading of %s names its unit once', (unit, heading) => {
  expect(columnHeading(column(unit), 'USD')).toBe(heading);
});
