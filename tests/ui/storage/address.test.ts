import { expect, test } from 'vitest';
import { itemLink } from '../../../src/sheets/item-link';
import { readAddress, writeAddress } from '../../../src/ui/storage/address';

const nothing = { key: null, page: null, sought: null, share: null, of: null, ticks: null };

test('readAddress of writeAddress is the identity', () => {
  expect(readAddress(writeAddress('a-1', 'power'))).toEqual({ ...nothing, key: 'a-1', page: 'power' });
  expect(readAddress(writeAddress('a-1', 'runs', 'A C38 R9'))).toEqual({
    ...nothing,
    key: 'a-1',
    page: 'runs',
    sought: 'A C38 R9',
  });
});

test('writeAddress writes a panel without escapes, and readAddress takes one alone', () => {
  expect(writeAddress('a-1', 'runs', 'A C38 R9')).toBe('#plan=a-1&page=runs&panel=A-C38-R9');
  expect(readAddress('#panel=C3-R2')).toEqual({ ...nothing, sought: 'C3 R2' });
});

test.each([
  ['panel', 'A C38 R9'],
  ['port', '3B-04'],
  ['circuit', 'D4-11'],
  ['breakout', '3B'],
] as const)('readAddress takes the %s out of the link of a label', (kind, name) => {
  const link = itemLink('https://plan.example/', '0b3a', { kind, name });
  expect(readAddress(new URL(link).hash)).toEqual({ ...nothing, of: '0b3a', sought: name });
});

test('readAddress takes a shared plan with the panel that it is to open at', () => {
  expect(readAddress('#share=AQ-_z&panel=C3-R2')).toEqual({ ...nothing, share: 'AQ-_z', sought: 'C3 R2' });
  expect(readAddress('#share=')).toEqual({ ...nothing, share: '' });
});

test('readAddress takes the ticks that a link brings', () => {
  expect(readAddress('#ticks=AQ-_z')).toEqual({ ...nothing, ticks: 'AQ-_z' });
});

test.each(['', '#', '#plan=', '#page=nowhere', '#%%%', '#plan', '#panel=', '#panel=-', '#of=', '#port=', '#circuit='])(
  'readAddress of %j names nothing',
  (hash) => {
    expect(readAddress(hash)).toEqual(nothing);
  },
);
