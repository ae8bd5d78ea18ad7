import { expect, test } from 'vitest';
import type { Command } from '../../../src/plan/commands';
import { placeOfCommand } from '../../../src/ui/state/place-of-command';

test('placeOfCommand of a field is that field on the page that owns it', () => {
  const command: Command = { name: 'set-fields', args: { fields: [{ path: ['heat', 'people'], value: 3 }] } };
  expect(placeOfCommand(command, 'summary')).toEqual({ page: 'heat', field: 'heat.people' });
});

test('placeOfCommand of a list is the list', () => {
  const command: Command = { name: 'insert', args: { path: ['walls', 0, 'path'], index: 0, value: {} } };
  expect(placeOfCommand(command, 'summary')).toEqual({ page: 'walls', field: 'walls[0].path' });
});

test('placeOfCommand of what no page owns stays on the page', () => {
  const command: Command = { name: 'set-fields', args: { fields: [{ path: ['name'], value: 'x' }] } };
  expect(placeOfCommand(command, 'runs')).toEqual({ page: 'runs', field: 'name' });
});
