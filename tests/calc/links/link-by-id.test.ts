import { expect, test } from 'vitest';
import { linkById } from '../../../src/calc/links/link-by-id';

test('linkById finds a link of the table, and nothing for another name', () => {
  expect(linkById('displayport-hbr3')?.name).toBe('DisplayPort HBR3');
  expect(linkById('displayport-hbr4')).toBeUndefined();
});
