import { expect, it } from 'vitest';
import { figures, words } from '../../src/sheets/schedule-column';

it('words stand at the start and have no unit, figures at the end in their unit', () => {
  expect(words('port', 'Port')).toEqual({ key: 'port', title: 'Port', unit: null, align: 'start' });
  expect(figures('mass', 'Mass', 'kg')).toEqual({ key: 'mass', title: 'Mass', unit: 'kg', align: 'end' });
});
